"""A record as its author typed it: every field that was written, by its own name."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.kinds.record import Part
from bezelbook.values.quantity import Quantity


@dataclass(frozen=True, slots=True)
class Line:
    """A field and what was typed in it; a field that has fields of its own says nothing itself."""

    label: str
    words: str = ""
    under: tuple["Line", ...] = ()


def typed_lines(part: Part, leave_out: Iterable[str] = ()) -> tuple[Line, ...]:
    """The fields that were typed, in the kind's own order; a blank one is not there."""
    names = [name for name in type(part).model_fields if name in part.model_fields_set and name not in leave_out]
    return tuple(_line(_label(name), getattr(part, name)) for name in names)


def plain_lines(data: Mapping[str, object]) -> tuple[Line, ...]:
    """Plain data, as it stands in a file, in the same shape."""
    return tuple(_line(_label(name), value) for name, value in data.items())


def _label(name: str) -> str:
    return name.replace("_", " ")


def _line(label: str, value: object) -> Line:
    if isinstance(value, Quantity):
        return Line(label, value.typed)
    if isinstance(value, Part):
        return Line(label, under=typed_lines(value))
    if isinstance(value, Mapping):
        return Line(label, under=plain_lines(value)) if value else Line(label, "blank")
    if isinstance(value, Sequence) and not isinstance(value, str):
        return _many(label, value)
    return Line(label, str(value))


def _many(label: str, values: Sequence[object]) -> Line:
    """Words stand in one line; things with fields of their own are counted."""
    lines = [_line(f"{label} {number}", value) for number, value in enumerate(values, 1)]
    if any(line.under for line in lines):
        return Line(label, under=tuple(lines))
    return Line(label, ", ".join(line.words for line in lines))
