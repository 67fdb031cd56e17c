"""The cheapest safe way to wire a small car, by trying every set of pieces plugged together in every way.

Written apart from the book's reasoning, from the words in which the trade puts it: ends mate in shape and side; joined
wires are one net; a net has one source, ground apart; what nobody traced is not joined; park brake, speed and reverse
come from the car or from a box that reads its bus; nothing that feeds a radio that stays may be left open.
"""

from collections.abc import Iterator
from itertools import combinations

from tests.laws.wiring_world import CAR, CIRCUITS, NEVER_MADE_UP, OF_RADIO, UNIT, Adapter, Module, World

Cost = tuple[int, int, int, int, int]
Point = tuple[str, str, str]
ORDER = ("known", "said", "argued over", "not looked", "not there")
FED = ("known", "said", "argued over")
THE_UNIT: Point = ("unit", "", "")
THE_RADIO: Point = ("radio", "", "")


class Wiring:
    """One set of pieces plugged together in one way."""

    def __init__(
        self, world: World, adapters: list[Adapter], modules: list[Module], mated: list[tuple[Point, Point]]
    ) -> None:
        self.world = world
        self.adapters = {one.name: one for one in adapters}
        self.modules = modules
        self.mated = mated
        self.kept: dict[tuple[str, Point, bool], set[Point]] = {}
        self.joined: dict[str, list[tuple[Point, Point, bool]]] = {}

    # --- nets ---

    def wires(self, circuit: str) -> list[tuple[Point, Point, bool]]:
        if circuit not in self.joined:
            own = [wire for adapter in self.adapters.values() for wire in self.own(adapter, circuit)]
            self.joined[circuit] = [*((one, other, True) for one, other in self.mated), *own]
        return self.joined[circuit]

    def word(self, adapter: Adapter, circuit: str) -> str:
        """What becomes of a circuit; a loop-back is put in where the job leaves the circuit as it was."""
        looped = circuit in adapter.loops and any(
            (one, kind) == (circuit, "through") for one, kind, _ in self.world.needs
        )
        return "passes" if looped else adapter.ways.get(circuit, "unknown")

    def own(self, adapter: Adapter, circuit: str) -> Iterator[tuple[Point, Point, bool]]:
        word = self.word(adapter, circuit)
        letters = list(adapter.ends)
        plugs = [letter for letter in letters if adapter.ends[letter]]
        leads = [letter for letter in letters if adapter.ends[letter] is None]
        whole = plugs if len(letters) > 2 else letters
        name = adapter.name
        if word == "unknown":
            yield from (((name, "a", ""), (name, letter, ""), False) for letter in letters[1:])
        elif word == "broken out":
            yield from (((name, letter, ""), (name, leads[0], letter), True) for letter in whole if leads)
        elif word in ("passes", "tapped"):
            out = [*whole[1:], *(leads if word == "tapped" else [])]
            yield from (((name, whole[0], ""), (name, letter, ""), True) for letter in out)

    def net(self, circuit: str, start: Point, *, sure: bool) -> set[Point]:
        if (circuit, start, sure) in self.kept:
            return self.kept[circuit, start, sure]
        found = {start}
        wires = self.wires(circuit)
        grown = True
        while grown:
            grown = False
            for one, other, certain in wires:
                if (certain or not sure) and (one in found) != (other in found):
                    found |= {one, other}
                    grown = True
        for point in found:
            self.kept[circuit, point, sure] = found
        return found

    def cavity(self, circuit: str, point: Point) -> str | None:
        """What is known of the car's cavity at this point, by the lead that is plugged in there."""
        if point[0] != "car":
            return None
        for pair in self.mated:
            for one, other in (pair, pair[::-1]):
                if one == point and other[0] in self.adapters:
                    return self.seen_by(self.adapters[other[0]], other[1], circuit, int(point[1]))
        return None

    def seen_by(self, adapter: Adapter, letter: str, circuit: str, number: int) -> str:
        plug = self.world.plugs[number]
        there = circuit in plug.has
        if plug.all_read and not there:
            return "not there"
        same_cavity = letter == "a" and adapter.cavities.get(circuit) == CIRCUITS.index(circuit) + 1 and there
        if adapter.made_for != "this car" and not same_cavity:
            return "not looked"
        if there:
            return "known"
        takes = any(
            (adapter.name, letter, "") in (one, other) and certain for one, other, certain in self.own(adapter, circuit)
        )
        return "said" if takes else "not looked"

    def sources(self, circuit: str, net: set[Point]) -> list[tuple[str, str]]:
        found = [
            (f"car {point[1]}", state)
            for point in sorted(net)
            if (state := self.cavity(circuit, point)) in FED and circuit not in OF_RADIO and state is not None
        ]
        if circuit in OF_RADIO:
            found += [(point[0], "known") for point in (THE_UNIT, THE_RADIO) if point in net]
        return found + [(name, "made") for name in sorted(self.adapters) if self.makes(name, circuit) & net]

    def makes(self, name: str, circuit: str) -> set[Point]:
        adapter = self.adapters[name]
        leads = [letter for letter, end in adapter.ends.items() if end is None]
        made = adapter.ways.get(circuit) == "makes" and name in self.plugged_in()
        return {(name, letter, "") for letter in leads} if made else set()

    def plugged_in(self) -> set[str]:
        """Everything that hangs on the car or a radio, if only through other pieces."""
        found = {"car", "radio", "unit"}
        for _ in self.mated:
            for one, other in self.mated:
                if one[0] in found or other[0] in found:
                    found |= {one[0], other[0]}
        return found

    def cavities(self, circuit: str, net: set[Point]) -> list[str]:
        return [state for point in sorted(net) if (state := self.cavity(circuit, point)) is not None]

    def in_doubt(self, circuit: str, point: Point) -> bool:
        nets = [self.net(circuit, point, sure=sure) for sure in (True, False)]
        facts = [
            (self.sources(circuit, net), self.cavities(circuit, net), THE_UNIT in net, THE_RADIO in net) for net in nets
        ]
        return facts[0] != facts[1]

    def points(self, circuit: str) -> set[Point]:
        return {point for one, other, _ in self.wires(circuit) for point in (one, other)} | {
            point for name in self.adapters for point in self.makes(name, circuit)
        }

    def nets(self, circuit: str) -> list[set[Point]]:
        """Every net of this circuit that is certain, once."""
        nets: list[set[Point]] = []
        for point in self.points(circuit):
            if not any(point in net for net in nets):
                nets.append(self.net(circuit, point, sure=True))
        return nets

    def lead_ends(self, circuit: str) -> list[Point]:
        return sorted(
            point
            for point in self.points(circuit)
            if point[0] in self.adapters and self.adapters[point[0]].ends[point[1]] is None
        )

    # --- what is safe ---

    def safe(self) -> bool:
        if not {one.needs_adapter for one in self.modules if one.needs_adapter} <= self.plugged_in():
            return False
        for circuit in CIRCUITS:
            for net in self.nets(circuit):
                sources = self.sources(circuit, net)
                if len({name for name, _ in sources}) > 1 and circuit != "ground":
                    return False
                made_up = circuit in NEVER_MADE_UP and any(how == "made" for _, how in sources)
                if made_up and (THE_UNIT in net or THE_RADIO in net):
                    return False
        return not any(kind == "through" and self.left_open(circuit) for circuit, kind, _ in self.world.needs)

    def car_points(self) -> list[Point]:
        return [("car", str(number), "") for number in range(len(self.world.plugs))]

    def left_open(self, circuit: str) -> bool:
        maybe = self.net(circuit, THE_RADIO, sure=False)
        return any(
            state in FED
            for point in self.car_points()
            if point not in maybe
            for state in self.cavities(circuit, self.net(circuit, point, sure=True))
        )

    # --- what is fed ---

    def judged(self, circuit: str, point: Point) -> str:
        if self.in_doubt(circuit, point):
            return "not looked"
        net = self.net(circuit, point, sure=True)
        sources = self.sources(circuit, net)
        if circuit in OF_RADIO:
            others = [name for name, _ in sources if name != "unit"]
            return "not there" if others else best(self.cavities(circuit, net))
        if circuit in NEVER_MADE_UP and any(how == "made" for _, how in sources):
            return "not there"
        states = ["known" if how == "made" else how for _, how in sources]
        return best(states or self.cavities(circuit, net))

    def fed(self, circuit: str, working: set[str]) -> tuple[str, bool]:
        """How well a circuit reaches what goes in, and whether it is joined by hand."""
        own = self.judged(circuit, THE_UNIT)
        if own != "not there":
            return own, False
        states = [
            self.judged(circuit, point)
            for point in self.lead_ends(circuit)
            if THE_UNIT not in self.net(circuit, point, sure=True)
        ]
        states += ["known" for module in self.modules if module.name in working and self.gives(module, circuit)]
        state = best(states)
        return state, state in FED

    def gives(self, module: Module, circuit: str) -> bool:
        return circuit in module.gives and (circuit not in NEVER_MADE_UP or "bus" in module.wants)

    def working(self) -> set[str]:
        found: set[str] = set()
        for _ in range(len(self.modules) + 1):
            found = {one.name for one in self.modules if all(self.fed(want, found)[0] in FED for want in one.wants)}
        return found

    def through(self, circuit: str) -> str:
        points = self.car_points()
        if any(point in self.net(circuit, THE_RADIO, sure=True) for point in points):
            return "known"
        states = [state for point in points for state in self.cavities(circuit, self.net(circuit, point, sure=True))]
        maybe = any(point in self.net(circuit, THE_RADIO, sure=False) for point in points)
        return "not looked" if maybe or "not looked" in states else "nothing to pass"

    def half(self, circuit: str, kind: str) -> str:
        wanted = {"from radio": (True, False), "to car": (False, True), "tap": (True, True)}[kind]
        states = []
        for point in self.lead_ends(circuit):
            net = self.net(circuit, point, sure=True)
            cars = self.cavities(circuit, net)
            if self.in_doubt(circuit, point):
                states.append("not looked")
            elif (THE_RADIO in net, bool(cars)) == wanted:
                states.append(self.radio_has(circuit) if kind == "from radio" else best(cars))
        return best(states)

    def radio_has(self, circuit: str) -> str:
        """The radio's own plug is as the car's: it is known as far as the lead in it is right for the car."""
        for pair in self.mated:
            for one, other in (pair, pair[::-1]):
                if one == THE_RADIO and other[0] in self.adapters:
                    adapter = self.adapters[other[0]]
                    same = [x for x, end in adapter.ends.items() if end == (self.world.plugs[0].connector, UNIT)]
                    return self.seen_by(adapter, same[0], circuit, 0) if same else "not looked"
        return "not looked"

    def cost(self) -> Cost:
        working = self.working()
        missing, joints = [0, 0], sum(len(one.wants) for one in self.modules if one.name in working)
        for circuit, kind, must in self.world.needs:
            if kind == "feed":
                state, by_hand = self.fed(circuit, working)
            elif kind == "through":
                state, by_hand = self.through(circuit), False
            else:
                state = self.half(circuit, kind)
                by_hand = state in FED
            joints += by_hand
            missing[0 if must else 1] += state not in (*FED, "nothing to pass")
        standing = sum(1 if one.on_shelf else 2 for one in self.adapters.values()) + 2 * len(self.modules)
        return missing[0], missing[1], len(self.adapters) + len(self.modules), joints, standing


def best(states: list[str]) -> str:
    return min(states, key=ORDER.index, default="not there")


def cheapest(world: World) -> Cost:
    """What the cheapest safe set costs."""
    return min(cost for _, cost in every_cost(world))


def every_cost(world: World) -> Iterator[tuple[frozenset[str], Cost]]:
    """Every set of pieces that may be used in this car, plugged together in every safe way, with what it costs."""
    adapters = [one for one in world.adapters if not clashes(world, one)]
    modules = [
        one for one in world.modules if one.made_for == "this car" or (not one.made_for and "bus" not in one.wants)
    ]
    for pieces in subsets([*adapters, *modules]):
        names = {one.name for one in pieces}
        asked = [one.needs_module if isinstance(one, Adapter) else one.needs_adapter for one in pieces]
        if all(not name or name in names for name in asked):
            leads = [one for one in pieces if isinstance(one, Adapter)]
            boxes = [one for one in pieces if isinstance(one, Module)]
            for mated in ways_to_plug(world, leads):
                wiring = Wiring(world, leads, boxes, mated)
                if wiring.safe():
                    yield frozenset(names), wiring.cost()


def subsets(pieces: list[Adapter | Module]) -> Iterator[tuple[Adapter | Module, ...]]:
    for size in range(len(pieces) + 1):
        yield from combinations(pieces, size)


def clashes(world: World, adapter: Adapter) -> bool:
    """Whether it takes a circuit from a cavity in which another was found."""
    end = adapter.ends["a"]
    for plug in world.plugs:
        if end and plug.connector == end[0]:
            for circuit, cavity in adapter.cavities.items():
                found = CIRCUITS[cavity - 1]
                if found in plug.has and found != circuit:
                    return True
    return False


def ways_to_plug(world: World, leads: list[Adapter]) -> Iterator[list[tuple[Point, Point]]]:
    halves: dict[Point, tuple[str, str]] = {("car", str(n), ""): (p.connector, CAR) for n, p in enumerate(world.plugs)}
    halves |= {THE_RADIO: world.radio} if world.radio else {}
    halves |= {THE_UNIT: world.unit} if world.unit else {}
    halves |= {(one.name, letter, ""): end for one in leads for letter, end in one.ends.items() if end}
    fits = [
        (one, other)
        for one, other in combinations(sorted(halves), 2)
        if one[0] != other[0]
        and halves[one][0] == halves[other][0]
        and {halves[one][1], halves[other][1]} == {CAR, UNIT}
    ]
    for size in range(len(fits) + 1):
        for pairs in combinations(fits, size):
            used = [point for pair in pairs for point in pair]
            whole = not world.radio or {THE_RADIO, ("car", "0", "")} <= set(used)
            if len(used) == len(set(used)) and whole:
                yield list(pairs)
