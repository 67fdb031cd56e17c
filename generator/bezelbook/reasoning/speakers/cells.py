"""The numbers a speaker's fit is about: the hole, what is behind and in front of it, and what mounts make of them."""

from collections.abc import Hashable, Iterable, Iterator, Sequence
from itertools import permutations
from typing import Literal, NamedTuple

from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.kinds.vehicle.record import PlaceKind, Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.bounds import Constraint, Rise
from bezelbook.reasoning.builds import Build, bearing_axes, builds
from bezelbook.reasoning.cells import between
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.speakers.needs import SHORT_WAY, SpeakerNeed, SpeakerNeeds
from bezelbook.reasoning.speakers.stacks import SpeakerStack, Tabs, Way, hole_span
from bezelbook.values.span import Span

Rear = Literal["fixed", "glass"]
RoomSize = Literal["long way", "short way", "fixed", "glass", "front"]
# Where somebody read the worst point of the glass's way, how far it is when it is fully down is a size of its own.
ReadSize = RoomSize | Literal["glass down"]
WAYS: tuple[RoomSize, ...] = ("long way", "short way")
# A size with another that is never less in the same state.
NO_LESS: frozenset[tuple[ReadSize, ReadSize]] = frozenset({("short way", "long way"), ("glass", "glass down")})
Glass = Literal["up", "run"]

SPEAKER_PLACES: frozenset[PlaceKind] = frozenset(
    {
        "dash corner",
        "dash centre speaker",
        "pillar",
        "mirror triangle",
        "door upper",
        "door lower",
        "kick panel",
        "rear door",
        "rear quarter",
        "parcel shelf",
        "wheel well",
        "load bay side",
    }
)
# Places that take a box as well as a speaker.
EITHER_PLACES: frozenset[PlaceKind] = frozenset({"under seat", "overhead console"})
# Where glass comes down behind the speaker.
DOORS: frozenset[PlaceKind] = frozenset({"door upper", "door lower", "rear door"})
LIFT = 10**9
USUAL_REAR: tuple[Rear, ...] = ("fixed",)
FIXED = "rear depth to fixed"
GLASS = ("rear depth to glass down", "rear depth at worst of travel")


class SpeakerRoom(NamedTuple):
    """One size of the place in one build, with something cut: a way of the hole, a depth behind, or the front."""

    build: Build
    cut: str
    size: ReadSize


class MountHole(NamedTuple):
    """One way of a mount's hole, the same in every car; `tabs` is None for a mount that has none."""

    mount: str
    way: Way
    tabs: Tabs | None


class Presented(NamedTuple):
    """A depth behind or in front as met through a stack whose offset has a ±, and `LIFT` on top.

    A thick ring may leave less than nothing in front of it, and a number of these bounds is never negative.
    """

    stack: tuple[str, ...]
    room: SpeakerRoom


class SpeakerSize(NamedTuple):
    """One need of a speaker whose size has a ±."""

    key: str
    need: SpeakerNeed


SpeakerCell = SpeakerRoom | MountHole | Presented | SpeakerSize


class SpeakerDemand(NamedTuple):
    """A speaker's `need` must be no larger than `cell` plus `shift` nanometres; `size` says what is met there."""

    need: SpeakerNeed
    cell: SpeakerCell
    shift: int
    size: RoomSize


class SpeakerSetting(NamedTuple):
    """One build, one way of fitting; glass that was run has been down and all the way."""

    build: Build
    stack: SpeakerStack
    cut: str
    tabs: Tabs
    glass: Glass


class SpeakerFrame(NamedTuple):
    """One place of one vehicle, with the builds that make a difference to its room.

    `rears` are what can stop a speaker at the back: in a door the glass, elsewhere what is fixed, and wherever a note
    speaks of the other, that too. `travel_read` says that a note reads how far the glass comes at its worst.
    """

    book: KnowledgeBase
    vehicle: Vehicle
    place: str
    builds: tuple[Build, ...]
    rears: tuple[Rear, ...]
    travel_read: bool = False


def frame_of(book: KnowledgeBase, vehicle: Vehicle, place: str, notes: Sequence[AnyNote]) -> SpeakerFrame:
    """The frame of a place, given the notes that stand there."""
    of = vehicle.places.get(place)
    told = {rear for note in notes for rear in _speaks_of(note)}
    usual: Rear = "glass" if of is not None and of.kind in DOORS else "fixed"
    rears: tuple[Rear, ...] = ("fixed", "glass")
    return SpeakerFrame(
        book,
        vehicle,
        place,
        builds(vehicle, bearing_axes(vehicle, place, "room")),
        tuple(rear for rear in rears if rear == usual or rear in told),
        any(reading.of == GLASS[1] for note in notes if isinstance(note, Measured) for reading in note.readings),
    )


def _speaks_of(note: AnyNote) -> set[Rear]:
    """What a note tells, or says to have been, behind a speaker."""
    if isinstance(note, Tried) and note.verdict == "does not":
        if note.reason == "glass":
            return {"glass"}
        return {"fixed"} if note.reason in (None, "depth") and note.glass == "up" else set()
    if isinstance(note, Measured):
        told: set[Rear] = {"fixed"} if any(reading.of == FIXED for reading in note.readings) else set()
        return told | ({"glass"} if any(reading.of in GLASS for reading in note.readings) else set())
    return set()


def demands(frame: SpeakerFrame, needs: SpeakerNeeds, setting: SpeakerSetting) -> tuple[SpeakerDemand, ...]:
    """What a speaker asks of its place in a setting; with the glass up, nothing of the glass."""
    found: list[SpeakerDemand] = []
    if "basket" in needs.asked:
        round_way: RoomSize = "long way" if needs.oval else "short way"
        found += [SpeakerDemand("basket", cell, 0, round_way) for cell in hole_cells(setting, round_way)]
    if needs.oval and SHORT_WAY in needs.asked:
        found += [SpeakerDemand(SHORT_WAY, cell, 0, "short way") for cell in hole_cells(setting, "short way")]
    if "mounting depth" in needs.asked:
        # With the glass up something is behind it all the same, whether anybody spoke of it or not.
        rears = frame.rears if setting.glass == "run" else USUAL_REAR
        found += [SpeakerDemand("mounting depth", *met(setting, rear), rear) for rear in rears]
    if "front height" in needs.asked:
        found.append(SpeakerDemand("front height", *met(setting, "front"), "front"))
    return tuple(found)


def hole_cells(setting: SpeakerSetting, size: RoomSize) -> tuple[SpeakerCell, ...]:
    """Every hole that the basket goes through, the way that `size` says."""
    way: Way = "long" if size == "long way" else "short"
    mounts = tuple(MountHole(mount, way, setting.tabs if tabs else None) for mount, tabs in setting.stack.holes)
    return (*mounts, SpeakerRoom(setting.build, setting.cut, size)) if setting.stack.through else mounts


def met(setting: SpeakerSetting, size: ReadSize) -> tuple[SpeakerCell, int]:
    """Where a depth is met in a setting, and the nanometres that an exactly known offset adds to it.

    What holds a speaker out gives it room behind and takes it away in front.
    """
    room, offset = SpeakerRoom(setting.build, setting.cut, size), setting.stack.offset
    if offset.exact and offset.low is not None:
        return room, -offset.low if size == "front" else offset.low
    return Presented(setting.stack.key, room), -LIFT


def structure(
    book: KnowledgeBase,
    cells: set[SpeakerCell],
    stacks: Iterable[SpeakerStack],
    varying: Iterable[SpeakerNeeds],
    *,
    holes_unread: bool,
) -> list[Constraint]:
    """What always holds between these numbers: ways and states in order, offsets, holes and sizes within their ±."""
    offsets = {stack.key: stack.offset for stack in stacks}
    every = sorted(cells | {cell.room for cell in cells if isinstance(cell, Presented)}, key=repr)
    constraints: list[Constraint] = []
    for cell in every:
        if isinstance(cell, Presented):
            constraints += _through(cell, offsets[cell.stack])
        elif isinstance(cell, MountHole) and not holes_unread:
            constraints += between(cell, None, hole_span(book, cell.mount, cell.way, cell.tabs))
    constraints += _in_order(every)
    for needs in varying:
        for need, span in needs.spans.items():
            constraints += between(SpeakerSize(needs.key, need), None, span)
    return constraints


def _through(cell: Presented, offset: Span) -> list[Constraint]:
    lift = Span(LIFT, LIFT)
    if cell.room.size == "front":
        return between(cell.room, cell, offset.minus(lift))
    return between(cell, cell.room, offset.plus(lift))


def _in_order(cells: Iterable[SpeakerCell]) -> Iterator[Rise]:
    """Which numbers can never be less than which others."""
    alike: dict[Hashable, list[SpeakerCell]] = {}
    for cell in cells:
        alike.setdefault(_sort(cell), []).append(cell)
    for group in alike.values():
        for mean, roomy in permutations(group, 2):
            if _no_roomier(mean, roomy):
                yield Rise(roomy, mean, 0)


def _sort(cell: SpeakerCell) -> Hashable:
    """What two numbers have in common that can be in order at all."""
    return (cell.stack, cell.room.build) if isinstance(cell, Presented) else cell[:1]


def _no_roomier(mean: SpeakerCell, roomy: SpeakerCell) -> bool:
    """A cut takes no room away, tabs that are out neither; the long way is no shorter, glass that is down no nearer."""
    if isinstance(mean, MountHole) and isinstance(roomy, MountHole):
        return (mean.way, roomy.way) != ("long", "short") and (
            mean.tabs == roomy.tabs or (mean.tabs, roomy.tabs) == ("in", "out")
        )
    if isinstance(mean, Presented) and isinstance(roomy, Presented):
        return _no_roomier(mean.room, roomy.room)
    if isinstance(mean, SpeakerRoom) and isinstance(roomy, SpeakerRoom):
        sizes = mean.size == roomy.size or (mean.size, roomy.size) in NO_LESS
        return sizes and mean.cut in (roomy.cut, UNCUT)
    return False
