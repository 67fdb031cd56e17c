"""Two sorts of car explain a clash where the other notes bear it out; a change no split has is told with its look."""

from fractions import Fraction
from typing import Any

from bezelbook.reasoning.differing.cars import other_cars, split_said, split_written, subject_of, year_said
from bezelbook.reasoning.differing.case import case_of
from bezelbook.reasoning.proposal import NEW_SPLIT
from tests.reasoning import making
from tests.reasoning.differing.a_clash import axes, no, note, why, why_still, yes

SPLIT = {"build": making.split("early", "late")}
BENCH = making.record("notes", "b", {"form": "bench", "part": "p"})


def weight_of(found: tuple[Any, ...], axis: str) -> Fraction:
    return next((one.weight for one in found if one.axis == axis), Fraction(0))


def test_a_split_that_differs_is_likelier_than_one_left_blank() -> None:
    car = making.vehicle(splits=SPLIT)
    said = why(yes(splits={"build": "late"}), no(splits={"build": "early"}), car)
    blank = why(yes(), no(splits={"build": "early"}), car)
    assert weight_of(said, "build") > weight_of(blank, "build") > 0
    assert next(one.words for one in said if one.axis == "build") == "the build: late in yes, early in no"


def test_both_of_one_value_leaves_a_change_in_the_run() -> None:
    same = why(yes(splits={"build": "late"}), no(splits={"build": "late"}), making.vehicle(splits=SPLIT))
    assert [one.words for one in same] == [
        (
            "a change in the run that the book has no split for: neither says its model year; "
            "look from the seat at both cars for what tells them apart"
        )
    ]


def test_other_notes_of_the_place_bear_a_split_out_or_speak_against_it() -> None:
    """A deep one went into another late car: the late ones have the room. Or into an early one: they have not."""
    car = making.vehicle(splits=SPLIT)
    first, second = yes(splits={"build": "late"}), no(splits={"build": "early"})
    plain = weight_of(why(first, second, car), "build")
    for build, more in (("late", True), ("early", False)):
        other = making.tried("other", what="deep", sure="dry-fitted", splits={"build": build})
        found = why(first, second, car, other)
        assert (weight_of(found, "build") > plain) == more
        [told] = [one.because for one in found if one.axis == "build"]
        assert told == (f"the other notes here are {'for' if more else 'against'} it",)


def test_a_split_that_bears_on_another_place_hardly_explains_it() -> None:
    elsewhere = making.vehicle(splits={"build": making.split("early", "late", bears_on={"places": ["boot"]})})
    found = why(yes(), no(splits={"build": "early"}), elsewhere)
    assert weight_of(found, "build") < weight_of(
        why(yes(), no(splits={"build": "early"}), making.vehicle(splits=SPLIT)), "build"
    )


def test_which_sound_a_car_has_seldom_changes_its_room() -> None:
    sound = making.vehicle(splits={"sound": making.split("base", "upgraded", differs_in="audio")})
    assert weight_of(why(yes(), no(), sound), "package") < weight_of(
        why(yes(), no(), making.vehicle(splits=SPLIT)), "build"
    )


def test_years_that_differ_are_a_likelier_change_than_years_that_do_not() -> None:
    weights = [weight_of(why(yes(year=2), no(year=year)), "build") for year in (4, None, 2)]
    assert weights == sorted(weights, reverse=True)
    assert weights[2] > 0
    [apart] = why(yes(year=2), no(year=4))
    assert "yes is of model year 2 and no is of model year 4" in apart.words
    assert "no is of model year 4 and yes does not say" not in apart.words


def test_a_value_that_was_not_built_in_a_notes_year_is_not_proposed() -> None:
    split = {"build": {"values": {"early": {"years": [1, 2]}, "mid": {"years": [2, 3]}, "late": {"years": [3, 4]}}}}
    car = making.vehicle(splits=split)
    found = why(yes(year=2), no(splits={"build": "late"}), car)
    assert weight_of(found, "build") > 0
    assert "build" in axes(why(yes(splits={"build": "strange"}), no(), car))


def test_an_amplifier_may_turn_on_a_package_that_the_book_does_not_know_and_a_rear_place_on_the_body() -> None:
    there, gone = note("yes", "seen", amplifier="there"), note("no", "seen", amplifier="not there")
    assert "package" in axes(why(there, gone))
    packed = making.vehicle(splits={"sound": making.split("base", "upgraded", differs_in="audio")})
    assert axes(why(there, gone, packed)).count("package") == 1
    rear = making.vehicle(places={making.HOLE: {"kind": "rear quarter", "side": "left"}})
    assert "body" in axes(why(yes(), no(), rear))
    bodied = making.vehicle(
        splits={"body": making.split("van", "cab", differs_in="body")},
        places={making.HOLE: {"kind": "rear quarter", "side": "left"}},
    )
    assert axes(why(yes(), no(), bodied)).count("body") == 1


def test_what_a_note_is_about() -> None:
    metered = note("m", "metered", plug="p", cavities=[{"cavity": 1, "carries": "constant"}])
    assert [subject_of(one) for one in (making.tried(), metered, note("s", "seen", plug="p"))] == [
        "room",
        "circuits",
        "plug",
    ]
    assert subject_of(note("s", "seen", amplifier="there")) == "amplifier"
    assert subject_of(note("s", "seen", lies_over=[{"piece": "a", "over": "b"}])) == "trim"
    assert year_said(BENCH) is None
    assert split_written("build")(BENCH) is None
    assert split_said(making.vehicle(splits=SPLIT), "build")(BENCH) is None


def test_notes_of_the_bench_are_of_no_car() -> None:
    book = making.book(making.vehicle(splits=SPLIT), BENCH)
    case = case_of(book, book.vehicles[making.CAR], making.HOLE, (BENCH, BENCH))
    assert {one.axis for one in other_cars(case)} == {"build"}
    assert list(other_cars(case_of(book, None, making.HOLE, (BENCH, BENCH)))) == []


def test_what_survives_every_blank_is_most_often_a_change_that_nobody_wrote() -> None:
    """The split that the book has was tried with every value; one that is said to bear elsewhere was not."""
    car = making.vehicle(splits=SPLIT)
    blank = why_still(yes(), no(splits={"build": "early"}), car)
    assert blank[0].words.startswith("a change in the run that the book has no split for")
    assert blank[0].weight == Fraction(1, 4)
    elsewhere = making.vehicle(splits={"build": making.split("early", "late", bears_on={"places": ["boot"]})})
    said = why_still(yes(splits={"build": "late"}), no(splits={"build": "early"}), elsewhere)
    assert said[0].words == "the build: late in yes, early in no"
    assert [one.axis for one in said] == ["build", "build"]
    rear = making.vehicle(places={making.HOLE: {"kind": "rear quarter", "side": "left"}})
    assert "body" not in axes(why_still(yes(), no(), rear))


def test_a_year_may_stand_for_the_wrong_build_where_it_changed_within_it() -> None:
    car = making.vehicle(splits={"build": {"values": {"early": {"years": [1, 2]}, "late": {"years": [3]}}}})
    found = why_still(yes(year=2), no(year=2), car)
    assert "the build: yes and no do not say which the car was" in [one.words for one in found]


ELSEWHERE = {"build": making.split("early", "late", bears_on={"subjects": ["plug"]})}


def deep(name: str, mm: int, **said: Any) -> Any:
    return making.measured(name, making.reading("depth", f"{mm} ± 1 mm", tool="depth gauge"), **said)


def unknown(found: tuple[Any, ...]) -> Fraction:
    return next((one.weight for one in found if one.split == NEW_SPLIT), Fraction(0))


def test_a_split_said_to_bear_elsewhere_comes_before_one_that_nobody_knows() -> None:
    """Where it parts the two there is no need of another; where it does not there is."""
    car = making.vehicle(splits=ELSEWHERE)
    parts, alike = (
        why_still(deep("a", 150, splits={"build": "early"}), deep("b", 170, splits={"build": value}), car)
        for value in ("late", "early")
    )
    assert weight_of(tuple(one for one in parts if one.split == "build"), "build") > unknown(parts) > 0
    assert [one.split for one in alike if one.split] == [NEW_SPLIT]
    assert unknown(alike) > unknown(parts)
    third = deep("c", 170, splits={"build": "early"})
    with_a_third = why_still(
        deep("a", 150, splits={"build": "early"}), deep("b", 170, splits={"build": "late"}), car, third
    )
    split = [next(one.weight for one in found if one.split == "build") for found in (parts, with_a_third)]
    assert split[0] > split[1], "an early one has that room too"


def test_two_notes_of_one_job_are_of_one_car() -> None:
    one, other = (why_still(deep("a", 150, job="j-1"), deep("b", 170, job=job)) for job in ("j-1", "j-2"))
    assert unknown(other) > 0
    assert unknown(one) == 0
    assert unknown(why_still(deep("a", 150), deep("b", 170))) == unknown(other), "no tag is no job"


def test_few_changes_fall_within_a_year() -> None:
    same, other, unsaid = (why_still(deep("a", 150, year=2), deep("b", 170, year=year)) for year in (2, 3, None))
    assert unknown(other) == unknown(unsaid) == 5 * unknown(same) > 0


def test_a_model_year_says_a_split_as_much_as_a_word() -> None:
    split = {"values": {"early": {"years": [1, 2]}, "late": {"years": [3, 4]}}}
    car = making.vehicle(splits={"build": split})
    late = deep("b", 170, splits={"build": "late"})
    early = deep("c", 150, splits={"build": "early"})
    found = why_still(deep("a", 170, year=1), early, car, late)
    assert 0 < weight_of(tuple(one for one in found if one.split == "build"), "build") < Fraction(1, 10)
