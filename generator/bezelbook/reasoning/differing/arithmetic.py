"""Slips of a number that arithmetic explains: another unit, to the middle instead of across, hole to hole, a name."""

from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from math import isqrt

from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.reasoning.differing.case import Case
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.rooms_said import SIZE_OF, room_of
from bezelbook.reasoning.differing.weights import weighs
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity, read_quantity
from bezelbook.values.shown import show_length

MM = 1_000_000
# Two figures of one thing agree within this when neither has a ± (common practice, no source).
HOUSE = 2 * MM
UNITS = (("inches", Fraction(254, 10)), ("centimetres", Fraction(10)))
# Neighbouring holes are the circle times sin(180°/n) apart; its square is exact for three, four and six holes.
SPACINGS = ((3, Fraction(3, 4)), (4, Fraction(1, 2)), (6, Fraction(1, 4)))
CIRCLE = "bolt circle"
CIRCLES = (CIRCLE, "hole spacing")


@dataclass(frozen=True, slots=True)
class Figure:
    """One number of a note, under the name of the room that it is of."""

    note: AnyNote
    of: str
    size: Quantity

    @property
    def give(self) -> int:
        """Its ± in nanometres."""
        return self.size.give if self.size.give is not None else HOUSE


def slipped(case: Case) -> Iterator[Explanation]:
    """Each repair of one number that would make the two agree, read back as a question."""
    first, second = (tuple(figures(note)) for note in case.notes)
    for one, other in product(first, second):
        small, large = sorted((one, other), key=lambda figure: figure.size.base)
        if case.weighed and case.clash.size not in (small.of, large.of):
            continue  # what they clash over is something else
        if small.of == large.of and small.size.base > 0:
            yield from _by_factor(small, large)
            yield from _by_name(case, (small, large))
        if small.of == CIRCLE and large.of in CIRCLES and small.size.base > 0:
            yield from _by_spacing(small, large)
    yield from _clears(case)


def figures(note: AnyNote) -> Iterator[Figure]:
    """The numbers of a note that somebody read or typed there."""
    if isinstance(note, Measured):
        for reading in note.readings:
            yield Figure(note, SIZE_OF.get(reading.of, reading.of), reading.reads)
    if isinstance(note, Tried) and note.sizes is not None:
        for name in type(note.sizes).model_fields:
            size = getattr(note.sizes, name)
            words = name.replace("_", " ")
            if isinstance(size, Quantity):
                yield Figure(note, SIZE_OF.get(words, words), size)


def _by_factor(small: Figure, large: Figure) -> Iterator[Explanation]:
    for unit, factor in UNITS:
        if _agree(small, large, factor):
            yield Explanation("unit", _meant(small, unit, factor), weighs("arithmetic agrees"))
    if small.of == "hole" and _agree(small, large, Fraction(2)):
        yield Explanation("unit", _across(small), weighs("arithmetic agrees"))


def _agree(small: Figure, large: Figure, factor: Fraction) -> bool:
    within = factor * small.give / (1 if small.size.give is not None else factor) + large.give
    return abs(factor * small.size.base - large.size.base) <= within


def _by_spacing(small: Figure, large: Figure) -> Iterator[Explanation]:
    for holes, squared in SPACINGS:
        low, high = (large.size.base + sign * (large.give + small.give) for sign in (-1, 1))
        if low * low * squared <= small.size.base**2 <= high * high * squared:
            across = isqrt(int(Fraction(small.size.base**2) / squared))
            words = f"{small.size.typed} is from hole to hole: {show_length(across)} across the circle of {holes}?"
            yield Explanation("unit", words, weighs("spacing agrees"))


def _by_name(case: Case, pair: tuple[Figure, Figure]) -> Iterator[Explanation]:
    """A figure that is just the size by which a speaker is sold, in a note of its hole."""
    sold = dict(_sold(case))
    for figure in pair:
        names = [name for name, across in sold.items() if abs(across - figure.size.base) < MM // 2]
        if figure.of == "hole" and names:
            words = f"{figure.size.typed} is {names[0]}, the size it is sold as, and not the hole?"
            yield Explanation("unit", words, weighs("a name agrees"))


def _sold(case: Case) -> Iterator[tuple[str, int]]:
    """The sizes that the book's speakers are sold as, where such a name is a length."""
    for speaker in case.book.speakers.values():
        with suppress(Wrong):
            yield speaker.nominal, read_quantity(speaker.nominal, "length").base


def _clears(case: Case) -> Iterator[Explanation]:
    """A reading that is too small for what went in, and roomy enough when it was meant otherwise."""
    if case.clash.roomier is None or case.clash.size not in ("depth", "hole", "width", "height", "front"):
        return
    if not isinstance(case.roomier, Tried):
        return
    small = [one for one in figures(case.notes[1 - case.clash.roomier]) if one.of == case.clash.size]
    needs = room_of(case.book, case.notes[case.clash.roomier]).get(case.clash.size, (None, None))[0]
    for figure in small:
        ways = [(_meant(figure, unit, factor), factor) for unit, factor in UNITS]
        ways += [(_across(figure), Fraction(2))] if figure.of == "hole" else []
        for words, factor in ways:
            meant = factor * figure.size.base
            if needs is not None and isinstance(figure.note, Measured) and needs <= meant <= 2 * needs:
                yield Explanation("unit", words, weighs("roomy enough"))


def _meant(figure: Figure, unit: str, factor: Fraction) -> str:
    return f"{figure.size.typed} was meant in {unit}: {show_length(int(figure.size.base * factor))}?"


def _across(figure: Figure) -> str:
    return f"{figure.size.typed} was to the middle: {show_length(2 * figure.size.base)} across?"
