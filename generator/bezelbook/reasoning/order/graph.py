"""What follows from a set of befores alone: all that has to be off, what goes round in a circle, what lies how deep."""

from collections.abc import Iterable, Mapping

# For each thing, what is directly before it.
Befores = Mapping[str, frozenset[str]]


def befores(pairs: Iterable[tuple[str, str]], things: Iterable[str] = ()) -> Befores:
    """The graph of (first, then) pairs, with every thing that they name and the other `things`."""
    found: dict[str, set[str]] = {thing: set() for thing in things}
    for first, then in pairs:
        found.setdefault(first, set())
        found.setdefault(then, set()).add(first)
    return {thing: frozenset(before) for thing, before in found.items()}


def closure(graph: Befores, targets: Iterable[str]) -> frozenset[str]:
    """The targets and everything that is before any of them, however far."""
    found: set[str] = set()
    waiting = list(targets)
    while waiting:
        thing = waiting.pop()
        if thing not in found:
            found.add(thing)
            waiting += graph.get(thing, ())
    return frozenset(found)


def within(graph: Befores, things: frozenset[str]) -> Befores:
    """The part of a graph that is about these things only."""
    return {thing: graph.get(thing, frozenset()) & things for thing in things}


def knots(graph: Befores) -> frozenset[frozenset[str]]:
    """The largest groups of two things or more in which each is before each other one."""
    before = {thing: closure(graph, graph[thing]) for thing in graph}
    groups = {frozenset(other for other in before[thing] if thing in before[other]) | {thing} for thing in graph}
    return frozenset(group for group in groups if len(group) > 1)


def circles(graph: Befores) -> tuple[tuple[str, ...], ...]:
    """For every pair that stands in a circle the shortest one through it, each circle once.

    A circle is written from its first name on, each thing before the next one and the last before the first.
    """
    found = set()
    for knot in knots(graph):
        inside = within(graph, knot)
        for then in sorted(knot):
            for first in sorted(inside[then]):
                found.add(_from_least(_shortest(inside, then, first)))
    return tuple(sorted(found))


def _shortest(graph: Befores, start: str, end: str) -> tuple[str, ...]:
    """The shortest way from a thing forward in time to another; both are in one knot, so there is one."""
    ways: dict[str, tuple[str, ...]] = {end: (end,)}
    edge = [end]
    while start not in ways:
        nearer = []
        for thing in edge:
            for before in sorted(graph[thing] - ways.keys()):
                ways[before] = (before, *ways[thing])
                nearer.append(before)
        edge = nearer
    return ways[start]


def _from_least(circle: tuple[str, ...]) -> tuple[str, ...]:
    least = circle.index(min(circle))
    return circle[least:] + circle[:least]


def untied(graph: Befores) -> Befores:
    """The graph without its circles: within a knot nothing is before anything, and outside it a knot goes as one.

    What is before one thing of a knot is before all of them, as it was already by going round.
    """
    knot_of = {thing: knot for knot in knots(graph) for thing in knot}
    found: dict[str, frozenset[str]] = {}
    for thing in graph:
        own = knot_of.get(thing, frozenset((thing,)))
        entering = frozenset().union(*(graph[one] for one in own)) - own
        found[thing] = entering.union(*(knot_of[one] for one in entering if one in knot_of))
    return found


def reduced(graph: Befores) -> Befores:
    """The fewest pairs of a graph without circles from which the same follows."""
    before = {thing: closure(graph, graph[thing]) for thing in graph}
    return {
        thing: frozenset(one for one in graph[thing] if not any(one in before[other] for other in graph[thing]))
        for thing in graph
    }


def depths(graph: Befores) -> Mapping[str, int]:
    """For each thing of a graph without circles how many things lie over it in the longest chain; 0 is on top."""
    found: dict[str, int] = {}
    while len(found) < len(graph):
        for thing in graph:
            if thing not in found and graph[thing] <= found.keys():
                found[thing] = max((found[one] + 1 for one in graph[thing]), default=0)
    return found
