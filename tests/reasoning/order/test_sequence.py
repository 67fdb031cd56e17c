import pytest

from bezelbook.reasoning.order import sequence
from bezelbook.reasoning.order.graph import befores
from bezelbook.reasoning.order.sequence import least_moves, moves
from bezelbook.values.words import Side

SIDES: dict[str, Side | None] = {"l1": "left", "l2": "left", "r1": "right", "r2": "right", "c": "centre", "any": None}


def test_same_side_pieces_stay_together() -> None:
    free = befores([], ["l1", "r1", "l2", "r2"])
    assert least_moves(free, SIDES) == ("l1", "l2", "r1", "r2")


def test_what_lies_over_comes_first_even_where_that_costs_a_move() -> None:
    graph = befores([("l1", "r1"), ("r1", "l2")])
    found = least_moves(graph, SIDES)
    assert found == ("l1", "r1", "l2")
    assert moves(found, SIDES) == 2


def test_one_begins_where_it_saves_a_move() -> None:
    # Begun on the left one would have to come back to it.
    graph = befores([("r1", "l2")], ["l1"])
    assert least_moves(graph, SIDES) == ("r1", "l1", "l2")


def test_one_begins_at_the_side_that_only_a_piece_of_no_side_lies_over() -> None:
    # The cover has no side and lies over the left one: begun on the right, one would have to come back to it.
    graph = befores([("any", "l1"), ("l1", "r1")], ["r2"])
    assert least_moves(graph, SIDES) == ("any", "l1", "r1", "r2")
    assert moves(("r2", "any", "l1", "r1"), SIDES) == 2


def test_where_nothing_decides_it_goes_as_it_was_done_and_then_by_name() -> None:
    free = befores([], ["l1", "l2", "c"])
    assert least_moves(free, SIDES, done=["c", "l2"]) == ("c", "l2", "l1")
    assert least_moves(free, SIDES) == ("c", "l1", "l2")


def test_of_two_orders_with_as_few_moves_the_one_that_was_done_is_taken() -> None:
    graph = befores([("l1", "c"), ("r1", "c")])
    assert least_moves(graph, SIDES, done=["r1", "l1", "c"]) == ("r1", "l1", "c")
    assert least_moves(graph, SIDES, done=["l1", "r1", "c"]) == ("l1", "r1", "c")


def test_a_piece_whose_side_nobody_wrote_asks_for_no_move() -> None:
    graph = befores([("l1", "any"), ("any", "l2")])
    found = least_moves(graph, SIDES)
    assert found == ("l1", "any", "l2")
    assert moves(found, SIDES) == 0
    assert least_moves(befores([("any", "l1")], ["unknown"]), SIDES) == ("any", "l1", "unknown")


def test_nothing_is_an_order_of_nothing() -> None:
    assert least_moves({}, SIDES) == ()
    assert moves((), SIDES) == 0


def test_where_too_many_ways_are_open_the_order_is_still_one(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sequence, "MOST_OPEN", 1)
    graph = befores([("r1", "l2"), ("c", "r2")], ["l1"])
    found = least_moves(graph, SIDES)
    assert sorted(found) == sorted(graph)
    assert found.index("r1") < found.index("l2")
    assert found.index("c") < found.index("r2")
