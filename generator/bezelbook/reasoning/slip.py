"""Numbers outside what a shop ever meets, and the arithmetic slip that would explain each."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.values.quantity import Quantity

MM = 1_000_000
# Common practice, no source.
LIMITS_MM = {
    "depth": (20, 220),
    "width": (40, 300),
    "height": (25, 200),
    "nose width": (40, 300),
    "nose height": (25, 200),
    "opening depth": (60, 350),
    "opening width": (40, 300),
    "opening height": (45, 200),
    "mounting depth": (8, 200),
    "cut out": (30, 300),
    "basket": (30, 300),
    "cut-out": (30, 300),
    "cut-out long way": (30, 300),
    "cut-out short way": (30, 300),
    "bolt circle": (70, 320),
    # Of the least circle with six holes and the largest with three: times sin 30° and sin 60°.
    "hole spacing": (35, 277),
}
ACROSS = ("cut-out", "cut-out long way", "cut-out short way", "bolt circle")
SPEAKER_SIZES = ("mounting_depth", "cut_out", "basket")
REPAIRS = (("inches", Fraction(254, 10)), ("centimetres", Fraction(10)))


@dataclass(frozen=True, slots=True)
class Slip:
    """A number that looks mistyped: where it stands, what it says, and what it may have been meant to say.

    `path` is the field's path in the note; `readings` are (unit word, length in nanometres) that would be usual there.
    """

    note: str
    path: tuple[str | int, ...]
    field: str
    typed: str
    usual_mm: tuple[int, int]
    readings: tuple[tuple[str, int], ...]


def slips(note: AnyNote) -> tuple[Slip, ...]:
    """The numbers of a note that are outside the usual limits; none once the author has read them back."""
    if note.numbers == "read back":
        return ()
    found = (_slip(note.id, path, field, size) for path, field, size in _numbers(note))
    return tuple(slip for slip in found if slip is not None)


def _numbers(note: AnyNote) -> Iterator[tuple[tuple[str | int, ...], str, Quantity]]:
    if isinstance(note, Tried) and note.sizes is not None:
        for name in ("depth", "width", "height", "nose_width", "nose_height", *SPEAKER_SIZES):
            size: Quantity | None = getattr(note.sizes, name)
            if size is not None:
                yield ("sizes", name), name.replace("_", " "), size
    if isinstance(note, Measured):
        for index, reading in enumerate(note.readings):
            if reading.of in ("depth", "width", "height"):
                yield ("readings", index, "reads"), f"opening {reading.of}", reading.reads
            elif reading.of in ACROSS or (reading.of == "hole spacing" and _on_a_circle(note)):
                yield ("readings", index, "reads"), reading.of, reading.reads


def _on_a_circle(note: Measured) -> bool:
    """Whether the holes are counted as those of a circle: two holes make none."""
    return note.bolt_holes is not None and (note.bolt_holes.count or 0) > 2


def _slip(note: str, path: tuple[str | int, ...], field: str, size: Quantity) -> Slip | None:
    low, high = LIMITS_MM[field]
    if low * MM <= size.base <= high * MM:
        return None
    readings = tuple((word, _times(size.base, factor)) for word, factor in REPAIRS)
    usual = tuple((word, length) for word, length in readings if low * MM <= length <= high * MM)
    return Slip(note, path, field, size.typed, (low, high), usual)


def _times(length: int, factor: Fraction) -> int:
    return int(length * factor)
