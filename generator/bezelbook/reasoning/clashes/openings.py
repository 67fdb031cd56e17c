"""The strong notes of a dash opening that cannot all be true, whatever room it has."""

from collections.abc import Iterator
from dataclasses import replace

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.cells import frame_of
from bezelbook.reasoning.clashes.clash import Clash, Core, Explained, gathered, shared_builds
from bezelbook.reasoning.clashes.cores import cores
from bezelbook.reasoning.clashes.faces import other_face
from bezelbook.reasoning.clashes.ladder import reversed_pairs
from bezelbook.reasoning.clashes.once import once_a_place
from bezelbook.reasoning.evidence import Standing, evidence_at
from bezelbook.reasoning.mounting import HOLES
from bezelbook.reasoning.needs import needs_of_note
from bezelbook.reasoning.room import Rooms
from bezelbook.reasoning.together import can_be_true

# Which sizes a no speaks of; a plug is short of depth too.
BY_REASON = {
    "depth": frozenset({"depth"}),
    "plug": frozenset({"depth"}),
    "width": frozenset({"width"}),
    "height": frozenset({"height"}),
    "nose": frozenset({"nose width", "nose height"}),
}
EVERY = frozenset({*HOLES, "depth"})


@once_a_place
def opening_clashes(book: KnowledgeBase, vehicle: str, place: str) -> tuple[Clash, ...]:
    """Every clash among the strong notes of an opening; empty where some room agrees with all of them."""
    car = book.vehicles[vehicle]
    rooms = Rooms(frame_of(book, car, place), evidence_at(book, car, place).standing)
    ladder = frozenset(frozenset({yes.note.id, no.note.id}) for yes, no in reversed_pairs(book, car, place))
    found = cores(rooms.notes, lambda notes: can_be_true(rooms, notes))
    return gathered(_core(rooms, core, ladder) for core in found)


def _core(rooms: Rooms, core: tuple[Standing, ...], ladder: frozenset[frozenset[str]]) -> Core:
    sizes = [size for size in sorted(_common(core)) if _is_about(rooms, core, size)]
    notes = tuple(one.note for one in core)
    size = sizes[0] if len(sizes) == 1 else "room"
    return Core(notes, size, shared_builds(one.builds for one in core), _why(rooms.frame.book, notes, ladder))


def _why(book: KnowledgeBase, notes: tuple[Tried | Measured, ...], ladder: frozenset[frozenset[str]]) -> Explained:
    if frozenset(note.id for note in notes) in ladder:
        return Explained("ladder")
    if _same_thing(book, notes):
        return Explained("same thing")
    return other_face(notes) or Explained("room")


def _same_thing(book: KnowledgeBase, notes: tuple[Tried | Measured, ...]) -> bool:
    """Whether one and the same thing is said to go in and not to."""
    tried = [note for note in notes if isinstance(note, Tried)]
    return len(notes) == len(tried) == 2 and len({needs_of_note(book, note).key for note in tried}) == 1


def _common(core: tuple[Standing, ...]) -> frozenset[str]:
    """The sizes of which every one of these notes says something."""
    return EVERY.intersection(*(frozenset(_speaks_of(one)) for one in core))


def _speaks_of(one: Standing) -> Iterator[str]:
    if isinstance(one.note, Measured):
        yield from (reading.of for reading in one.note.readings)
    else:
        yield from BY_REASON.get(one.note.reason or "", EVERY) if one.says == "does not" else EVERY


def _is_about(rooms: Rooms, core: tuple[Standing, ...], size: str) -> bool:
    """Whether the notes still cannot all be true when of their readings only those of one size count."""
    only = tuple(replace(one, note=_only(one.note, size)) if isinstance(one.note, Measured) else one for one in core)
    return not can_be_true(rooms, only)


def _only(note: Measured, size: str) -> Measured:
    return note.model_copy(update={"readings": tuple(one for one in note.readings if one.of == size)})
