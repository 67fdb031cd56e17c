"""Which builds there are, which axes bear on a place, and which build a car may be."""

from bezelbook.reasoning.builds import bearing_axes, builds, common_values, known_splits, matching
from tests.reasoning.making import HOLE, split, vehicle

TWO_AXES = {"build": split("early", "late"), "audio": split("base", "upgraded")}
YEARS = {
    "build": {"values": {"early": {"years": [1, 2, 3]}, "late": {"years": [3, 4]}}},
    "audio": split("base", "upgraded"),
}


def test_an_axis_without_a_list_bears_on_every_place_and_subject() -> None:
    assert bearing_axes(vehicle(splits=TWO_AXES), HOLE, "room") == ("build", "audio")


def test_an_axis_bears_only_on_the_places_and_subjects_it_lists() -> None:
    here, there = {"places": [HOLE]}, {"places": ["door"]}
    splits = {
        "here": split("a", bears_on=here),
        "there": split("a", bears_on=there),
        "room": split("a", bears_on={"subjects": ["room"]}),
        "plug": split("a", bears_on={"subjects": ["plug"]}),
        "both": split("a", bears_on=here | {"subjects": ["plug", "room"]}),
    }
    assert bearing_axes(vehicle(splits=splits), HOLE, "room") == ("here", "room", "both")


def test_a_vehicle_without_axes_has_one_build() -> None:
    assert builds(vehicle(), ()) == ((),)


def test_builds_are_every_combination_that_was_built() -> None:
    car = vehicle(splits=TWO_AXES, never_built=[{"build": "early", "audio": "upgraded"}])
    assert builds(car, ("build", "audio")) == (
        (("build", "early"), ("audio", "base")),
        (("build", "late"), ("audio", "base")),
        (("build", "late"), ("audio", "upgraded")),
    )


def test_a_combination_never_built_is_no_build_of_the_axes_that_bear() -> None:
    # Every early car with either audio is ruled out, so no early car is left.
    never = [{"build": "early", "audio": "base"}, {"build": "early", "audio": "upgraded"}]
    assert builds(vehicle(splits=TWO_AXES, never_built=never), ("build",)) == ((("build", "late"),),)


def test_a_vehicle_of_which_nothing_was_built_is_taken_as_if_everything_was() -> None:
    never = [{"build": "early"}, {"build": "late"}]
    assert len(builds(vehicle(splits=TWO_AXES, never_built=never), ("build", "audio"))) == 4


def test_an_empty_line_among_the_never_built_rules_nothing_out() -> None:
    assert len(builds(vehicle(splits=TWO_AXES, never_built=[{}]), ("build",))) == 2


def test_a_model_year_tells_a_value_only_where_one_value_lists_it() -> None:
    car = vehicle(splits=YEARS)
    assert known_splits(car, {}, 1) == {"build": "early"}
    assert known_splits(car, {}, 4) == {"build": "late"}
    assert known_splits(car, {}, 3) == {}
    assert known_splits(car, {}, 5) == {}
    assert known_splits(car, {}, None) == {}


def test_what_was_said_of_the_build_counts_before_the_year() -> None:
    assert known_splits(vehicle(splits=YEARS), {"build": "late"}, 1) == {"build": "late"}


def test_an_axis_or_a_value_that_the_vehicle_does_not_have_is_not_known() -> None:
    car = vehicle(splits=YEARS)
    assert known_splits(car, {"trim": "plush", "build": "middle", "audio": "base"}, None) == {"audio": "base"}


def test_the_builds_that_match_agree_with_everything_known() -> None:
    every = builds(vehicle(splits=TWO_AXES), ("build", "audio"))
    assert matching(every, {"build": "late"}) == (
        (("build", "late"), ("audio", "base")),
        (("build", "late"), ("audio", "upgraded")),
    )
    assert matching(every, {}) == every
    assert matching(every, {"build": "late", "hand": "left"}) == matching(every, {"build": "late"})


def test_the_words_for_builds_outlive_a_split_that_only_tells_them_apart() -> None:
    late = (("build", "late"),)
    assert common_values([late]) == "late"
    assert common_values([(*late, ("screen", "small")), (*late, ("screen", "large"))]) == "late"
    assert common_values([(("build", "early"),), late]) == "any build"
    assert common_values([()]) == common_values([]) == "any build"
    assert common_values([(*late, ("audio", "base"))]) == "late-base"
