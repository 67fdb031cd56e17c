"""The numbers of a record that are outside anything a shop meets, each with what it may have been meant to be."""

from dataclasses import dataclass
from typing import cast

from bezelbook.kinds.note.record import Bench, Measured, Tried
from bezelbook.kinds.record import Record
from bezelbook.reasoning.slip import slips
from bezelbook.reasoning.slips.repairs import repairs
from bezelbook.reasoning.slips.usual import Path, limited, on_the_bench
from bezelbook.values.quantity import Quantity


@dataclass(frozen=True, slots=True)
class Odd:
    """A number that looks mistyped: where, of what, as typed, what is usual, and what it may have been meant as.

    `meant` are pairs of a unit and the value in it; `waits` says that the room of a place leaves the note out.
    """

    path: Path
    field: str
    typed: str
    usual: str
    meant: tuple[tuple[str, str], ...]
    waits: bool = False


def odd_numbers(record: Record) -> tuple[Odd, ...]:
    """Every number of a record outside the usual; none once the author of a note has read them back."""
    if getattr(record, "numbers", None) == "read back":
        return ()
    room = _of_the_room(record)
    seen = {odd.path for odd in room}
    numbers = on_the_bench(record) if isinstance(record, Bench) else limited(record)
    rest = [
        Odd(path, field, size.typed, usual.words, repairs(size, usual.low, usual.high))
        for path, field, size, usual in numbers
        if path not in seen and not usual.low <= size.base <= usual.high
    ]
    return (*room, *rest)


def _of_the_room(record: Record) -> tuple[Odd, ...]:
    """Those that keep a note out of the room of its place until somebody has read them back."""
    if not isinstance(record, Tried | Measured):
        return ()
    found = []
    for slip in slips(record):
        low, high = slip.usual_mm
        number = _at(record, slip.path)
        meant = repairs(number, low * 1_000_000, high * 1_000_000)
        found.append(Odd(slip.path, slip.field, slip.typed, f"{low} to {high} mm", meant, waits=True))
    return tuple(found)


def _at(record: Record, path: Path) -> Quantity:
    value: object = record
    for step in path:
        value = value[step] if isinstance(step, int) and isinstance(value, tuple) else getattr(value, str(step))
    return cast("Quantity", value)
