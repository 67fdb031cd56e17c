"""What a set of pieces does for a job: which needs it feeds, from where, and whether it may be joined at all."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.reasoning.circuits.nets import CAR, RADIO, UNIT, Mating, Net, Node, attached, matings, sockets
from bezelbook.reasoning.circuits.wiring import FED, FROM_RADIO, NEVER_MADE_UP, STATES, Need, Piece, Site, State
from bezelbook.values.words import Circuit

AT_UNIT: Node = (UNIT, "", "")
AT_RADIO: Node = (RADIO, "", "")
# Whether what comes out on a lead hangs on the radio that stays, and on the car.
HALVES: Mapping[str, tuple[bool, bool]] = {"from radio": (True, False), "to car": (False, True), "tap": (True, True)}


@dataclass(frozen=True, slots=True)
class Feed:
    """How a need is met: how well that is known, and where its lead or its source is when it is joined by hand.

    `at` is the point of a piece, or the module and nothing; empty when it comes through a plug, or not at all.
    """

    state: State
    at: tuple[str, str] | None = None


@dataclass(frozen=True)
class Outcome:
    """What comes of a set of pieces plugged together in one way."""

    feeds: Mapping[Need, Feed]
    plugged: tuple[Mating, ...]
    working: frozenset[str]
    cost: tuple[int, ...]


def best_outcome(site: Site, needs: Sequence[Need], pieces: Iterable[Piece]) -> Outcome | None:
    """The best way to plug a set of pieces together; None when there is no safe one, or one lacks what it requires."""
    by_name = {piece.name: piece for piece in pieces}
    if any(not piece.requires <= by_name.keys() for piece in by_name.values()):
        return None
    best: Outcome | None = None
    for plugged in matings(sockets(site, by_name.values())):
        if (site.radio and not _whole(site, plugged)) or not _served(by_name, plugged):
            continue
        found = _Wired(needs, by_name, plugged).outcome()
        if found is not None and (best is None or _order(found) < _order(best)):
            best = found
    return best


def _order(found: Outcome) -> tuple[tuple[int, ...], int, tuple[Mating, ...]]:
    """The cheapest first; of equal ones that with the most plugged in, as it shows what nobody has looked at."""
    return found.cost, -len(found.plugged), found.plugged


def _whole(site: Site, plugged: Sequence[Mating]) -> bool:
    """Whether nothing of a car whose radio stays is left hanging."""
    used = {socket for pair in plugged for socket in pair}
    return {(RADIO, ""), *((CAR, str(number)) for number in range(len(site.car)))} <= used


def _served(pieces: Mapping[str, Piece], plugged: Sequence[Mating]) -> bool:
    """Whether every adapter that another piece cannot do without is plugged in."""
    required = {name for piece in pieces.values() for name in piece.requires if pieces[name].plugs}
    return required <= attached(plugged)


class _Wired:
    """A set of pieces plugged together in one way."""

    def __init__(self, needs: Sequence[Need], pieces: Mapping[str, Piece], plugged: tuple[Mating, ...]) -> None:
        self.needs = needs
        self.pieces = pieces
        self.plugged = plugged
        self.nets: dict[Circuit, Net] = {}
        self.working: frozenset[str] = frozenset()

    def net(self, circuit: Circuit) -> Net:
        if circuit not in self.nets:
            self.nets[circuit] = Net(circuit, self.pieces, self.plugged)
        return self.nets[circuit]

    def outcome(self) -> Outcome | None:
        """What comes of it; None when two sources meet, one is made up that must not be, or something is left open."""
        if not all(self._safe(circuit) for circuit in self._circuits()):
            return None
        self._start_modules()
        feeds = {need: self._feed(need) for need in self.needs}
        opened = (need for need in self.needs if need.kind == "through" and self._opened(need.circuit))
        if any(opened):
            return None
        return Outcome(feeds, self.plugged, self.working, self._cost(feeds))

    def _circuits(self) -> list[Circuit]:
        touched = (circuit for piece in self.pieces.values() for circuit in (*piece.links, *piece.makes))
        return list(dict.fromkeys([*(need.circuit for need in self.needs), *touched]))

    def _safe(self, circuit: Circuit) -> bool:
        """No two sources on one wire, ground apart; nothing made up that must not be."""
        for strand in self.net(circuit).everything:
            if len({source.name for source in strand.sources}) > 1 and circuit != "ground":
                return False
            if (strand.has_unit or strand.has_radio) and not all(source.true for source in strand.sources):
                return False
        return True

    def _start_modules(self) -> None:
        """Let each module work whose wants are fed, until no more do."""
        modules = {name: piece for name, piece in self.pieces.items() if piece.gives or piece.wants}
        while True:
            working = frozenset(
                name
                for name, module in modules.items()
                if all(self._feed(Need(circuit)).state in FED for circuit in module.wants)
            )
            if working == self.working:
                return
            self.working = working

    def _feed(self, need: Need) -> Feed:
        if need.kind == "feed":
            return self._to_unit(need.circuit)
        if need.kind == "through":
            return self._through(need.circuit)
        return self._at_leads(need)

    def _to_unit(self, circuit: Circuit) -> Feed:
        """Through its own plug if that has it; else by hand from the lead or the module that is known best."""
        net = self.net(circuit)
        own = self._judged(net, AT_UNIT)
        if own != "not there":
            return Feed(own)
        found = [Feed(self._judged(net, node), node[:2]) for node in net.ends]
        made = [Feed("known", (name, "")) for name in sorted(self.working) if self._may_give(name, circuit)]
        return _best_of([*found, *made])

    def _may_give(self, module: str, circuit: Circuit) -> bool:
        gives = self.pieces[module].gives
        return circuit in gives and (gives[circuit].true or circuit not in NEVER_MADE_UP)

    def _judged(self, net: Net, node: Node) -> State:
        """How well a point is known to be fed by exactly one source, or to reach the car if the radio is the source."""
        strand = net.at(node)
        if net.doubtful(node):
            return "not looked"
        if net.circuit in FROM_RADIO:
            others = [source for source in strand.sources if source.name != UNIT]
            return _best(strand.cars) if not others else "not there"
        if not all(source.true for source in strand.sources):
            return "not there"
        if strand.sources:
            return _best([source.state for source in strand.sources])
        return _best(strand.cars)

    def _through(self, circuit: Circuit) -> Feed:
        """Whether what the car has goes on to the radio that stays; if the car has nothing, nothing is to go on."""
        net = self.net(circuit)
        strand = net.at(AT_RADIO)
        if any(node in strand.nodes for node in net.car_ends):
            return Feed("known")
        return Feed("not looked" if self._unsure(net) else "not there")

    def _unsure(self, net: Net) -> bool:
        cars = [state for node in net.car_ends for state in net.at(node).cars]
        maybe = any(node in net.perhaps(AT_RADIO).nodes for node in net.car_ends)
        return maybe or "not looked" in cars

    def _opened(self, circuit: Circuit) -> bool:
        """Whether something that the car has is cut off from the radio that stays, for certain."""
        net = self.net(circuit)
        reached = net.perhaps(AT_RADIO).nodes
        ends = [node for node in net.car_ends if node not in reached]
        return any(state in FED for node in ends for state in net.at(node).cars)

    def _at_leads(self, need: Need) -> Feed:
        """The best lead at which a half of a cut circuit, or a tap of a whole one, comes out."""
        net = self.net(need.circuit)
        return _best_of([Feed(self._half(net, node, need), node[:2]) for node in net.ends])

    def _half(self, net: Net, node: Node, need: Need) -> State:
        if net.doubtful(node):
            return "not looked"
        strand = net.at(node)
        if HALVES[need.kind] != (strand.has_radio, bool(strand.cars)):
            return "not there"
        return net.radio_has if need.kind == "from radio" else _best(strand.cars)

    def _cost(self, feeds: Mapping[Need, Feed]) -> tuple[int, ...]:
        unfed = [need for need, feed in feeds.items() if feed.state not in FED and not self._idle(need, feed)]
        must = sum(need.must for need in unfed)
        joints = sum(feed.at is not None for feed in feeds.values())
        joints += sum(len(self.pieces[name].wants) for name in self.working)
        standing = sum(piece.standing for piece in self.pieces.values())
        return must, len(unfed) - must, len(self.pieces), joints, standing

    def _idle(self, need: Need, feed: Feed) -> bool:
        """Whether there is nothing to go on to the radio, so that nothing is missing."""
        return need.kind == "through" and feed.state == "not there"


def _best_of(feeds: Sequence[Feed]) -> Feed:
    """The best known of several, the first of equal ones; one that cannot be counted on is joined nowhere."""
    best = min(feeds, key=lambda feed: STATES.index(feed.state), default=Feed("not there"))
    return best if best.state in FED else Feed(best.state)


def _best(states: Iterable[State]) -> State:
    """The best known of several; nothing is not there."""
    return min(states, key=STATES.index, default="not there")
