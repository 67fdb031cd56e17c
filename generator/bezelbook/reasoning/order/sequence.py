"""The order that respects every before, walks round the car as seldom as can be, and else does as was done."""

from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise

from bezelbook.reasoning.order.graph import Befores
from bezelbook.values.words import SIDES, Side

# A car has three sides and seldom thirty pieces: this many ways of having begun are never open at once in one. Where
# they are, the furthest are kept, and the order is a good one without being sure to be the best.
MOST_OPEN = 256

Sides = Mapping[str, Side | None]


def least_moves(graph: Befores, sides: Sides, done: Sequence[str] = ()) -> tuple[str, ...]:
    """Every thing of a graph without circles once, none before what is before it, with the fewest changes of side.

    A thing whose side nobody wrote asks for no move. Where nothing else decides it goes as in `done`, then by name.

    Whatever can be taken without a move is taken at once: that never makes a later move necessary, so only the order of
    the sides has to be searched, and breadth first finds the fewest. Of two ways that have the same off, after as many
    moves, the better one begins whatever follows.
    """
    rank = {thing: (done.index(thing) if thing in done else len(done), thing) for thing in graph}
    begun: list[tuple[str, ...]] = [()]
    while len(begun[0]) < len(graph):
        nearer: dict[frozenset[str], tuple[str, ...]] = {}
        for one in begun:
            for side in _sides_left(graph, sides, one):
                further = _take(graph, sides, rank, one, side)
                off = frozenset(further)
                nearer[off] = min(nearer.get(off, further), further, key=lambda way: _by_rank(way, rank))
        begun = sorted(nearer.values(), key=lambda way: (-len(way), _by_rank(way, rank)))[:MOST_OPEN]
    return begun[0]


def moves(order: Iterable[str], sides: Sides) -> int:
    """How often somebody who follows an order changes sides."""
    stood = [side for thing in order if (side := sides.get(thing))]
    return sum(one != other for one, other in pairwise(stood))


def _by_rank(way: Iterable[str], rank: Mapping[str, tuple[int, str]]) -> list[tuple[int, str]]:
    return [rank[thing] for thing in way]


def _ready(graph: Befores, order: Iterable[str]) -> list[str]:
    off = set(order)
    return [thing for thing in graph if thing not in off and graph[thing] <= off]


def _sides_left(graph: Befores, sides: Sides, begun: Iterable[str]) -> list[Side | None]:
    """The sides at which anything is left: one may stand there for what has no side and lies over it."""
    left = {sides.get(thing) for thing in graph.keys() - set(begun)}
    return [side for side in SIDES if side in left] or [None]


def _take(
    graph: Befores, sides: Sides, rank: Mapping[str, tuple[int, str]], order: tuple[str, ...], side: Side | None
) -> tuple[str, ...]:
    """Everything that can be taken at one side, and what has no side, one after the other."""
    while ready := [thing for thing in _ready(graph, order) if sides.get(thing) in (side, None)]:
        order = (*order, min(ready, key=lambda thing: rank[thing]))
    return order
