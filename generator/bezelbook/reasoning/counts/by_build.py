"""The clips of a job at a place: those on every piece that its removal takes off, build by build where they differ."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.kinds.note.record import After, Seen
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build, bearing_axes, builds, known_splits, matching
from bezelbook.reasoning.counts.clips import ClipNeed, clip_needs
from bezelbook.reasoning.counts.fixing import fixings
from bezelbook.reasoning.counts.lost import Tally
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.order.accounts import accounts_of
from bezelbook.reasoning.order.removal import Removal, removals_at


@dataclass(frozen=True, slots=True)
class ClipsFor:
    """What the removal wants in these builds."""

    builds: tuple[Build, ...]
    needs: tuple[ClipNeed, ...]


def clips_by_build(
    book: KnowledgeBase, vehicle: str, place: str, everywhere: Mapping[str, Tally], today: str
) -> tuple[ClipsFor, ...]:
    """The clips that fly or stay when a place is opened, for each build in which that is not the same.

    A piece counts once however many places it is on the way to, and whichever place the note that counted it is about.
    Of a car that is not in the book nothing is known.
    """
    record = book.vehicles.get(vehicle)
    if record is None:
        return ()
    past = [note for note in unreplaced(book.notes_at(vehicle, place)) if isinstance(note, After)]
    found: list[ClipsFor] = []
    for build, removal in _of_each_build(book, record, place):
        here = [note for note in past if matching((build,), known_splits(record, note.splits, note.year))]
        told = fixings(book, _told(book, record, place, build, removal))
        _add(found, clip_needs(book, told, here, everywhere, today), build)
    return tuple(found)


def clips_at(
    book: KnowledgeBase,
    vehicle: str,
    place: str,
    everywhere: Mapping[str, Tally],
    today: str,
    splits: Mapping[str, str] | None = None,
) -> tuple[ClipNeed, ...]:
    """The clips of a job by kind; over all builds that agree with these splits the larger need is the one to have."""
    found: dict[str, ClipNeed] = {}
    for one in clips_by_build(book, vehicle, place, everywhere, today):
        if matching(one.builds, splits or {}):
            for need in one.needs:
                found[need.kind] = max(found.get(need.kind, need), need, key=_how_many)
    return tuple(found[kind] for kind in sorted(found))


def _how_many(need: ClipNeed) -> int:
    """How many come off, on which alone the need of one kind depends; a count of none is more than no count."""
    return -1 if need.handled is None else need.handled


def _add(found: list[ClipsFor], needs: tuple[ClipNeed, ...], build: Build) -> None:
    """Keep what a build wants with the builds that want the same."""
    for number, one in enumerate(found):
        if one.needs == needs:
            found[number] = ClipsFor((*one.builds, build), needs)
            return
    found.append(ClipsFor((build,), needs))


def _of_each_build(book: KnowledgeBase, vehicle: Vehicle, place: str) -> Iterator[tuple[Build, Removal]]:
    """Every build with the order that holds for it, in the vehicle's own order."""
    removals = removals_at(book, vehicle, place)
    for build in builds(vehicle, bearing_axes(vehicle, place, "trim")):
        yield build, next(removal for removal in removals if build in removal.builds)


def _told(book: KnowledgeBase, vehicle: Vehicle, place: str, build: Build, removal: Removal) -> Sequence[Seen]:
    """The notes that may be of this build, each with no more than the pieces that come off, and what is loose here."""
    off = {step.piece for step in removal.steps}
    notes = (one.note for one in accounts_of(book, vehicle).counting if one.may_be(build))
    return [
        note.model_copy(
            update={
                "pieces": tuple(piece for piece in note.pieces if piece.piece in off),
                "fasteners": note.fasteners if note.place == place else (),
            }
        )
        for note in notes
    ]
