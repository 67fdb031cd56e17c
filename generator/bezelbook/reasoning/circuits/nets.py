"""Which ends of some pieces are joined with which on one circuit, for certain and as far as nobody ruled it out."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import TypeVar

from bezelbook.reasoning.circuits.wiring import FED, FROM_RADIO, NEVER_MADE_UP, Half, Piece, Point, Site, State
from bezelbook.values.words import Circuit

N = TypeVar("N", bound=tuple[str, ...])

Socket = tuple[str, str]  # whose it is (a piece by name, or one of the three below and a number), and which end of it
Node = tuple[str, str, str]  # the same, and which half of a cut circuit
CAR, RADIO, UNIT = "the car", "the radio that stays", "what goes in"
Mating = tuple[Socket, Socket]


def sockets(site: Site, pieces: Iterable[Piece]) -> dict[Socket, Half]:
    """Everything that something can be plugged into, or that can be plugged in."""
    found: dict[Socket, Half] = {(CAR, str(number)): half for number, half in enumerate(site.car)}
    found |= {(RADIO, ""): site.radio} if site.radio else {}
    found |= {(UNIT, ""): site.unit} if site.unit else {}
    return found | {(piece.name, end): half for piece in pieces for end, half in piece.plugs.items()}


def matings(halves: Mapping[Socket, Half]) -> Iterator[tuple[Mating, ...]]:
    """Every way to plug these together, none of them into itself."""
    yield from _matings(list(halves), halves, ())


def _matings(
    left: Sequence[Socket], halves: Mapping[Socket, Half], made: tuple[Mating, ...]
) -> Iterator[tuple[Mating, ...]]:
    if not left:
        yield made
        return
    first, *others = left
    for other in others:
        if halves[first].mates(halves[other]) and first[0] != other[0]:
            yield from _matings([one for one in others if one != other], halves, (*made, (first, other)))
    yield from _matings(others, halves, made)


def attached(plugged: Iterable[Mating]) -> frozenset[str]:
    """Everything that is plugged into the car or a radio, if only through other pieces."""
    neighbours = _neighbours(((one[0],), (other[0],)) for one, other in plugged)
    return frozenset(name for start in (CAR, RADIO, UNIT) for (name,) in _reached((start,), neighbours))


@dataclass(frozen=True, slots=True)
class Source:
    """Something that puts a signal on a wire. `true` is false for a made-up one of those that must never be made up."""

    name: str
    state: State
    true: bool = True


@dataclass(frozen=True, slots=True)
class Strand:
    """What hangs together on one circuit. `cars` has the state of each of the car's cavities in it."""

    nodes: frozenset[Node]
    sources: tuple[Source, ...]
    cars: tuple[State, ...]

    @property
    def has_radio(self) -> bool:
        """Whether the radio that stays hangs on it."""
        return (RADIO, "", "") in self.nodes

    @property
    def has_unit(self) -> bool:
        """Whether what goes in hangs on it by its own plug."""
        return (UNIT, "", "") in self.nodes


class Net:
    """One circuit through some pieces that are plugged together in one way."""

    def __init__(self, circuit: Circuit, pieces: Mapping[str, Piece], plugged: Sequence[Mating]) -> None:
        self.circuit = circuit
        self.pieces = pieces
        self.mates = {one: other for pair in plugged for one, other in (pair, pair[::-1])}
        self._seen = self._cars()
        self._attached = attached(plugged)
        links = [(name, link) for name, piece in pieces.items() for link in piece.links.get(circuit, ())]
        joined = [((*one, ""), (*other, "")) for one, other in plugged]
        sure = [((name, *link.one), (name, *link.other)) for name, link in links if link.sure]
        every = [((name, *link.one), (name, *link.other)) for name, link in links]
        self._sure = _neighbours([*joined, *sure])
        self._maybe = _neighbours([*joined, *every])

    def _cars(self) -> dict[Node, State]:
        """What each of the car's plugs has here, as far as the piece in it is known to be right for this car."""
        found: dict[Node, State] = {}
        for (owner, end), (other, mated) in self.mates.items():
            if owner == CAR and other in self.pieces:
                found[owner, end, ""] = self.pieces[other].seen(mated, self.circuit)
        return found

    @property
    def radio_has(self) -> State:
        """What the radio that stays has here, as far as the piece in it is known to be right for this car."""
        other, end = self.mates.get((RADIO, ""), ("", ""))
        piece = self.pieces.get(other)
        # What the car has there is seen behind the end of the same shape that takes the car's plug.
        plugs = piece.plugs if piece else {}
        alike = [letter for letter, half in plugs.items() if half.mates(plugs[end])]
        return piece.seen(alike[0], self.circuit) if piece and alike else "not looked"

    def at(self, node: Node) -> Strand:
        """What hangs on a point for certain."""
        return self._strand(_reached(node, self._sure))

    def perhaps(self, node: Node) -> Strand:
        """What may hang on a point, counting every lead that nobody traced."""
        return self._strand(_reached(node, self._maybe))

    def doubtful(self, node: Node) -> bool:
        """Whether a lead that nobody traced may join this point with anything that matters."""
        more = self.perhaps(node)
        sure = self.at(node)
        return (more.sources, more.cars, more.has_radio, more.has_unit) != (
            sure.sources,
            sure.cars,
            sure.has_radio,
            sure.has_unit,
        )

    def _strand(self, nodes: frozenset[Node]) -> Strand:
        cars = tuple(self._seen[node] for node in sorted(nodes) if node in self._seen)
        return Strand(nodes, tuple(self._sources(nodes)), cars)

    def _sources(self, nodes: frozenset[Node]) -> Iterator[Source]:
        if self.circuit in FROM_RADIO:
            yield from (Source(owner, "known") for owner in (RADIO, UNIT) if (owner, "", "") in nodes)
        else:
            cars = (node for node in sorted(nodes) if self._seen.get(node) in FED)
            yield from (Source(f"{CAR} {node[1]}", self._seen[node]) for node in cars)
        for name in sorted(self._attached & self.pieces.keys()):
            if any((name, *point) in nodes for point in self.pieces[name].makes.get(self.circuit, ())):
                yield Source(name, "known", self.circuit not in NEVER_MADE_UP)

    @property
    def ends(self) -> tuple[Node, ...]:
        """Where this circuit comes out on bare leads."""
        points = {(piece.name, point) for piece in self.pieces.values() for point in points_of(piece, self.circuit)}
        return tuple((name, *point) for name, point in sorted(points) if point[0] in self.pieces[name].leads)

    @property
    def car_ends(self) -> tuple[Node, ...]:
        """The car's plugs that something is plugged into, or the radio that stays still is."""
        return tuple(sorted((owner, end, "") for owner, end in self.mates if owner == CAR))

    @property
    def everything(self) -> tuple[Strand, ...]:
        """All that hangs together, each once."""
        nodes = {node for nodes in (self._sure, self._seen) for node in nodes}
        made = {(name, *point) for name, one in self.pieces.items() for point in one.makes.get(self.circuit, ())}
        groups = {_reached(node, self._sure) for node in nodes | made}
        return tuple(self._strand(group) for group in groups)


def points_of(piece: Piece, circuit: Circuit) -> tuple[Point, ...]:
    """The points of a piece at which a circuit runs, or may run, each once."""
    linked = (point for link in piece.links.get(circuit, ()) for point in (link.one, link.other))
    return tuple(dict.fromkeys([*linked, *piece.makes.get(circuit, ())]))


def _neighbours(pairs: Iterable[tuple[N, N]]) -> dict[N, list[N]]:
    found: dict[N, list[N]] = {}
    for one, other in pairs:
        found.setdefault(one, []).append(other)
        found.setdefault(other, []).append(one)
    return found


def _reached(node: N, neighbours: Mapping[N, Sequence[N]]) -> frozenset[N]:
    found, left = {node}, [node]
    while left:
        for other in neighbours.get(left.pop(), ()):
            if other not in found:
                found.add(other)
                left.append(other)
    return frozenset(found)
