"""Conditions in full: asked of whom, with which lengths in which unit, and the question that would say so."""

from typing import Any

import pytest

from tests.reasoning.making import record
from tests.reasoning.speakers.doors import (
    CAR,
    DOOR,
    OTHER,
    ask,
    book,
    car,
    foam,
    measured,
    mount,
    reading,
    roomy,
    shop,
    speaker,
    tried,
)
from tests.reasoning.speakers.test_conditions import BRACKET, RING, SPLITS, first

MM = 1_000_000
CLEARANCES = ("width", "height", "depth", "glass", "fixed", "grille")
TWO_SPLITS: dict[str, Any] = {
    "build": {"values": {"early": {}, "late": {}}},
    "door": {"values": {"long": {}, "short": {}}},
}
FLAT = speaker("flat", front_height=None)
NO_FRONT = measured("m", reading("cut-out", "140 ± 1 mm"), reading("rear depth to glass down", "70 ± 1 mm"))


@pytest.mark.parametrize(
    ("records", "asked", "words"),
    [
        # What is said already, or has no tabs, is not asked about.
        ((tried(cut=None),), {"tabs": "in"}, "the note n was made with nothing cut"),
        (
            (
                mount("b", mount_kind="bracket", tabs_in="132 ± 5 mm", tabs_out="150 mm caliper"),
                tried(mounts=["b"], tabs="in", cut=None),
            ),
            {"mounts": ["b"], "tabs": "in"},
            "the note n was made with nothing cut",
        ),
        (
            (car(splits=TWO_SPLITS), tried(splits={})),
            {"splits": {"build": "late", "door": "long"}},
            "the note n was made in a car of this build (late long)",
        ),
        # The first yes cut a rib, which the question does not; the second says nothing of it.
        ((tried("a", cut="a rib"), tried("n", cut=None)), {}, "the note n was made with nothing cut"),
        # The yes says nothing of the front, which another note measured.
        (
            (FLAT, tried(what="flat", cut=None), measured("m", reading("front clearance", "20 ± 1 mm"))),
            {},
            "the note n was made with nothing cut",
        ),
        # The yes was on a ring, and a ring is one of the mountings left open.
        ((RING, tried(mounts=["ring"], cut=None)), {"mounts": None}, "the note n was made with nothing cut"),
    ],
)
def test_only_what_a_yes_left_unsaid_is_asked_of_its_author(
    records: tuple[Any, ...], asked: dict[str, Any], words: str
) -> None:
    assert first(*records, **asked) == words


def test_a_hole_and_a_depth_that_a_like_speaker_went_through_are_not_missing() -> None:
    [condition] = ask(book(FLAT, tried(what="flat"))).conditions
    assert (condition.words, condition.lengths) == ("there is at least 10 mm (0.39 in) to the grille", (10 * MM,))


def test_of_mountings_left_open_the_size_is_told_for_the_plainest() -> None:
    [condition] = ask(book(RING, NO_FRONT), mounts=None).conditions
    assert (condition.words, condition.lengths) == ("there is at least 10 mm (0.39 in) to the grille", (10 * MM,))


def test_a_ring_is_told_with_the_gasket_on_it() -> None:
    # By hand: 60 - 52 - 1 of foam is 7; 20 - 1 - 10 is 9. A ring of 8 and the foam keep 51 + 9 and 19 - 9 at worst.
    [condition] = ask(book(foam(), roomy(glass="52 ± 1 mm")), mounts=None, gasket="foam").conditions
    assert condition.lengths == (7 * MM, 9 * MM)


def test_a_place_that_needs_no_ring_by_the_middles_is_offered_none() -> None:
    assert first(roomy(glass="60 ± 1 mm"), mounts=None) == "too close"


def test_every_printed_size_is_told() -> None:
    boxed = speaker("boxed", basket="130 mm printed", mounting_depth="60 mm printed")
    words = "its printed sizes are true (basket 130 mm (5.12 in), mounting depth 60 mm (2.36 in))"
    assert first(boxed, roomy(), what="boxed") == words


def test_a_condition_is_the_question_with_that_one_thing_filled_in() -> None:
    [build] = ask(book(car(splits=SPLITS), roomy(splits={"build": "early"}))).conditions
    assert build.narrowed is not None
    assert build.narrowed.builds == ((("build", "early"),),)
    [tabs] = ask(book(BRACKET, roomy()), mounts=["b"]).conditions
    assert tabs.narrowed is not None
    assert (tabs.narrowed.tabs, tabs.narrowed.mount_words) == ("out", "b")


def test_lengths_come_in_the_shop_s_own_unit_first() -> None:
    exact = {"clearances": dict.fromkeys(CLEARANCES, "0 mm"), "tools": {"bench_caliper": "0 mm"}}
    inches = record("shop", "shop", {"name": "Shop", "format": 1, "units_first": "in", **exact})
    assert first(inches, NO_FRONT) == "there is at least 0.39 in (10 mm) to the grille"
    assert first(inches, BRACKET, roomy(), mounts=["b"]).endswith("a basket of up to 5.51 in (140 mm)")


def test_a_build_that_bears_only_on_another_place_is_no_condition() -> None:
    splits: dict[str, Any] = {"build": {"values": {"early": {}, "late": {}}, "bears_on": {"places": [OTHER]}}}
    assert [one.words for one in ask(book(car(splits=splits), NO_FRONT)).conditions] == [
        "there is at least 10 mm (0.39 in) to the grille"
    ]


def test_an_oval_plate_takes_no_round_basket_wider_than_its_short_way() -> None:
    oval = {"mount_kind": "plate", "inner": "170 mm caliper", "thickness": "1 mm caliper"}
    assert first(mount("b", inner_short="129 mm caliper", **oval), roomy(), mounts=["b"]) == "does not"
    assert first(mount("b", inner_short="131 mm caliper", **oval), roomy(), mounts=["b"]) == "goes in"


@pytest.mark.parametrize(("short", "verdict"), [("88 ± 1 mm", "does not"), ("92 ± 1 mm", "goes in")])
def test_an_oval_speaker_asks_of_both_ways_of_its_hole(short: str, verdict: str) -> None:
    ways = [reading("cut-out long way", "140 ± 1 mm"), reading("cut-out short way", short)]
    depths = [reading("rear depth to glass down", "70 ± 1 mm"), reading("front clearance", "20 ± 1 mm")]
    assert first(speaker("oval", basket_short="90 mm caliper"), measured("m", *ways, *depths), what="oval") == verdict


@pytest.mark.parametrize(("short", "verdict"), [("95 mm caliper", "goes in"), ("85 mm caliper", "does not")])
def test_an_oval_speaker_goes_through_an_oval_plate_way_by_way(short: str, verdict: str) -> None:
    plate = mount("b", mount_kind="plate", inner="140 mm caliper", inner_short=short, thickness="1 mm caliper")
    assert first(speaker("oval", basket_short="90 mm caliper"), plate, roomy(), what="oval", mounts=["b"]) == verdict


@pytest.mark.parametrize(
    ("worst", "verdict"), [("62 ± 1 mm", "goes in"), ("60 ± 1 mm", "too close"), ("58 ± 1 mm", "does not")]
)
def test_the_worst_point_of_the_glass_s_way_decides_and_not_the_glass_all_the_way_down(
    worst: str, verdict: str
) -> None:
    assert first(roomy(glass="70 ± 1 mm"), measured("w", reading("rear depth at worst of travel", worst))) == verdict


def test_a_build_that_bears_on_this_place_is_a_condition() -> None:
    splits: dict[str, Any] = {"build": {"values": {"early": {}, "late": {}}, "bears_on": {"places": [DOOR]}}}
    assert first(car(splits=splits), roomy(splits={"build": "early"})) == "the build is early"


def test_of_mounts_left_open_only_those_with_tabs_are_asked_to_lose_them() -> None:
    """The bare hole is too small, and what the plate leaves nobody knows well enough."""
    here = [{"vehicle": CAR, "place": DOOR}]
    tabs = {"tabs_in": "120 mm caliper", "tabs_out": "140 mm caliper", "thickness": "1 mm caliper"}
    bracket = mount("b", mount_kind="bracket", made_for=here, **tabs)
    plate = mount("plate", mount_kind="plate", inner="130 ± 5 mm", thickness="1 mm caliper", made_for=here)
    depths = [reading("rear depth to glass down", "70 ± 1 mm"), reading("front clearance", "20 ± 1 mm")]
    small = measured("m", reading("cut-out", "125 ± 1 mm"), *depths)
    [condition] = ask(book(bracket, plate, small), mounts=None).conditions
    assert condition.words.startswith("the tabs of b are broken out, which cannot be undone")
    assert condition.narrowed is not None
    assert [stack.mounts for stack in condition.narrowed.stacks] == [("b",)]


def test_a_room_that_was_never_read_has_to_keep_what_the_house_likes() -> None:
    found = ask(book(shop(glass="5 mm"), tried()), {"mounting_depth": "61 mm"})
    assert [one.words for one in found.conditions] == [
        "there is at least 66 mm (2.60 in) to the glass, all the way down"
    ]


def test_what_was_left_over_counts_as_soon_as_its_author_says_that_nothing_was_cut() -> None:
    note = tried(reason="glass", to_spare="3 ± 1 mm", cut=None)
    assert [one.words for one in ask(book(note), {"mounting_depth": "62 mm"}).conditions] == [
        "there is at least 62 mm (2.44 in) to the glass, all the way down",
        "the note n was made with nothing cut",
    ]


@pytest.mark.parametrize(("flange", "verdict"), [("150 mm caliper", "goes in if"), ("120 mm caliper", "does not")])
def test_what_went_in_without_a_ring_may_fall_through_on_one(flange: str, verdict: str) -> None:
    """With the glass up it went in, whatever its flange; run down it needs a ring, which leaves the hole."""
    records = speaker(flange=flange), roomy(glass="52 ± 1 mm"), tried(glass="up")
    assert ask(book(*records), mounts=None).verdict == verdict
