from typing import Any

from bezelbook.publish.builds_words import Which, which_builds
from bezelbook.reasoning.builds import builds
from tests.reasoning import making
from tests.reasoning.order.trim import car

SPLITS: dict[str, Any] = {
    "build": {"values": {"early": {"tell": "Round vents."}, "late": {}}},
    "hand": {"values": {"lefty": {"tell": "Wheel on the left."}, "righty": {}}},
}
CAR = car(splits=SPLITS)
EVERY = builds(CAR, ("build", "hand"))


def which(*numbers: int) -> Which:
    return which_builds(CAR, making.HOLE, tuple(EVERY[number] for number in numbers))


def test_an_order_for_every_build_names_none() -> None:
    assert which(0, 1, 2, 3) == Which("", ())
    assert which_builds(car(), making.HOLE, ((),)) == Which("", ())


def test_builds_are_named_by_the_split_that_tells_them_apart() -> None:
    assert which(0, 1) == Which("early", (("early", "Round vents."),))
    assert which(1, 3) == Which("righty", (("righty", "Nobody has written how to tell."),))


def test_one_build_of_several_splits_is_named_by_all_of_them() -> None:
    assert which(0).words == "early, lefty"
    assert which(0).tells == (("early", "Round vents."), ("lefty", "Wheel on the left."))


def test_builds_that_no_one_split_tells_apart_are_all_named() -> None:
    assert which(0, 3).words == "early, lefty or late, righty"


def test_the_hand_of_a_car_is_the_side_of_its_wheel_and_says_itself_how_to_know_it() -> None:
    hand = {"differs_in": "hand", "values": {"left": {"tell": "Wheel on the left."}, "right": {}}}
    hands = car(splits={"hand": hand})
    left, right = (which_builds(hands, making.HOLE, (one,)) for one in builds(hands, ("hand",)))
    assert left == Which("wheel on the left", ())
    assert right == Which("wheel on the right", (("wheel on the right", "Nobody has written how to tell."),))
