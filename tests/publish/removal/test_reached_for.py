from typing import get_args

from bezelbook.kinds.vehicle.record import PlaceKind
from bezelbook.publish.removal.reached_for import JOBS, reached_for, stays_on
from tests.reasoning import making
from tests.reasoning.order import trim

NONE: frozenset[str] = frozenset()


def test_every_kind_of_place_says_what_it_is_opened_for() -> None:
    assert tuple(JOBS) == get_args(PlaceKind)
    car = making.vehicle()
    assert "radio" in reached_for(car, making.HOLE)
    assert reached_for(car, "not-listed") == ""


def test_a_piece_at_that_side_on_no_list_stays_on() -> None:
    car = trim.car("strip", "bezel", "lid-left")
    order = trim.order(car, trim.seen("a", pieces=["strip"]))
    assert stays_on(car, making.HOLE, order, frozenset({"strip"}), NONE) == ("bezel",)


def test_what_only_another_place_needs_off_is_not_spoken_of() -> None:
    car = trim.car("strip", "bezel")
    order = trim.order(car, trim.seen("a", pieces=["strip"]))
    bezel = frozenset({"bezel"})
    assert stays_on(car, making.HOLE, order, NONE, bezel) == ()
    assert stays_on(car, making.HOLE, order, bezel, bezel) == ("bezel",)


def test_where_nobody_made_a_list_nothing_is_known_to_stay() -> None:
    car = trim.car("strip", "bezel")
    assert stays_on(car, making.HOLE, trim.order(car), NONE, NONE) == ()
    layer = trim.order(car, trim.seen("a", lies_over=[trim.over("strip", "bezel")]))
    assert stays_on(car, making.HOLE, layer, NONE, NONE) == ()
    listed = trim.order(car, trim.seen("a", pieces=["strip"]))
    assert stays_on(car, "not-listed", listed, NONE, NONE) == ()
