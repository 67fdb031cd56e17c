"""Which notes tell what came off a vehicle, on which builds each may have been made, and which no longer count."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import AnyNote, Seen, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase, Struck
from bezelbook.reasoning.builds import Build, known_splits
from bezelbook.reasoning.evidence import Beside
from bezelbook.values.words import STRONG


@dataclass(frozen=True, slots=True)
class Account:
    """A note that tells of pieces, and what is known of the car it was made on."""

    note: Seen
    known: Mapping[str, str]

    def may_be(self, build: Build) -> bool:
        """Whether its car may have been of this build; what it left blank may be either."""
        return all(self.known.get(axis, value) == value for axis, value in build)

    def may_be_like(self, other: "Account") -> bool:
        """Whether both cars may have been of one build."""
        return self.may_be(tuple(other.known.items()))

    def leaves_open(self, build: Build) -> tuple[str, ...]:
        """The axes of this build that it says nothing of."""
        return tuple(axis for axis, _ in build if axis not in self.known)


@dataclass(frozen=True, slots=True)
class Accounts:
    """The notes of one vehicle about what comes off: those that count, oldest first, and those set aside and why."""

    counting: tuple[Account, ...]
    aside: tuple[Beside, ...]


def accounts_of(book: KnowledgeBase, vehicle: Vehicle) -> Accounts:
    """Every note of a vehicle that names a piece, a fastener or a hidden fixing, wherever it was made.

    A note that another took the place of, or that a decision struck, is set aside.
    """
    replaced = _replaced(book, vehicle)
    counting: list[Account] = []
    aside = [Beside(one.note, f"struck: {one.because}") for one in _lost(book, vehicle)]
    for note in _notes_of(book, vehicle):
        if not isinstance(note, Seen) or not _tells(note):
            continue
        if note.id in replaced:
            aside.append(Beside(note, replaced[note.id]))
        else:
            counting.append(Account(note, known_splits(vehicle, note.splits, note.year)))
    return Accounts(tuple(sorted(counting, key=lambda one: oldest_first(one.note))), tuple(aside))


def oldest_first(note: AnyNote) -> tuple[str, str]:
    """Where a note stands among others by age; one without a date comes last."""
    return note.date or "9999", note.id


def _notes_of(book: KnowledgeBase, vehicle: Vehicle) -> Iterator[AnyNote]:
    ids = dict.fromkeys(one.id for one in book.pointers_to("vehicle", vehicle.id) if one.kind == "note")
    return (book.notes[id_] for id_ in ids)


def _tells(note: Seen) -> bool:
    return bool(note.lies_over or note.shares_screw or note.hidden or note.fasteners or note.pieces)


def _replaced(book: KnowledgeBase, vehicle: Vehicle) -> dict[str, str]:
    """The notes that others took the place of; hearsay and guesses put nothing aside, and no note replaces itself."""
    return {
        note.replaces: f"replaced by {note.id}"
        for note in _notes_of(book, vehicle)
        if note.replaces and note.replaces != note.id and (not isinstance(note, Tried) or note.sure in STRONG)
    }


def _lost(book: KnowledgeBase, vehicle: Vehicle) -> Iterator[Struck]:
    """What was struck of all that tells of pieces of this vehicle, in order of id."""
    for _, one in sorted(book.struck.items()):
        if isinstance(one.note, Seen) and one.note.vehicle == vehicle.id and _tells(one.note):
            yield one
