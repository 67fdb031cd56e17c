"""The strong notes of a place for a speaker that cannot all be true, whatever hole and room it has."""

from collections.abc import Iterator
from dataclasses import replace

from bezelbook.kinds.note.record import Measured, RoomReading, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.clashes.across import not_across
from bezelbook.reasoning.clashes.clash import Clash, Core, Explained, gathered, shared_builds
from bezelbook.reasoning.clashes.cores import cores
from bezelbook.reasoning.clashes.faces import other_face
from bezelbook.reasoning.clashes.once import once_a_place
from bezelbook.reasoning.speakers.evidence import FRONT, HOLE, SpeakerStanding
from bezelbook.reasoning.speakers.needs import needs_of_note
from bezelbook.reasoning.speakers.rooms import SpeakerRooms, speaker_place_of

BY_REASON = {
    "depth": frozenset({"depth behind"}),
    "glass": frozenset({"depth behind"}),
    "grille": frozenset({"room in front"}),
    "width": frozenset({"hole"}),
    "height": frozenset({"hole"}),
}
EVERY = frozenset({"hole", "depth behind", "room in front"})


@once_a_place
def speaker_clashes(book: KnowledgeBase, vehicle: str, place: str) -> tuple[Clash, ...]:
    """Every clash among the strong notes of a place for a speaker; empty where some room agrees with all of them."""
    known = speaker_place_of(book, vehicle, place)
    rooms = SpeakerRooms(known.frame, known.evidence.standing)
    found = cores(rooms.notes, lambda notes: rooms.agreeing(notes).possible)
    return gathered(_core(rooms, core) for core in found)


def _core(rooms: SpeakerRooms, core: tuple[SpeakerStanding, ...]) -> Core:
    sizes = [size for size in sorted(_common(core)) if _is_about(rooms, core, size)]
    notes = tuple(one.note for one in core)
    size = sizes[0] if len(sizes) == 1 else "room"
    why = _why(rooms.frame.book, notes, size)
    return Core(notes, size, shared_builds(one.builds for one in core), why)


def _why(book: KnowledgeBase, notes: tuple[Tried | Measured, ...], size: str) -> Explained:
    tried = [note for note in notes if isinstance(note, Tried)]
    if len(notes) == len(tried) == 2 and len({needs_of_note(book, note).key for note in tried}) == 1:
        return Explained("same thing")
    found = not_across(book, notes) if size == "hole" else other_face(notes)
    return found or Explained("room")


def _common(core: tuple[SpeakerStanding, ...]) -> frozenset[str]:
    return EVERY.intersection(*(frozenset(_speaks_of(one)) for one in core))


def _speaks_of(one: SpeakerStanding) -> Iterator[str]:
    if isinstance(one.note, Measured):
        yield from map(size_of, one.note.readings)
    else:
        yield from BY_REASON.get(one.note.reason or "", EVERY) if one.says == "does not" else EVERY


def size_of(reading: RoomReading) -> str:
    """Which of the three rooms of a speaker a reading is of; empty for any other."""
    if reading.of in HOLE:
        return "hole"
    if reading.of == FRONT:
        return "room in front"
    return "depth behind" if reading.of.startswith("rear depth") else ""


def _is_about(rooms: SpeakerRooms, core: tuple[SpeakerStanding, ...], size: str) -> bool:
    """Whether the notes still cannot all be true when of their readings only those of one size count."""
    only = tuple(replace(one, note=_only(one.note, size)) if isinstance(one.note, Measured) else one for one in core)
    return not rooms.agreeing(only).possible


def _only(note: Measured, size: str) -> Measured:
    return note.model_copy(update={"readings": tuple(one for one in note.readings if size_of(one) == size)})
