"""A hole written down by its radius, by the size a speaker is sold as, or across a tab: what the arithmetic says."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.clashes.clash import Explained, Path, near
from bezelbook.reasoning.speakers.needs import needs_of_note
from bezelbook.values.quantity import Quantity
from bezelbook.values.shown import show_length, show_mm

MM = 1_000_000
# The sizes that speakers are sold as, in nanometres, and what people call them (common practice, no source).
NOMINALS = {
    2_750_000 * 254 // 10: "2 3/4",
    3_500_000 * 254 // 10: "3 1/2",
    4_000_000 * 254 // 10: "4",
    5_250_000 * 254 // 10: "5 1/4",
    6_500_000 * 254 // 10: "6 1/2",
    6_750_000 * 254 // 10: "6 3/4",
    8_000_000 * 254 // 10: "8",
    10_000_000 * 254 // 10: "10",
    12_000_000 * 254 // 10: "12",
}
# How far a number may be from such a size and still be read as it, in nanometres: the trade says 165 for 165.1.
ROUNDED = MM // 4
# By how much a hole is usually wider than the basket in it, at most, in nanometres (common practice, no source).
LOOSE = 15 * MM


@dataclass(frozen=True, slots=True)
class Hole:
    """A hole that a note gives by a number of its own: where in the note, and the number."""

    note: AnyNote
    path: Path
    reads: Quantity


def not_across(book: KnowledgeBase, notes: Sequence[AnyNote]) -> Explained | None:
    """What would explain notes about one hole that cannot all be true: a radius, a nominal size, or a tab."""
    holes = [hole for note in notes for hole in holes_of(note)]
    baskets = [
        low for note in notes if isinstance(note, Tried) if (low := needs_of_note(book, note).spans["basket"].low)
    ]
    for one in holes:
        found = (
            radius(one, [other for other in holes if other.note is not one.note], baskets)
            or _nominal(one)
            or _tab(book, one, [other for other in holes if other.note is not one.note])
        )
        if found:
            return found
    return None


def holes_of(note: AnyNote) -> Iterator[Hole]:
    """The holes that a note gives a number for: what it read, or what it typed of the speaker that it tried."""
    if isinstance(note, Measured):
        for index, reading in enumerate(note.readings):
            if reading.of == "cut-out":
                yield Hole(note, ("readings", index, "reads"), reading.reads)
    elif isinstance(note, Tried) and note.sizes is not None and note.sizes.cut_out is not None:
        yield Hole(note, ("sizes", "cut_out"), note.sizes.cut_out)


def radius(one: Hole, others: Sequence[Hole], baskets: Sequence[int]) -> Explained | None:
    """Whether twice the number is what another hole reads, or a hole that a basket of what went in there sits in."""
    whole = 2 * one.reads.base
    give = 2 * (one.reads.give or MM)
    beside = any(near(other.reads, whole, give) for other in others)
    around = any(basket <= whole + give and whole <= basket + LOOSE for basket in baskets)
    if not beside and not around:
        return None
    return Explained("radius", one.note.id, one.path, one.reads.typed, show_length(whole))


def _nominal(one: Hole) -> Explained | None:
    for size, called in NOMINALS.items():
        if abs(one.reads.base - size) <= ROUNDED:
            return Explained("nominal", one.note.id, one.path, one.reads.typed, f"{called} in, the size it is sold as")
    return None


def _tab(book: KnowledgeBase, one: Hole, others: Sequence[Hole]) -> Explained | None:
    """Whether two notes read the two diameters of one bracket: with its tabs in, and with them out."""
    for mount in book.mounts.values():
        tabs_in, tabs_out = mount.tabs_in, mount.tabs_out
        if tabs_in is None or tabs_out is None or not near(one.reads, tabs_in.base, MM):
            continue
        if any(near(other.reads, tabs_out.base, MM) for other in others):
            meant = f"{mount.name} is {show_mm(tabs_in.base)} with its tabs in, {show_mm(tabs_out.base)} with them out"
            return Explained("tabs", one.note.id, one.path, one.reads.typed, meant)
    return None
