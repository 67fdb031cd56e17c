"""Orders, ancestors and circles of published graphs.

Topological sorting: the example of eight numbers that encyclopaedias give for it, edges from memory, its six orders
read on a page; the number of all orders (150) by networkx 3.6.1. Getting dressed: Cormen, Leiserson, Rivest and Stein,
"Introduction to Algorithms", section on topological sort, from memory; its 1728 orders and what the jacket waits for by
networkx 3.6.1. The circles: the first example with one edge more, by networkx 3.6.1.
"""

from collections.abc import Iterator

import pytest

from bezelbook.reasoning.order.graph import Befores, befores, circles, closure, depths, knots, reduced
from bezelbook.reasoning.order.sequence import least_moves

Edges = tuple[tuple[str, str], ...]

NUMBERS: Edges = (
    ("5", "11"),
    ("7", "11"),
    ("7", "8"),
    ("3", "8"),
    ("3", "10"),
    ("11", "2"),
    ("11", "9"),
    ("11", "10"),
    ("8", "9"),
)
READ = ("5 7 3 11 8 2 9 10", "3 5 7 8 11 2 9 10", "5 7 3 11 8 10 9 2", "7 5 11 3 10 8 9 2", "5 7 11 2 3 8 9 10")
READ_TOO = "3 7 8 5 11 10 2 9"
GENERATIONS = ({"3", "5", "7"}, {"8", "11"}, {"2", "9", "10"})
DRESSING: Edges = (
    ("undershorts", "pants"),
    ("undershorts", "shoes"),
    ("pants", "shoes"),
    ("pants", "belt"),
    ("shirt", "belt"),
    ("shirt", "tie"),
    ("tie", "jacket"),
    ("belt", "jacket"),
    ("socks", "shoes"),
)
DRESSED = "socks undershorts pants shoes watch shirt belt tie jacket"
BY_NAME = "shirt socks tie undershorts pants belt jacket shoes watch"


def all_orders(graph: Befores, begun: tuple[str, ...] = ()) -> Iterator[tuple[str, ...]]:
    """Every order of a graph, by trying whatever can come next; it shares nothing with the code under test."""
    if len(begun) == len(graph):
        yield begun
    for thing in graph:
        if thing not in begun and graph[thing] <= set(begun):
            yield from all_orders(graph, (*begun, thing))


@pytest.mark.parametrize(
    ("edges", "alone", "number", "published"),
    [(NUMBERS, (), 150, (*READ, READ_TOO)), (DRESSING, ("watch",), 1728, (DRESSED, BY_NAME))],
    ids=["numbers", "dressing"],
)
def test_the_graph_has_the_published_orders_and_ours_is_one(
    edges: Edges, alone: tuple[str, ...], number: int, published: tuple[str, ...]
) -> None:
    graph = befores(edges, alone)
    orders = set(all_orders(graph))
    assert len(orders) == number
    assert {tuple(order.split()) for order in published} <= orders
    assert least_moves(graph, {}) in orders
    # What was done is kept to where it may be.
    for order in published:
        assert least_moves(graph, {}, order.split()) == tuple(order.split())


def test_by_name_alone_the_dressing_begins_with_the_first_name_that_may_come() -> None:
    # "Lexicographic" in the reference: among all that may come next always the first name.
    assert least_moves(befores(DRESSING, ["watch"]), {})[:4] == ("shirt", "socks", "tie", "undershorts")


def test_everything_under_the_jacket_comes_before_it() -> None:
    graph = befores(DRESSING, ["watch"])
    assert closure(graph, ["jacket"]) - {"jacket"} == {"belt", "pants", "shirt", "tie", "undershorts"}


def test_the_numbers_lie_in_three_generations_and_need_every_edge() -> None:
    graph = befores(NUMBERS)
    deep = depths(graph)
    assert tuple({thing for thing in graph if deep[thing] == level} for level in range(3)) == GENERATIONS
    assert sum(len(before) for before in reduced(graph).values()) == 9


def test_one_edge_more_makes_two_circles_of_one_knot() -> None:
    graph = befores((*NUMBERS, ("9", "7")))
    assert knots(graph) == {frozenset({"7", "8", "9", "11"})}
    # networkx tells them as 7 8 9 and 7 9 11, each going round: 7 before 8 before 9, 7 before 11 before 9.
    assert {frozenset(circle) for circle in circles(graph)} == {frozenset({"7", "8", "9"}), frozenset({"7", "11", "9"})}
    for circle in circles(graph):
        assert all(first in graph[then] for first, then in zip(circle, (*circle[1:], circle[0]), strict=True))
