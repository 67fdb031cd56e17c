"""Numbers read again as the team says they were meant: in another unit, to the middle, from hole to hole."""

from collections.abc import Callable
from typing import Any, Literal, TypeVar

from bezelbook.kinds.note.record import AnyNote, RoomReading
from bezelbook.kinds.record import Part
from bezelbook.reasoning.slip import slips
from bezelbook.values.quantity import Quantity
from bezelbook.values.shown import show_length

N = TypeVar("N", bound=AnyNote)
MeasuredTo = Literal["across", "to the middle", "bolt circle", "hole spacing"]
DOUBLED = ("cut-out", "cut-out long way", "cut-out short way", "bolt circle")


def number_reread(note: N, unit: Literal["mm", "in"] | None) -> N:
    """A note whose odd numbers are in this unit; without a unit, or without an odd number, the note as it is."""
    odd = slips(note) if unit else ()
    read: Any = note
    for slip in odd if unit == "in" else ():
        read = _changed(read, slip.path, _in_inches)
    return _changed(read, ("numbers",), lambda _: "read back") if odd else note


def reading_reread(reading: RoomReading, measured_to: MeasuredTo | None, house: int) -> RoomReading:
    """A reading of what it was really taken of: a radius doubled, a spacing called one.

    `house` is how far off such a reading may be where nobody typed a \u00b1, in nanometres; twice that, once doubled.
    """
    if measured_to == "to the middle" and reading.of in DOUBLED:
        read = reading.reads
        return reading.model_copy(update={"reads": _times(read, 2, 1, 2 * (house if read.give is None else read.give))})
    if measured_to == "hole spacing" and reading.of == "bolt circle":
        return reading.model_copy(update={"of": "hole spacing"})
    if measured_to == "bolt circle" and reading.of == "hole spacing":
        return reading.model_copy(update={"of": "bolt circle"})
    return reading


def _in_inches(size: Quantity) -> Quantity:
    return _times(size, 254, 10, None if size.give is None else size.give * 254 // 10)


def _times(size: Quantity, by: int, over: int, give: int | None) -> Quantity:
    """A length times a fraction, in whole nanometres, beside what was typed."""
    base = size.base * by // over
    return Quantity(size.dimension, base, give, size.by, f"{size.typed}, read as {show_length(base)}")


def _changed(value: Any, path: tuple[str | int, ...], change: Callable[[Any], Any]) -> Any:
    """The same value with what stands at the end of a path changed."""
    if not path:
        return change(value)
    step, rest = path[0], path[1:]
    if isinstance(value, Part):
        return value.model_copy(update={str(step): _changed(getattr(value, str(step)), rest, change)})
    at = int(step)
    return (*value[:at], _changed(value[at], rest, change), *value[at + 1 :])
