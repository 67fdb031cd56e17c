"""The sizes of a part as a table has them: as typed, in both units, with its ± and how it was come by."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bezelbook.kinds.record import Part
from bezelbook.values.quantity import Quantity
from bezelbook.values.shown import show_length, show_mm


@dataclass(frozen=True, slots=True)
class SizeRow:
    """One size of a part, in words; a size that nobody wrote down says `not looked`."""

    label: str
    typed: str
    both: str
    give: str
    by: str


def size_rows(part: Part, fields: Sequence[str], house: Quantity, first: str) -> tuple[SizeRow, ...]:
    """The sizes in these fields of a part; `house` is the ± of a caliper that typed none."""
    return tuple(_rows(part, fields, house, first))


def _rows(part: Part, fields: Sequence[str], house: Quantity, first: str) -> Iterator[SizeRow]:
    for field in fields:
        size: Quantity | None = getattr(part, field)
        label = field.replace("_", " ")
        if size is None:
            yield SizeRow(label, "not looked", "", "", "")
        else:
            yield SizeRow(label, size.typed, show_length(size.base, first), _give(size, house), size.by or "not said")


def _give(size: Quantity, house: Quantity) -> str:
    if size.typed == "flush":
        return "exact"
    if size.give is not None:
        return f"± {show_mm(size.give)}"
    return f"± {show_mm(house.base)}, the house's" if size.by == "caliper" else "not known"
