"""Which notes of a place stand, for which builds and state, and which are only quoted beside them and why."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Literal, TypeVar

from bezelbook.kinds.note.record import AnyNote, Measured, RoomReading, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build, bearing_axes, builds, known_splits, matching
from bezelbook.reasoning.mounting import BARE, Stack, stack_of
from bezelbook.reasoning.slip import slips
from bezelbook.values.words import STRONG

Says = Literal["goes in", "does not", "reading"]
N = TypeVar("N", bound=AnyNote)
UNCUT = "nothing"
# The most generous end of the cut axis: whatever was cut, there was no more room than this.
ANY_CUT = "anything"
ROOM_REASONS = (None, "depth", "width", "height", "nose", "plug")


@dataclass(frozen=True, slots=True, eq=False)
class Standing:
    """A strong note that binds the room, read at the end of each blank axis at which it is certainly true.

    `builds` are the builds the car may be; `stack` is None when the mounts were left blank, and then the note says
    nothing about the bare opening.
    """

    note: Tried | Measured
    says: Says
    builds: tuple[Build, ...]
    stack: Stack | None
    cut: str
    loom: Literal["behind", "aside"]
    plugs_on: bool

    @property
    def has_gap(self) -> bool:
        """Whether it says by how much."""
        return isinstance(self.note, Tried) and bool(self.note.to_spare or self.note.short_by)

    @property
    def without_gap(self) -> "Standing":
        """The same note as if it did not say by how much."""
        if not self.has_gap:
            return self
        return replace(self, note=self.note.model_copy(update={"to_spare": None, "short_by": None}))


@dataclass(frozen=True, slots=True)
class Beside:
    """A note that binds nothing, with the reason in the shop's words."""

    note: AnyNote
    why: str


@dataclass(frozen=True, slots=True)
class Evidence:
    """The notes at a place, sorted: `standing` bind, `weak` are quoted, `aside` wait for somebody to confirm them."""

    standing: tuple[Standing, ...]
    weak: tuple[Beside, ...]
    aside: tuple[Beside, ...]


def evidence_at(book: KnowledgeBase, vehicle: Vehicle, place: str) -> Evidence:
    """What the notes at one place amount to: every note that says anything of its room is in one of the lists."""
    notes = [note for note in book.notes_at(vehicle.id, place) if isinstance(note, Tried | Measured)]
    replaced = {note.replaces: note.id for note in notes if note.replaces and by_strength(note)}
    standing: list[Standing] = []
    weak: list[Beside] = []
    aside = [Beside(one.note, f"struck: {one.because}") for one in book.struck_at(vehicle.id, place)]
    for note in notes:
        why_waits = why_aside(note, replaced)
        why_weak = _why_weak(note)
        if why_waits:
            aside.append(Beside(note, why_waits))
        elif why_weak:
            weak.append(Beside(note, why_weak))
        else:
            standing.append(standing_of(book, vehicle, note))
    return Evidence(tuple(standing), tuple(weak), tuple(aside))


def standing_of(book: KnowledgeBase, vehicle: Vehicle, note: Tried | Measured) -> Standing:
    """How a strong note binds: blank axes at the generous end of a yes and at the mean end of a no."""
    axes = bearing_axes(vehicle, note.place, "room")
    known = known_splits(vehicle, note.splits, note.year)
    every = builds(vehicle, axes)
    cars = matching(every, known) or every
    if isinstance(note, Measured):
        bare = stack_of(book, _mounts(note) or (), note.id)
        return Standing(note, "reading", cars, bare, note.cut or UNCUT, note.loom or "aside", plugs_on=False)
    mounts = _mounts(note)
    stack = None if mounts is None else stack_of(book, mounts, note.id)
    if note.verdict == "does not":
        return Standing(note, "does not", cars, stack, note.cut or UNCUT, note.loom or "behind", note.plugs != "off")
    plugs_on = note.plugs == "on" or (note.plugs is None and note.sure == "fitted")
    return Standing(note, "goes in", cars, stack, note.cut or ANY_CUT, note.loom or "aside", plugs_on)


def witnesses(notes: Iterable[AnyNote]) -> int:
    """How many independent jobs these notes are: distinct job tags, else distinct author, day and vehicle."""
    return len({job_key(note) for note in notes})


def job_key(note: AnyNote) -> tuple[str | None, ...]:
    """What two notes of one job have in common: the tag, else author, day and vehicle."""
    return (note.job,) if note.job else (note.author, note.date, getattr(note, "vehicle", None))


def unreplaced(notes: Iterable[N]) -> list[N]:
    """Those of these notes that no other of them takes the place of, in the order they came."""
    every = list(notes)
    replaced = {note.replaces for note in every}
    return [note for note in every if note.id not in replaced]


def refused_reading(reading: RoomReading, stack: Stack) -> str | None:
    """Why a reading cannot be compared with the others, or None when it can."""
    if reading.tool == "eye":
        return "was read by eye"
    if reading.of != "depth":
        return None
    if reading.datum is None:
        return "does not say from which face it was measured"
    if reading.datum == "sub-dash face" or (reading.datum == "kit seat" and stack != BARE):
        return None
    return f"was measured from the {reading.datum}, not from the sub-dash face"


def _mounts(note: Tried | Measured) -> tuple[str, ...] | None:
    return () if note.mounts == "none" else note.mounts


def by_strength(note: Tried | Measured) -> bool:
    """Whether a note may take another's place: hearsay and guesses put nothing aside."""
    return isinstance(note, Measured) or note.sure in STRONG


def why_aside(note: Tried | Measured, replaced: Mapping[str, str]) -> str | None:
    """Why a note waits, given what replaces what; None when it does not wait."""
    if note.id in replaced:
        return f"replaced by {replaced[note.id]}"
    found = slips(note)
    if not found:
        return None
    slip = found[0]
    low, high = slip.usual_mm
    return (
        f"{slip.field} {slip.typed} is outside the usual {low} to {high} mm, so it waits until somebody reads it back"
    )


def _why_weak(note: Tried | Measured) -> str | None:
    if isinstance(note, Measured):
        by_eye = all(reading.tool == "eye" for reading in note.readings)
        return "read by eye" if by_eye else None
    if note.verdict == "not tried":
        return "not tried"
    if note.sure not in STRONG:
        return f"only {note.sure}"
    if note.verdict == "goes in if" and note.cut in (None, UNCUT):
        return f"on a condition: {note.condition or 'not said which'}"
    if note.verdict == "does not" and note.reason not in ROOM_REASONS:
        return f"did not go in because of {note.reason}, which is not a matter of room"
    return None
