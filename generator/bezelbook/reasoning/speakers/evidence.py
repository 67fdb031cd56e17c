"""Which notes of a place say what of its room for a speaker, and which are only quoted beside them and why."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Literal

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.note.record import Measured, RoomReading, Tried
from bezelbook.kinds.vehicle.record import PlaceKind, Vehicle
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.builds import Build, bearing_axes, builds, known_splits, matching
from bezelbook.reasoning.evidence import ANY_CUT, UNCUT, Beside, by_strength, why_aside
from bezelbook.reasoning.speakers.cells import DOORS, FIXED, GLASS, Glass
from bezelbook.reasoning.speakers.gasket import gasket_named, unsaid_gasket
from bezelbook.reasoning.speakers.stacks import SpeakerStack, Tabs, stack_of
from bezelbook.values.words import STRONG, Datum

Says = Literal["goes in", "does not", "reading"]
FRONT = "front clearance"
DEPTHS = (FIXED, *GLASS, FRONT)
HOLE = ("cut-out", "cut-out long way", "cut-out short way")
ROOM_REASONS = (None, "depth", "glass", "grille", "width", "height")


@dataclass(frozen=True, slots=True, eq=False)
class SpeakerStanding:
    """A strong note that binds the room, read at the end of each blank axis at which it is certainly true.

    `stack` is None when the mounts were left blank, and then the note says nothing.
    """

    note: Tried | Measured
    says: Says
    builds: tuple[Build, ...]
    stack: SpeakerStack | None
    cut: str
    tabs: Tabs
    glass: Glass

    @property
    def has_gap(self) -> bool:
        """Whether it says by how much."""
        return isinstance(self.note, Tried) and bool(self.note.to_spare or self.note.short_by)

    @property
    def without_gap(self) -> "SpeakerStanding":
        """The same note as if it did not say by how much."""
        return replace(self, note=self.note.model_copy(update={"to_spare": None, "short_by": None}))


@dataclass(frozen=True, slots=True)
class SpeakerEvidence:
    """The notes at a place, sorted: `standing` bind, `weak` are quoted, `aside` wait for somebody to confirm them."""

    standing: tuple[SpeakerStanding, ...]
    weak: tuple[Beside, ...]
    aside: tuple[Beside, ...]


def evidence_at(book: KnowledgeBase, vehicle: Vehicle, place: str) -> SpeakerEvidence:
    """What the notes about a place amount to for a speaker."""
    notes = list(_notes(book, vehicle, place))
    replaced = {note.replaces: note.id for note in notes if note.replaces and by_strength(note)}
    standing: list[SpeakerStanding] = []
    weak: list[Beside] = []
    aside: list[Beside] = []
    for note in notes:
        waits, only = why_aside(note, replaced), _why_weak(note)
        if waits:
            aside.append(Beside(note, waits))
        elif only:
            weak.append(Beside(note, only))
        else:
            standing.append(standing_of(book, vehicle, place, note))
    return SpeakerEvidence(tuple(standing), tuple(weak), tuple(aside))


def standing_of(book: KnowledgeBase, vehicle: Vehicle, place: str, note: Tried | Measured) -> SpeakerStanding:
    """How a note binds: blank axes at the generous end of a yes and at the mean end of a no."""
    known = known_splits(vehicle, note.splits, note.year)
    every = builds(vehicle, bearing_axes(vehicle, place, "room"))
    cars = matching(every, known) or every
    mounts = () if note.mounts == "none" else note.mounts
    cut = UNCUT if note.cut and _only_tabs(note) else note.cut
    if isinstance(note, Measured):
        stack = stack_of(book, mounts or (), note=note.id)
        return SpeakerStanding(note, "reading", cars, stack, cut or UNCUT, note.tabs or "in", "run")
    gasket = gasket_named(book, note.gasket) if note.gasket else unsaid_gasket(book, note.id)
    on = None if mounts is None else stack_of(book, mounts, gasket, note.id)
    if note.verdict == "does not":
        glass: Glass = "up" if note.glass == "up" else "run"
        return SpeakerStanding(note, "does not", cars, on, cut or UNCUT, note.tabs or "in", glass)
    # Whoever says where the glass was has run it down: that is what dry-fitted and fitted mean of a door.
    run: Glass = "run" if note.glass == "down" and note.sure != "measured" else "up"
    return SpeakerStanding(note, "goes in", cars, on, cut or ANY_CUT, note.tabs or "out", run)


def refused_reading(kind: PlaceKind | None, reading: RoomReading, stack: SpeakerStack, shape: str | None) -> str | None:
    """Why a reading cannot be compared with the others, or None when it can, or says nothing of a speaker's room."""
    if reading.tool == "eye":
        return "was read by eye"
    if reading.of == "cut-out" and shape in ("oval", "D"):
        return f"does not say which way of the {shape} hole it is"
    if reading.of not in DEPTHS:
        return None
    if reading.datum is None:
        return "does not say from which face it was measured"
    face = seat_of(kind)
    if reading.datum == face or (reading.datum == "bracket seat" and stack.key):
        return None
    return f"was measured from the {reading.datum}, not from the {face}"


def seat_of(kind: PlaceKind | None) -> Datum:
    """The face that a speaker sits on at such a place, from which depths are compared."""
    if kind in DOORS or kind == "mirror triangle":
        return "door metal"
    return "sub-dash face" if kind in ("dash corner", "dash centre speaker") else "inside face of panel"


def is_about_speakers(book: KnowledgeBase, note: Tried | Measured) -> bool:
    """Whether a note may be about a speaker: it does not try a head unit, and does not measure an opening only."""
    if isinstance(note, Measured):
        return any(reading.of in (*DEPTHS, *HOLE, "bolt circle", "hole spacing") for reading in note.readings)
    return not isinstance(book.named("head_unit", note.what), HeadUnit)


def _notes(book: KnowledgeBase, vehicle: Vehicle, place: str) -> Iterator[Tried | Measured]:
    """The notes made here, and readings of the other side that say this one was measured the same."""
    own = book.notes_at(vehicle.id, place)
    of = vehicle.places.get(place)
    other = book.notes_at(vehicle.id, of.other_side) if of and of.other_side else ()
    same = (note for note in other if isinstance(note, Measured) and note.other_side == "measured the same")
    for note in (*own, *same):
        if isinstance(note, Tried | Measured) and is_about_speakers(book, note):
            yield note


def _only_tabs(note: Tried | Measured) -> bool:
    """Whether what was cut is the tabs of a mount, of which the note says itself that they were out."""
    return note.tabs == "out" and "tabs" in folded(note.cut or "").replace(",", " ").split()


def _why_weak(note: Tried | Measured) -> str | None:
    if isinstance(note, Measured):
        return "read by eye" if all(reading.tool == "eye" for reading in note.readings) else None
    if note.verdict == "not tried":
        return "not tried"
    if note.sure not in STRONG:
        return f"only {note.sure}"
    if note.verdict == "goes in if" and note.cut in (None, UNCUT) and note.tabs != "out":
        return f"on a condition: {note.condition or 'not said which'}"
    if note.verdict == "does not" and note.reason not in ROOM_REASONS:
        return f"did not go in because of {note.reason}, which is not a matter of room"
    return None
