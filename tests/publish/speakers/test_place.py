"""A place for speakers with its answers."""

from bezelbook.publish.speakers.place import PlaceForSpeakers, places_for_speakers
from tests.reasoning.speakers.doors import CAR, DOOR, OTHER, book, car, mount, roomy, speaker, tried


def test_every_place_that_takes_a_speaker_is_one() -> None:
    of = book(
        car(places={"radio": {"kind": "plain opening", "side": "centre"}, DOOR: {"kind": "door lower", "side": "left"}})
    )
    assert list(places_for_speakers(of)) == [(CAR, DOOR)]
    assert (CAR, "seat") in places_for_speakers(book())


def test_its_name_is_what_the_shop_calls_it() -> None:
    named = car(places={DOOR: {"kind": "door lower", "side": "left", "name": "the left one"}})
    assert PlaceForSpeakers(book(named), CAR, DOOR).name == "the left one"
    assert PlaceForSpeakers(book(), CAR, DOOR).name == "door left"


def test_a_place_that_nobody_noted_has_no_answers() -> None:
    of = book(roomy())
    assert PlaceForSpeakers(of, CAR, OTHER).answers == {}
    assert PlaceForSpeakers(of, CAR, DOOR).answers["six"].verdict == "goes in"


def test_windows_are_of_what_may_go_in_and_was_measured() -> None:
    big = speaker("big", basket="200 mm caliper")
    of = book(mount("ring", thickness="5 mm caliper"), big, roomy())
    assert list(PlaceForSpeakers(of, CAR, DOOR).windows) == ["six"]
    assert PlaceForSpeakers(book(tried()), CAR, DOOR).windows == {}
