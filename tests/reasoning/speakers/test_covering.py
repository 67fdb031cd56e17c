"""A flange has to cover the hole it rests on."""

import pytest

from bezelbook.reasoning.speakers.covering import uncovered
from tests.reasoning.speakers.doors import (
    ask,
    book,
    measured,
    mount,
    place,
    reading,
    resolved,
    roomy,
    speaker,
    tried,
)

PLATE = mount("plate", mount_kind="plate", inner="135 mm caliper", thickness="1 mm caliper")


@pytest.mark.parametrize(
    ("flange", "verdict"),
    [("150 mm caliper", "goes in"), ("139 mm caliper", "does not"), ("120 mm printed", "goes in")],
)
def test_one_that_is_no_wider_than_the_hole_falls_through(flange: str, verdict: str) -> None:
    assert ask(book(speaker(flange=flange), roomy())).verdict == verdict


def test_the_number_that_decides_is_the_flange() -> None:
    plain = ask(book(speaker(flange="120 mm caliper"), roomy())).plain()
    reaches, room = "120 mm (4.72 in)", "it is at least 139 mm (5.47 in)"
    assert plain["number"] == {
        "need": "flange",
        "where": "the hole",
        "asks": reaches,
        "room": room,
        "to_spare": None,
        "words": f"flange: it reaches {reaches} at most over the hole, and {room}",
    }


def test_how_far_it_reaches_and_how_wide_the_hole_is_at_least() -> None:
    of = book(speaker(flange="139 mm caliper"), roomy())
    here, question = place(of), resolved(of, mounts=())
    [rooms], [setting] = here.accounts, question.settings
    assert uncovered(rooms, question.needs, setting) == (139_000_000, 139_000_000)
    wider = resolved(book(speaker(flange="139.001 mm caliper"), roomy()), mounts=())
    assert uncovered(rooms, wider.needs, setting) is None


def test_an_oval_hole_is_covered_both_ways() -> None:
    hole = [reading("cut-out long way", "180 ± 1 mm"), reading("cut-out short way", "140 ± 1 mm")]
    rest = [reading("rear depth to glass down", "70 ± 1 mm"), reading("front clearance", "20 ± 1 mm")]
    of = book(speaker(flange="150 mm caliper"), measured("m", *hole, *rest))
    assert ask(of).verdict == "does not"


def test_a_plate_takes_the_place_of_the_hole() -> None:
    of = book(PLATE, speaker(flange="139 mm caliper"), roomy())
    assert ask(of, mounts=["plate"]).verdict == "goes in"
    assert ask(book(PLATE, speaker(flange="135 mm caliper"), roomy()), mounts=["plate"]).verdict == "does not"


def test_one_that_went_in_just_so_does_not_fall_through() -> None:
    assert ask(book(speaker(flange="120 mm caliper"), roomy(), tried())).verdict == "goes in"
    elsewhere = tried(mounts=["plate"])
    assert ask(book(PLATE, speaker(flange="120 mm caliper"), roomy(), elsewhere)).verdict == "does not"
    assert ask(book(speaker(flange="120 mm caliper"), roomy(), tried(mounts=None))).verdict == "does not"


def test_of_two_rings_the_one_on_top_has_to_be_covered() -> None:
    """The lower one, of 150 mm, lies under the upper one, of 135."""
    wide = mount("wide", inner="150 mm caliper", thickness="1 mm caliper")
    narrow = mount("narrow", inner="135 mm caliper", thickness="1 mm caliper")
    of = book(wide, narrow, speaker(flange="138 mm caliper"), roomy())
    assert ask(of, mounts=["wide", "narrow"]).verdict == "goes in"
    assert ask(of, mounts=["narrow", "wide"]).verdict == "does not"


def test_an_oval_plate_has_to_be_covered_the_long_way() -> None:
    oval = {"inner": "170 mm caliper", "inner_short": "135 mm caliper", "thickness": "1 mm caliper"}
    plate = mount("oval", mount_kind="plate", **oval)
    assert ask(book(plate, speaker(flange="150 mm caliper"), roomy()), mounts=["oval"]).verdict == "does not"
    assert ask(book(plate, speaker(flange="171 mm caliper"), roomy()), mounts=["oval"]).verdict == "goes in"
