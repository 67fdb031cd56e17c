"""Where a plug may leave, for things of which nobody said it."""

from bezelbook.reasoning.cells import Demand, RoomCell
from bezelbook.reasoning.exits import MOST_WAYS, affordable, every_exit, may_leave
from bezelbook.reasoning.mounting import BARE, Stack
from bezelbook.reasoning.needs import Need, needs_of_unit
from bezelbook.values.words import NINTHS, Ninth
from tests.reasoning.making import book, unit

TOP = Stack(("top",), ninths=("upper-left", "upper", "upper-right"))
LEFT = Stack(("left",), ninths=("upper-left", "left", "lower-left"))
LOW = Stack(("low",), ninths=("lower",))


def test_with_nothing_unsaid_there_is_one_way() -> None:
    assert list(every_exit({})) == [{}]


def test_a_plug_may_leave_at_any_ninth_behind_the_hole() -> None:
    assert [exits["box"] for exits in every_exit({"box": [BARE]})] == list(NINTHS)
    assert [exits["box"] for exits in every_exit({"box": [TOP]})] == list(TOP.ninths)


def test_a_thing_has_one_exit_behind_every_hole_it_was_fitted_through() -> None:
    assert list(every_exit({"box": [TOP, LEFT, BARE]})) == [{"box": "upper-left"}]


def test_holes_with_nothing_in_common_leave_those_of_the_last() -> None:
    assert list(every_exit({"box": [TOP, LOW]})) == [{"box": "lower"}]
    assert list(every_exit({"box": [LOW, TOP, Stack(("one",), ninths=("centre",))]})) == [{"box": "centre"}]


def test_each_thing_has_an_exit_of_its_own() -> None:
    assert len(list(every_exit({"box": [TOP], "other": [LEFT]}))) == 9


def test_only_as_many_are_tried_out_as_somebody_would_wait_for() -> None:
    through = {"a": [TOP], "b": [BARE], "c": [BARE], "d": [LOW]}
    assert list(affordable(through, 1)) == ["a", "b", "c", "d"]
    assert list(affordable(through, MOST_WAYS // 27)) == ["a", "b"]
    assert list(affordable(through, MOST_WAYS)) == []
    assert list(affordable({"d": [LOW]}, MOST_WAYS)) == ["d"]
    assert list(affordable({"d": [LOW]}, MOST_WAYS + 1)) == []


def demand(need: Need, ninth: Ninth) -> Demand:
    return Demand(need, RoomCell((), "nothing", "aside", ninth), 0, ninth)


def test_a_plug_is_asked_for_only_where_it_leaves() -> None:
    needs = needs_of_unit(book(), unit(plug_exit=None))
    at_right = {"head_unit:box": NINTHS[5]}
    assert [may_leave(demand("plug", ninth), needs, at_right) for ninth in NINTHS].count(True) == 1
    assert may_leave(demand("plug", "right"), needs, at_right)
    assert all(may_leave(demand("depth", ninth), needs, at_right) for ninth in NINTHS)
    assert all(may_leave(demand("plug", ninth), needs, {"head_unit:other": NINTHS[5]}) for ninth in NINTHS)
