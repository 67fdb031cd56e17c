from bezelbook.publish.removal.cautions import MEANS, NOW, all_stopped, caution, place_name, whole_car
from bezelbook.values.words import SAFETIES
from tests.reasoning import making
from tests.reasoning.order import trim


def test_every_class_says_what_it_means_and_what_to_do_now() -> None:
    assert tuple(MEANS) == SAFETIES
    assert tuple(NOW) == SAFETIES
    for safety in SAFETIES[1:]:
        assert "service information" in caution(safety).now


def test_an_order_of_nothing_but_restraints_is_stopped_and_one_of_none_is_not() -> None:
    near, free = {"piece": "lid", "safety": "restraint near"}, {"piece": "strip", "safety": "none"}
    car = trim.car("lid", "strip")
    assert all_stopped(trim.order(car, trim.seen("a", pieces=[near])))
    assert not all_stopped(trim.order(car, trim.seen("a", pieces=[near, free])))
    assert not all_stopped(trim.order(car))


def test_a_place_is_called_as_the_shop_calls_it() -> None:
    car = making.vehicle(places={"hole-left": {"kind": "plain opening", "side": "left", "name": "the hole"}})
    assert place_name(car, "hole-left") == "the hole"
    assert place_name(car, "not-listed") == "not listed"


def test_what_feeds_a_car_and_what_is_said_of_it_as_a_whole_holds_wherever_one_works() -> None:
    whole = {"kind": "whole vehicle", "side": "centre", "safety": "high voltage near"}
    assert whole_car(making.vehicle()) == ()
    fed, said = {"supply": "high voltage present"}, {"places": {"car": whole}}
    for content in (fed, said, fed | said):
        [near] = whole_car(making.vehicle(**content))
        assert near.safety == "high voltage near"
        assert near.now.startswith("Before you take anything off")
    assert whole_car(making.vehicle(places={"car": {**whole, "safety": "none"}}, supply="48 V present")) == ()
