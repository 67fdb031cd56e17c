"""Circles that screws stand on: which readings of one place cannot be of one circle, and which are a spacing."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.claims import reading_span
from bezelbook.reasoning.clashes.clash import Path, shared_builds
from bezelbook.reasoning.clashes.once import once_a_place
from bezelbook.reasoning.speakers.bolts import OFF, circle_of
from bezelbook.reasoning.speakers.evidence import SpeakerStanding, evidence_at
from bezelbook.reasoning.speakers.stacks import SpeakerStack
from bezelbook.values.shown import show_length
from bezelbook.values.span import Span

# How many holes a circle usually has, where nobody counted (common practice, no source).
COUNTS = (4, 3, 6)


@dataclass(frozen=True, slots=True)
class Circle:
    """A circle that a note speaks of, in nanometres: read off the car, or that of a speaker that went straight in.

    `spacing` says that the number was read from hole to hole; `count` is the number of holes, where it was counted.
    `off` is how far the circle of the car may be from it: of a speaker, as far as a screw still finds its hole.
    """

    note: Measured | Tried
    path: Path
    typed: str
    span: Span
    count: int | None
    builds: tuple[Build, ...]
    spacing: bool = False
    off: int = 0


@dataclass(frozen=True, slots=True)
class Apart:
    """Two that cannot be of one circle; `meant` is what the first would be if it was read from hole to hole."""

    first: Circle
    other: Circle
    builds: tuple[Build, ...]
    meant: str = ""


@once_a_place
def circles_apart(book: KnowledgeBase, vehicle: str, place: str) -> tuple[Apart, ...]:
    """Every two notes of a place that cannot be of one bolt circle, the ones that a spacing explains first.

    Cars of two builds may have two circles; but not often such that one is just what holes on the other are apart.
    """
    found = []
    for one, other in combinations(_circles(book, vehicle, place), 2):
        if one.note is not other.note and _apart(one, other):
            apart = _explained(one, other)
            if set(one.builds) & set(other.builds) or (apart.meant and apart.first.count):
                found.append(apart)
    return tuple(sorted(found, key=lambda apart: not apart.meant))


def instead(circle: int, count: int | None, least: int, most: int) -> int | None:
    """The circle that holes `circle` nm apart stand on, where it lies between two lengths; None when none does."""
    for holes in (count,) if count else COUNTS:
        if holes > 2:
            low, high = circle_of(circle, holes)
            if least - OFF <= high and low <= most + OFF:
                return (low + high) // 2
    return None


def _explained(one: Circle, other: Circle) -> Apart:
    builds = shared_builds((one.builds, other.builds))
    for slipped, beside in ((one, other), (other, one)):
        if not slipped.spacing and isinstance(slipped.note, Measured):
            low, high = beside.span.low or 0, beside.span.high or 0
            meant = instead(((slipped.span.low or 0) + (slipped.span.high or 0)) // 2, slipped.count, low, high)
            if meant is not None:
                return Apart(slipped, beside, builds, show_length(meant))
    return Apart(one, other, builds)


def _apart(one: Circle, other: Circle) -> bool:
    """Whether there is no circle that both can be of."""
    off = one.off + other.off
    return (one.span.high or 0) + off < (other.span.low or 0) or (other.span.high or 0) + off < (one.span.low or 0)


def _circles(book: KnowledgeBase, vehicle: str, place: str) -> Iterator[Circle]:
    for one in evidence_at(book, book.vehicles[vehicle], place).standing:
        if isinstance(one.note, Measured):
            yield from _read(book, one.note, one) if _of_the_car(one.note, one.stack) else ()
        elif one.stack is not None and not one.stack.mounts:
            yield from _screwed(book, one)


def _of_the_car(note: Measured, stack: SpeakerStack | None) -> bool:
    """Whether a circle was read off the car: through rings, or on any mount where the note tells of the car's holes."""
    return note.bolt_holes is not None or (stack is not None and stack.through)


def _read(book: KnowledgeBase, note: Measured, one: SpeakerStanding) -> Iterator[Circle]:
    holes = note.bolt_holes
    count = holes.count if holes else None
    for index, reading in enumerate(note.readings):
        if reading.tool == "eye":
            continue
        span, path = reading_span(book.shop.tools, reading), ("readings", index, "reads")
        if reading.of == "bolt circle":
            yield Circle(note, path, reading.reads.typed, span, count, one.builds)
        if reading.of == "hole spacing" and count and count > 2:
            ends = Span(circle_of(span.low or 0, count)[0], circle_of(span.high or 0, count)[1])
            yield Circle(note, path, reading.reads.typed, ends, count, one.builds, spacing=True)


def _screwed(book: KnowledgeBase, one: SpeakerStanding) -> Iterator[Circle]:
    """A speaker that was fitted with nothing between, nothing drilled: its holes met those of the car."""
    note = one.note
    speaker = book.named("speaker", note.what) if isinstance(note, Tried) else None
    if not isinstance(speaker, Speaker) or speaker.bolts is None or one.says != "goes in" or note.cut != "nothing":
        return
    circle = speaker.bolts.circle
    slotted = speaker.bolts.circle_least or speaker.bolts.circle_most
    if (
        circle is not None
        and circle.by == "caliper"
        and not slotted
        and isinstance(note, Tried)
        and note.sure == "fitted"
    ):
        give = circle.give if circle.give is not None else book.shop.tools.bench_caliper.base
        span = Span(circle.base - give, circle.base + give)
        yield Circle(note, ("verdict",), circle.typed, span, speaker.bolts.count, one.builds, off=OFF)
