"""What every room that agrees with the notes of a small world has in common, found by trying out every room.

Nothing here is shared with the reasoning: a note is a set of points, the points at which it is true, and a point gives
a value to every number that nobody knows: the room of each state, each part size and mount offset that has a ± or was
never measured. What nobody knows about a part's exit is tried out as well. No bound is solved for.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from functools import cached_property, reduce
from itertools import combinations, product
from operator import and_, or_

from tests.laws.domains import deep_room, domains, fineness, front_room, ordered_rooms
from tests.laws.grid import Amount, Grid
from tests.laws.small_world import FRONTS, Ask, Front, Kit, Reading, Size, Tried, World

Exits = Mapping[str, str]
Notes = tuple[Tried | Reading, ...]
Demand = tuple[str, str | None, Amount, Amount]
OTHER_CUT = "something else"


class Oracle:
    """Answers for one small world, by trying everything."""

    def __init__(self, world: World) -> None:
        self.world = world
        self.fine = fineness(world)
        self.grid = Grid(domains(world))

    def verdict(self, ask: Ask) -> str:
        """Goes in, does not, argued over, or open."""
        views = {self._view(notes, ask) for notes in self.largest_sets}
        return views.pop() if len(views) == 1 else "argued over"

    def refutes(self, ask: Ask, verdict: str) -> bool:
        """Whether all notes are true at some point where a firm answer is wrong."""
        other = {"goes in": "does not", "does not": "goes in"}[verdict]
        return other in self._outcomes(self.world.notes, ask)

    @cached_property
    def largest_sets(self) -> tuple[Notes, ...]:
        """The sets of notes that some room agrees with and that no other note can be added to."""
        found: list[Notes] = []
        for count in range(len(self.world.notes), -1, -1):
            for notes in combinations(self.world.notes, count):
                if not any(set(notes) <= set(larger) for larger in found) and any(self._rooms(notes)):
                    found.append(notes)
        return tuple(found)

    def _view(self, notes: Notes, ask: Ask) -> str:
        outcomes = self._outcomes(notes, ask)
        return outcomes.pop() if len(outcomes) == 1 else "open"

    def _outcomes(self, notes: Notes, ask: Ask) -> set[str]:
        outcomes = set()
        made = [replace(ask, kit=kit) for kit in self.world.kits_of(ask)]
        for exits, rooms in zip(self._exits, self._rooms(notes), strict=True):
            ways = product(made, self._cars(ask.build))
            fits = [self._fits(self._demands(way, build, exits)) for way, build in ways]
            outcomes |= {"goes in"} if rooms & reduce(or_, fits) else set()
            outcomes |= {"does not"} if rooms & ~reduce(and_, fits) else set()
        return outcomes

    def _rooms(self, notes: Notes) -> list[int]:
        """For each way the plugs may leave, the points that agree with all of these notes."""
        return [reduce(and_, (told[note] for note in notes), self._lawful) for told in self._told]

    @cached_property
    def _told(self) -> list[dict[Tried | Reading, int]]:
        return [{note: self._true(note, exits) for note in self.world.notes} for exits in self._exits]

    @cached_property
    def _exits(self) -> list[Exits]:
        hidden = [part.name for part in self.world.parts if part.exit is None]
        known = {part.name: part.exit for part in self.world.parts if part.exit}
        ways = product(self.world.ninths, repeat=len(hidden))
        return [known | dict(zip(hidden, way, strict=True)) for way in ways]

    @cached_property
    def _lawful(self) -> int:
        """Cutting takes no room away, and neither does moving the loom aside."""
        points = self.grid.everything
        for mean, roomy in ordered_rooms(self.world):
            points &= self.grid.no_smaller(((roomy,), 0), ((mean,), 0))
        return points

    def _true(self, note: Tried | Reading, exits: Exits) -> int:
        if isinstance(note, Reading):
            return self._union(self._read(note, build) for build in self._cars(note.build))
        if note.kit is None:
            return self.grid.everything  # an unknown mount may have made any room
        return self._union(self._tried(note, made, exits) for made in self._ways_made(note))

    def _cars(self, build: str | None) -> tuple[str, ...]:
        return self.world.builds if build is None else (build,)

    def _ways_made(self, note: Tried) -> Iterator[Ask]:
        """Every way in which a note may have been made, given what it left blank; fitted means plugged."""
        cuts = (*self.world.cuts, OTHER_CUT) if note.cut is None else (note.cut,)
        looms = self.world.looms if note.loom is None else (note.loom,)
        plugs = (note.plugs,) if note.plugs else ("on",) if note.fitted else ("on", "off")
        for build, cut, loom, plug in product(self._cars(note.build), cuts, looms, plugs):
            yield Ask(note.part, note.kit or "", build, cut, loom, plug)

    def _tried(self, note: Tried, made: Ask, exits: Exits) -> int:
        if made.cut == OTHER_CUT:
            return self._tried_elsewhere(note, made, exits)
        demands = list(self._demands(made, made.build or "", exits))
        points = self._fits(demands)
        if note.verdict == "does not":
            points = self._union(self._fails(one) for one in demands if blamed(note, one))
        if note.gap is None:
            return points
        _, _, room, need = spot(note, demands)
        return points & self._within(room, need, gap_of(note))

    def _tried_elsewhere(self, note: Tried, made: Ask, exits: Exits) -> int:
        """Something was cut that nobody asks about: that made room in the car, but not in the hole of a mount."""
        demands = list(self._demands(replace(made, cut="nothing"), made.build or "", exits))
        uncut_points = self.grid.everything
        framed = self.world.kit(made.kit or "").holes
        if note.gap is not None:
            size, _, room, (names, constant) = spot(note, demands)
            gap = gap_of(note)
            if size in framed:
                uncut_points &= self._within(room, (names, constant), gap)
            least_too_much = constant + (gap.middle + gap.give) * self.fine + (0 if gap.give else 1)
            uncut_points &= ~self.grid.no_smaller(room, (names, least_too_much))
        elif note.verdict == "does not":
            uncut_points = self._union(self._fails(one) for one in demands if blamed(note, one))
        if note.verdict == "goes in":
            uncut_points &= self._fits(one for one in demands if one[0] in framed)
        return uncut_points

    def _read(self, note: Reading, build: str) -> int:
        points = self.grid.everything
        state = (build, note.cut or "nothing", note.loom or "aside")
        kit = self.world.kit(note.kit) if note.kit else Kit("no kit")
        deep = [self._deep(kit, ninth, state) for ninth in note.zones]
        for room in deep if note.of == "depth" else [self._front(note.of, kit, state)]:
            points &= self._within(room, ((), 0), note.reads)
        return points

    def _within(self, room: Amount, base: Amount, size: Size) -> int:
        """The points at which a room is larger than its base by a size."""
        names, constant = base
        give = 1 if size.give else 0
        low = (size.middle - size.give) * self.fine + give
        high = (size.middle + size.give) * self.fine - give
        beyond = self.grid.no_smaller(room, (names, constant + high + 1))
        return self.grid.no_smaller(room, (names, constant + low)) & ~beyond

    def _demands(self, made: Ask, build: str, exits: Exits) -> Iterator[Demand]:
        """What is asked: by which size, at which ninth, the room there and the need."""
        part, kit = self.world.part(made.part), self.world.kit(made.kit or "")
        state = (build, made.cut, made.loom)
        depth = self._amount(f"{part.name} depth", part.depth if made.depth is None else made.depth)
        bend = self._amount(f"{part.name} bend", part.bend)
        for size in FRONTS:
            yield size, None, self._front(size, kit, state), self._amount(f"{part.name} {size}", part.sizes[size])
        for ninth in self.world.ninths:
            yield "depth", ninth, self._deep(kit, ninth, state), depth
        if made.plugs == "on":
            exit_ = exits[part.name]
            yield "plug", exit_, self._deep(kit, exit_, state), ((*depth[0], *bend[0]), depth[1] + bend[1])

    def _deep(self, kit: Kit, ninth: str, state: tuple[str, str, str]) -> Amount:
        offset, moved = self._amount(f"{kit.name} proud", kit.proud)
        return (deep_room(ninth, state), *offset), moved

    def _front(self, size: Front, kit: Kit, state: tuple[str, str, str]) -> Amount:
        if size in kit.holes:
            return self._amount(f"{kit.name} {size}", kit.holes[size])
        return (front_room(size, state),), 0

    def _amount(self, name: str, size: Size | None) -> Amount:
        return ((name,), 0) if size is None or size.give else ((), size.middle * self.fine)

    def _fits(self, demands: Iterable[Demand]) -> int:
        return reduce(and_, (self.grid.no_smaller(room, need) for _, _, room, need in demands), self.grid.everything)

    def _fails(self, demand: Demand) -> int:
        _, _, room, need = demand
        return self.grid.everything & ~self.grid.no_smaller(room, need)

    def _union(self, sets: Iterable[int]) -> int:
        return reduce(or_, sets, 0)


def spot(note: Tried, demands: list[Demand]) -> Demand:
    """What a note that says by how much speaks of: the side it names, else the deepest thing at the ninth it names."""
    if note.reason in FRONTS:
        return next(one for one in demands if one[0] == note.reason)
    return next(one for one in reversed(demands) if one[1] == note.where[0])


def gap_of(note: Tried) -> Size:
    """By how much the room there was larger than what was asked of it."""
    gap = note.gap or Size(0)
    return gap if note.verdict == "goes in" else Size(-gap.middle, gap.give)


def blamed(note: Tried, demand: Demand) -> bool:
    """Whether a note says, or leaves open, that this is what stopped it."""
    size, ninth, _, _ = demand
    if note.reason is None:
        return True
    sizes = ("depth", "plug") if note.reason == "depth" else (note.reason,)
    return size in sizes and (ninth is None or not note.where or ninth in note.where)
