"""The room that a part meets in one setting as plain lengths, now and once something more was read."""

from collections.abc import Hashable, Mapping
from dataclasses import dataclass, field
from functools import cached_property

from bezelbook.reasoning.bounds import nearest
from bezelbook.reasoning.cells import Cell, Demand, Setting, cells_met, demands, depth_cell, hole_cell
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.mounting import BARE, HOLES
from bezelbook.reasoning.needs import Need, Needs
from bezelbook.reasoning.outlook import clearance
from bezelbook.reasoning.room import Rooms
from bezelbook.values.span import UNKNOWN, Span
from bezelbook.values.words import NINTHS, Ninth

# What a look may tell the length of: a size or a ninth of the bare opening, or (of a mount) its hole or its offset.
Spot = Hashable
OFFSET = "offset"
# Longer than anything, in nanometres.
ENDLESS = 10**12


@dataclass(frozen=True, eq=False)
class Read:
    """What was read, by where; each is its own, however many times it is looked up."""

    spans: Mapping[Spot, Span]

    def at(self, spot: Spot) -> Span:
        """What was read there; anything where nothing was."""
        return self.spans.get(spot, UNKNOWN)


@dataclass(frozen=True, slots=True)
class Met:
    """A demand with the room that it meets: what certainly fits there, and what certainly does not, in nanometres."""

    demand: Demand
    sure: int
    most: int


@dataclass(frozen=True, slots=True)
class AllMet:
    """Every demand of a part with the room that it meets; `plug` at each ninth where its plug may leave."""

    body: tuple[Met, ...]
    plug: tuple[Met, ...]


def common(one: Span, other: Span) -> Span:
    """What both of two spans allow; nothing at all when its low end is above its high one."""
    lows = [end for end in (one.low, other.low) if end is not None]
    highs = [end for end in (one.high, other.high) if end is not None]
    return Span(max(lows, default=None), min(highs, default=None))


def empty(span: Span) -> bool:
    """Whether no length is in a span."""
    return span.low is not None and span.high is not None and span.low > span.high


@dataclass(frozen=True)
class Room:
    """What the notes of one account say of the room in a setting, each length by its ends alone.

    What a note says of several spots at once is left out: that something did not go in, but not where.
    """

    rooms: Rooms
    setting: Setting
    _met: dict[tuple[Read, Ninth | None], AllMet | None] = field(default_factory=dict, compare=False, repr=False)
    _asked: dict[Ninth | None, tuple[tuple[Demand, ...], ...]] = field(default_factory=dict, compare=False, repr=False)
    _each: dict[tuple[Need, Ninth | None, Span, Span], Met] = field(default_factory=dict, compare=False, repr=False)

    @cached_property
    def _bare(self) -> Setting:
        return Setting(self.setting.build, BARE, UNCUT, self.setting.loom, self.setting.plugs_on)

    @cached_property
    def _cells(self) -> dict[Spot, Cell]:
        """The numbers of the bare opening."""
        front: dict[Spot, Cell] = {size: hole_cell(self._bare, size) for size in HOLES}
        return front | {ninth: depth_cell(self._bare, ninth)[0] for ninth in NINTHS}

    @cached_property
    def _spans(self) -> dict[Cell, Span]:
        return {**_ends(self.rooms, self._bare), **_ends(self.rooms, self.setting)}

    @cached_property
    def _proven(self) -> dict[Cell, Span]:
        return _ends(self.rooms.fitted(), self.setting)

    @property
    def known(self) -> Hashable:
        """All that what is met here depends on."""
        return self.setting, tuple(self._spans.values()), tuple(self._proven.values())

    def met(self, needs: Needs, read: Read) -> AllMet | None:
        """What a whole unit asks and meets once this was read; None where the notes do not allow that reading."""
        key = (read, needs.exit)
        if key not in self._met:
            self._met[key] = self._all(needs, read) if self._can_be(read) else None
        return self._met[key]

    def _all(self, needs: Needs, read: Read) -> AllMet:
        if needs.exit not in self._asked:
            self._asked[needs.exit] = demands(self.rooms.frame, needs, self.setting)
        body, plug = self._asked[needs.exit]
        return AllMet(tuple(self._one(one, read) for one in body), tuple(self._one(one, read) for one in plug))

    def _can_be(self, read: Read) -> bool:
        told = ((self._cells[spot], span) for spot, span in read.spans.items() if spot in self._cells)
        return not any(empty(common(self._spans[cell], span)) for cell, span in told)

    def _one(self, demand: Demand, read: Read) -> Met:
        stack = self.setting.stack
        framed = stack.holes.get(demand.need)
        at = read.at(demand.ninth or ((framed[0], demand.need) if framed else demand.need))
        offset = read.at((*stack.key, OFFSET))
        key = (demand.need, demand.ninth, at, offset)
        if key not in self._each:
            span = self._span(demand, at, offset)
            least = (span.low or 0) - clearance(self.rooms.frame, demand.need)
            proven = (self._proven[demand.cell].low or 0) + demand.shift
            self._each[key] = Met(demand, max(least, proven), ENDLESS if span.high is None else span.high)
        return self._each[key]

    def _span(self, demand: Demand, at: Span, offset: Span) -> Span:
        if demand.ninth is None:
            return common(self._spans[demand.cell], at)
        stack = self.setting.stack
        seen = common(self._spans[self._cells[demand.ninth]], at).plus(common(stack.offset, offset))
        return seen if stack.offset.exact else common(self._spans[demand.cell], seen)


def _ends(rooms: Rooms, setting: Setting) -> dict[Cell, Span]:
    ends = rooms.ends(setting)
    return {cell: _span(*ends[cell]) for cell in cells_met(setting)}


def _span(least: int, most: int | None) -> Span:
    return Span(nearest(least), None if most is None else nearest(most))
