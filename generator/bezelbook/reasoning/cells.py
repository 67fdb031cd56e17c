"""The numbers a fit is about: the room in each state, the hole a mount presents, and the sizes of a part."""

from collections.abc import Iterable, Sequence
from typing import Literal, NamedTuple

from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.bounds import STRICT, Constraint, Either, Number, Rise, Under, exactly
from bezelbook.reasoning.builds import Build, bearing_axes, builds
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.mounting import HOLES, Stack
from bezelbook.reasoning.needs import Need, Needs
from bezelbook.values.span import Span
from bezelbook.values.words import NINTHS, Ninth

Loom = Literal["behind", "aside"]


class RoomCell(NamedTuple):
    """A clear width or height, or the depth of one ninth, of the bare opening in one state.

    `loom` is None for a width or height, which it does not change.
    """

    build: Build
    cut: str
    loom: Loom | None
    size: str


class HoleCell(NamedTuple):
    """A size of the hole that a mount presents, the same in every car."""

    mount: str
    size: str


class PresentedCell(NamedTuple):
    """The depth of a ninth as seen through a stack whose offset has a ±."""

    stack: tuple[str, ...]
    room: RoomCell


class PartSize(NamedTuple):
    """One need of a part whose size has a ±."""

    key: str
    need: Need


Cell = RoomCell | HoleCell | PresentedCell | PartSize


class Demand(NamedTuple):
    """A part's `need` must be no larger than `cell` plus `shift` nanometres; `ninth` for a depth."""

    need: Need
    cell: Cell
    shift: int
    ninth: Ninth | None


class Setting(NamedTuple):
    """One build, one way of fitting."""

    build: Build
    stack: Stack
    cut: str
    loom: Loom
    plugs_on: bool

    @property
    def meets(self) -> tuple[Build, tuple[str, ...], str, Loom]:
        """All of it that tells which numbers are met there."""
        return self.build, self.stack.key, self.cut, self.loom


class Frame(NamedTuple):
    """One place of one vehicle, with the builds that make a difference to its room.

    `nose_framed` says that something of the car's own frames the nose of what sits here.
    """

    book: KnowledgeBase
    vehicle: Vehicle
    place: str
    builds: tuple[Build, ...]
    nose_framed: bool


def frame_of(book: KnowledgeBase, vehicle: Vehicle, place: str) -> Frame:
    """The frame of a place."""
    of = vehicle.places.get(place)
    framed = (of is not None and of.kind == "opening behind a bezel") or any(
        _about_nose(note) for note in book.notes_at(vehicle.id, place)
    )
    return Frame(book, vehicle, place, builds(vehicle, bearing_axes(vehicle, place, "room")), framed)


def _about_nose(note: AnyNote) -> bool:
    """Whether a note tells of something that a nose met or would meet, whatever the place is called."""
    if isinstance(note, Tried):
        return note.reason == "nose"
    return isinstance(note, Measured) and any(reading.of in ("nose width", "nose height") for reading in note.readings)


def demands(frame: Frame, needs: Needs, setting: Setting) -> tuple[tuple[Demand, ...], tuple[Demand, ...]]:
    """What a part asks of the room in a setting: what certainly, and at which ninth its plug may leave.

    The second tuple is empty when the plugs are off, has one demand when the exit is known, and otherwise one for
    each ninth it might be.
    """
    front = tuple(
        Demand(need, hole_cell(setting, need), 0, None)
        for need in ("width", "height", "nose width", "nose height")
        if need in needs.asked and (need in setting.stack.holes or frame.nose_framed or "nose" not in need)
    )
    if "depth" not in needs.asked:
        return front, ()
    body = tuple(_deep("depth", setting, ninth) for ninth in setting.stack.ninths)
    exits = (needs.exit,) if needs.exit else setting.stack.ninths
    return front + body, tuple(_deep("plug", setting, ninth) for ninth in exits) if setting.plugs_on else ()


def hole_cell(setting: Setting, size: str) -> Cell:
    """Where a width or height is met: the hole of the last mount that frames it, else the bare opening."""
    if size in setting.stack.holes:
        return HoleCell(setting.stack.holes[size][0], size)
    return RoomCell(setting.build, setting.cut, None, size)


def depth_cell(setting: Setting, ninth: Ninth) -> tuple[Cell, int]:
    """Where the depth of a ninth is met in a setting, and the nanometres that an exactly known offset adds to it."""
    room = RoomCell(setting.build, setting.cut, setting.loom, ninth)
    offset = setting.stack.offset
    if offset.exact and offset.low is not None:
        return room, offset.low
    return PresentedCell(setting.stack.key, room), 0


def cells_met(setting: Setting) -> tuple[Cell, ...]:
    """Every number that anything could meet in a setting."""
    front = tuple(hole_cell(setting, size) for size in HOLES)
    return front + tuple(depth_cell(setting, ninth)[0] for ninth in NINTHS)


def _deep(need: Need, setting: Setting, ninth: Ninth) -> Demand:
    cell, shift = depth_cell(setting, ninth)
    return Demand(need, cell, shift, ninth)


def structure(
    cells: set[Cell], stacks: tuple[Stack, ...], varying: tuple[Needs, ...], *, holes_unread: bool = False
) -> list[Constraint]:
    """What always holds between these numbers: states in order, offsets, holes and part sizes within their ±.

    With `holes_unread` nothing is known of the holes that mounts frame.
    """
    rooms = cells | {cell.room for cell in cells if isinstance(cell, PresentedCell)}
    constraints: list[Constraint] = list(_ordered([cell for cell in rooms if isinstance(cell, RoomCell)]))
    constraints += _ordered([cell for cell in cells if isinstance(cell, PresentedCell)])
    offsets = {stack.key: stack.offset for stack in stacks}
    holes = {(mount, size): span for stack in stacks for size, (mount, span) in stack.holes.items()}
    for cell in sorted(cells, key=repr):
        if isinstance(cell, PresentedCell):
            constraints += between(cell, cell.room, offsets[cell.stack])
        elif isinstance(cell, HoleCell) and not holes_unread:
            constraints += between(cell, None, holes[cell.mount, cell.size])
    for needs in varying:
        constraints += _part(needs)
    return constraints


def between(cell: Number, base: Number | None, span: Span) -> list[Constraint]:
    """`cell` minus `base` lies within a span of nanometres; without `base`, `cell` does."""
    ends: list[Constraint] = []
    give = 0 if span.exact else STRICT
    if span.low is not None:
        ends.append(Rise(cell, base, exactly(span.low) + (0 if span.closed else STRICT)))
    if span.high is not None and base is not None:
        ends.append(Rise(base, cell, give - exactly(span.high)))
    if span.high is not None and base is None:
        ends.append(Either((Under(cell, None, exactly(span.high) + (1 - give)),)))
    return ends


def structure_met(
    setting: Setting, others: Iterable[Number | None], stacks: tuple[Stack, ...], *, holes_unread: bool = False
) -> list[Constraint]:
    """The same of all that is met in a setting, beside these `others`: none of it is less than nothing."""
    cells = cells_met(setting)
    rooms = (cell for cell in others if isinstance(cell, RoomCell | PresentedCell))
    beside = {cell for cell in rooms if _seen_through(cell)[1].build == setting.build}
    floors = [Rise(cell, None, 0) for cell in cells]
    return [*floors, *structure({*cells, *beside}, (*stacks, setting.stack), (), holes_unread=holes_unread)]


def _part(needs: Needs) -> list[Constraint]:
    depth, plug = PartSize(needs.key, "depth"), PartSize(needs.key, "plug")
    sizes: list[Constraint] = []
    for need, span in needs.spans.items():
        if need != "plug":
            sizes += between(PartSize(needs.key, need), None, span)
    return [*sizes, Rise(plug, depth, 0), *between(plug, depth, needs.plug_over_body)]


def _ordered(cells: Sequence[RoomCell | PresentedCell]) -> list[Constraint]:
    """Cutting never takes room away, and neither does moving the loom aside; nor does it through the same mounts."""
    groups: dict[tuple[tuple[str, ...], Build, str], list[RoomCell | PresentedCell]] = {}
    for cell in sorted(cells, key=repr):
        stack, room = _seen_through(cell)
        groups.setdefault((stack, room.build, room.size), []).append(cell)
    pairs = ((mean, roomy) for group in groups.values() for mean in group for roomy in group if mean != roomy)
    return [
        Rise(roomy, mean, 0) for mean, roomy in pairs if _no_roomier(_seen_through(mean)[1], _seen_through(roomy)[1])
    ]


def _seen_through(cell: RoomCell | PresentedCell) -> tuple[tuple[str, ...], RoomCell]:
    return (cell.stack, cell.room) if isinstance(cell, PresentedCell) else ((), cell)


def _no_roomier(mean: RoomCell, roomy: RoomCell) -> bool:
    return mean.cut in (roomy.cut, UNCUT) and mean.loom in (roomy.loom, "behind")
