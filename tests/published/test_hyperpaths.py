"""Published examples of ways that need several things at once, and the price of a set against that of a path.

Knuth: D. E. Knuth, "A generalization of Dijkstra's algorithm", Information Processing Letters 6 (1977) 1-5, the example
of its section 1. The productions and functions were read in an excerpt; the printed answers were not, and were computed
twice over (by fixed point and by greedy settling) before they came here.

Hypergraph: G. Gallo, G. Longo, S. Pallottino, S. Nguyen, "Directed hypergraphs and applications", Discrete Applied
Mathematics 42 (1993) 177-201 (procedure SBT). The data and the expected values of `sum` and `distance` are those of the
public test suite of halp (Murali-group/halp, basic_directed_hypergraph.txt and test_directed_paths.py, commit 4da6162).
The additive value of t is 8, because x is paid for twice; the cheapest real set is e2, e3, e4 for 7, which OR-Tools
CP-SAT 9.15 confirmed as optimal.
"""

from collections.abc import Callable
from itertools import chain, combinations
from typing import Any

import pytest

from bezelbook.reasoning.circuits.cheapest import Cost, Found, Item, Wanted, cheapest_set
from bezelbook.reasoning.circuits.hyperpath import Arc, least_values

EDGES: dict[str, tuple[tuple[str, ...], tuple[str, ...], int]] = {
    "e1": (("s",), ("x",), 1),
    "e2": (("s",), ("y", "x"), 2),
    "e3": (("s",), ("z",), 2),
    "e4": (("z", "y", "x"), ("u", "t"), 3),
    "e5": (("a",), ("u", "t"), 1),
    "e6": (("x",), ("s",), 1),
    "e7": (("b", "t"), ("a",), 1),
    "e8": (("s",), ("t",), 100),
}
SUM = {"s": 0, "x": 1, "y": 2, "z": 2, "t": 8, "u": 8}
DISTANCE = {"s": 0, "x": 1, "y": 2, "z": 2, "t": 5, "u": 5}
CHEAPEST = {
    "x": (1, ("e1",)),
    "y": (2, ("e2",)),
    "z": (2, ("e3",)),
    "t": (7, ("e2", "e3", "e4")),
    "u": (7, ("e2", "e3", "e4")),
}


def test_the_example_of_knuth_settles_in_its_order() -> None:
    arcs = [
        Arc("A", (), lambda: 4),
        Arc("A", ("B", "C"), max),
        Arc("B", ("A",), lambda x: x + 1),
        Arc("B", ("A", "C", "A"), lambda x, y, z: x + max(y, z)),
        Arc("C", (), lambda: 9),
        Arc("C", ("B", "A"), lambda x, y: (x + y + max(x, y)) / 2),
    ]
    assert list(least_values(arcs).items()) == [("A", 4), ("B", 5), ("C", 7)]


def values(together: Callable[[Any], int]) -> dict[str, int]:
    arcs: list[Arc[str]] = [Arc("s", (), lambda: 0)]
    for tails, heads, weight in EDGES.values():
        arcs += [Arc(head, tails, lambda *known, weight=weight: weight + together(known)) for head in heads]
    return dict(least_values(arcs))


@pytest.mark.parametrize(("together", "published"), [(sum, SUM), (max, DISTANCE)])
def test_the_published_hypergraph_has_its_published_values(
    together: Callable[[Any], int], published: dict[str, int]
) -> None:
    assert values(together) == published


def reached(names: tuple[str, ...]) -> set[str]:
    """What a set of edges reaches, by trying every edge again until nothing is new."""
    found = {"s"}
    for _ in EDGES:
        for name in names:
            tails, heads, _ = EDGES[name]
            if set(tails) <= found:
                found |= set(heads)
    return found


def cheapest(goal: str) -> Found:
    items = [Item(name, weight, ((tails, heads),)) for name, (tails, heads, weight) in EDGES.items()]

    def cost(names: tuple[str, ...]) -> Cost:
        return (int(goal not in reached(names)), sum(EDGES[name][2] for name in names))

    found = cheapest_set(items, Wanted(("s",), ((goal,),)), cost)
    assert found is not None
    return found


@pytest.mark.parametrize("goal", CHEAPEST)
def test_a_set_in_which_each_edge_is_paid_once_is_the_published_one(goal: str) -> None:
    price, edges = CHEAPEST[goal]
    assert cheapest(goal) == Found(edges, (0, price))


@pytest.mark.parametrize("goal", ["a", "b"])
def test_what_cannot_be_reached_costs_nothing_and_stays_unreached(goal: str) -> None:
    assert cheapest(goal) == Found((), (1, 0))


def test_the_set_costs_less_than_the_additive_path_and_no_less_than_the_bound() -> None:
    assert (DISTANCE["t"], cheapest("t").cost[1], SUM["t"]) == (5, 7, 8)


@pytest.mark.parametrize("goal", ["x", "y", "z", "t", "u", "a", "b"])
def test_no_other_set_of_edges_costs_less(goal: str) -> None:
    every = chain.from_iterable(combinations(EDGES, size) for size in range(len(EDGES) + 1))
    prices = [sum(EDGES[name][2] for name in names) for names in every if goal in reached(names)]
    assert cheapest(goal).cost == ((0, min(prices)) if prices else (1, 0))
