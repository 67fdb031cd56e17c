"""Whether the strong notes of a place can all be true once one of them, or the vehicle, is taken otherwise."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.cells import frame_of
from bezelbook.reasoning.differing.weights import weighs
from bezelbook.reasoning.evidence import evidence_at, standing_of
from bezelbook.reasoning.room import Rooms
from bezelbook.reasoning.speakers import cells as speaker_cells
from bezelbook.reasoning.speakers import evidence as speaker_evidence
from bezelbook.reasoning.speakers.rooms import SpeakerRooms
from bezelbook.reasoning.together import can_be_true

Room = tuple[Tried | Measured, ...]
UNCHANGED: Mapping[str, AnyNote] = {}


@dataclass(frozen=True)
class Otherwise:
    """The notes of a place that cannot all be true, and all the others there, to be tried with something changed.

    Changes are notes by id: each takes the place of the note of that id.
    """

    book: KnowledgeBase
    vehicle: Vehicle
    place: str
    core: Room

    @cached_property
    def clashes(self) -> bool:
        """Whether it is over room at all that the notes cannot all be true, as they are written."""
        return not self._agree(self.core, self.vehicle)

    def settles(self, changes: Mapping[str, AnyNote] = UNCHANGED, vehicle: Vehicle | None = None) -> Fraction:
        """How well a change settles the clash: 0 where it stays, 1 where all notes of the place agree after it.

        Between them where they do not, for then it takes another fault besides; less where that is with the very note
        that was changed, since all others agree without it.
        """
        key = (tuple(sorted((name, repr(note)) for name, note in changes.items())), repr(vehicle))
        if key not in self._settled:
            self._settled[key] = self._settles(changes, vehicle or self.vehicle)
        return self._settled[key]

    @cached_property
    def _settled(self) -> dict[object, Fraction]:
        return {}

    def _settles(self, changes: Mapping[str, AnyNote], vehicle: Vehicle) -> Fraction:
        if not self._agree(_put(self.core, changes), vehicle):
            return Fraction(0)
        if self._agree(_put(self._strong, changes), vehicle):
            return Fraction(1)
        rest = tuple(note for note in self._strong if note.id not in changes)
        return weighs("still at odds" if changes and self._agree(rest, vehicle) else "others at odds")

    @cached_property
    def _strong(self) -> Room:
        """Every note that binds the room of the place, those that clash among them."""
        here = speaker_evidence.evidence_at if self._speakers else evidence_at
        found = [one.note for one in here(self.book, self.vehicle, self.place).standing]
        return (*found, *(note for note in self.core if note.id not in {one.id for one in found}))

    @cached_property
    def _speakers(self) -> bool:
        """Whether speakers go there."""
        of = self.vehicle.places.get(self.place)
        either = speaker_cells.SPEAKER_PLACES | speaker_cells.EITHER_PLACES
        about = all(speaker_evidence.is_about_speakers(self.book, note) for note in self.core)
        return of is not None and of.kind in either and about

    def _agree(self, notes: Room, vehicle: Vehicle) -> bool:
        """Whether some room agrees with all of these."""
        book, place = self.book, self.place
        if self._speakers:
            behind = speaker_cells.frame_of(book, vehicle, place, notes)
            bound = (speaker_evidence.standing_of(book, vehicle, place, note) for note in notes)
            return SpeakerRooms(behind, tuple(bound)).possible
        standing = tuple(standing_of(book, vehicle, note) for note in notes)
        return can_be_true(Rooms(frame_of(book, vehicle, place), standing), standing)


def _put(notes: Room, changes: Mapping[str, AnyNote]) -> Room:
    changed = (changes.get(note.id, note) for note in notes)
    return tuple(note for note in changed if isinstance(note, Tried | Measured))


def otherwise(book: KnowledgeBase, vehicle: Vehicle | None, place: str, core: Iterable[AnyNote]) -> Otherwise | None:
    """The same for notes that clash over room, however a blank is read; None for others."""
    notes = tuple(note for note in core if isinstance(note, Tried | Measured))
    if vehicle is None or len(notes) < len(tuple(core)):
        return None
    found = Otherwise(book, vehicle, place, notes)
    return found if found.clashes else None
