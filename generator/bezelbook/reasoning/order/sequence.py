"""The order that respects every before, walks round the car as seldom as can be, and else does as was done."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from bezelbook.reasoning.order.graph import Befores
from bezelbook.values.words import SIDES, Side

# A car has three sides and seldom thirty pieces: this many ways of having begun are never open at once in one. Where
# they are, the furthest are kept, and the order is a good one without being sure to be the best.
MOST_OPEN = 256

Sides = Mapping[str, Side | None]


@dataclass(frozen=True, slots=True)
class _Begun:
    """A beginning of an order, and the side that one stands at."""

    order: tuple[str, ...]
    side: Side | None


def least_moves(graph: Befores, sides: Sides, done: Sequence[str] = ()) -> tuple[str, ...]:
    """Every thing of a graph without circles once, none before what is before it, with the fewest changes of side.

    A thing whose side nobody wrote asks for no move. Where nothing else decides it goes as in `done`, then by name.

    Whatever can be taken without a move is taken at once: that never makes a later move necessary, so only the order of
    the sides has to be searched, and breadth first finds the fewest.
    """
    rank = {thing: (done.index(thing) if thing in done else len(done), thing) for thing in graph}
    begun = [_Begun((), None)]
    while len(begun[0].order) < len(graph):
        nearer: dict[tuple[frozenset[str], Side | None], _Begun] = {}
        for one in begun:
            for side in _next_sides(graph, sides, one):
                further = _take(graph, sides, rank, one.order, side)
                key = (frozenset(further.order), side)
                nearer[key] = min(nearer.get(key, further), further, key=lambda way: _by_rank(way, rank))
        begun = sorted(nearer.values(), key=lambda way: (-len(way.order), _by_rank(way, rank)))[:MOST_OPEN]
    return begun[0].order


def moves(order: Iterable[str], sides: Sides) -> int:
    """How often somebody who follows an order changes sides."""
    stood = [side for thing in order if (side := sides.get(thing))]
    return sum(one != other for one, other in pairwise(stood))


def _by_rank(way: _Begun, rank: Mapping[str, tuple[int, str]]) -> list[tuple[int, str]]:
    return [rank[thing] for thing in way.order]


def _ready(graph: Befores, order: Iterable[str]) -> list[str]:
    off = set(order)
    return [thing for thing in graph if thing not in off and graph[thing] <= off]


def _next_sides(graph: Befores, sides: Sides, begun: _Begun) -> list[Side | None]:
    """The sides at which something can be taken next; any there is, where all that can be taken has no side."""
    ready = {sides.get(thing) for thing in _ready(graph, begun.order)}
    left = {sides.get(thing) for thing in graph.keys() - set(begun.order)}
    return [side for side in SIDES if side in (ready - {None} or left)] or [None]


def _take(
    graph: Befores, sides: Sides, rank: Mapping[str, tuple[int, str]], order: tuple[str, ...], side: Side | None
) -> _Begun:
    """Everything that can be taken at one side, and what has no side, one after the other."""
    while ready := [thing for thing in _ready(graph, order) if sides.get(thing) in (side, None)]:
        order = (*order, min(ready, key=lambda thing: rank[thing]))
    return _Begun(order, side)
