"""A place for a speaker is found by its telling words and its side."""

import pytest

from bezelbook.reasoning.spoken.found import Choice, Found
from bezelbook.reasoning.spoken.places import means_speaker, own_words, shop_words, speaker_place, takes_speaker
from tests.reasoning.making import vehicle

DOOR = {"kind": "door lower", "side": "left"}
PLACES = {
    "door-left": DOOR,
    "door-right": {**DOOR, "side": "right"},
    "deck": {"kind": "parcel shelf", "side": "centre"},
    "slot": {"kind": "pocket", "side": "centre", "name": "shelf slot"},
}
CAR = vehicle(places=PLACES)


def found(text: str) -> Found:
    return Found(tuple(text.split()), list(text.split()))


@pytest.mark.parametrize(
    ("text", "place"), [("lh front door", "door-left"), ("door rhs", "door-right"), ("parcel shelf", "deck")]
)
def test_a_place_is_found(text: str, place: str) -> None:
    assert speaker_place(CAR, found(text)) == place


@pytest.mark.parametrize(
    ("text", "ask"),
    [
        ("doors", "Which side?"),
        ("speakers", "Which place?"),
        ("rear door", f"The book has no such place for a speaker in the {CAR.name}. Which place?"),
    ],
)
def test_what_is_open_is_asked(text: str, ask: str) -> None:
    asked = speaker_place(CAR, found(text))
    assert isinstance(asked, Choice)
    assert asked.ask == ask


def test_two_places_alike_on_one_side_are_asked_about_as_places() -> None:
    asked = speaker_place(vehicle(places={"door-one": DOOR, "door-two": DOOR}), found("left door"))
    assert isinstance(asked, Choice)
    assert asked.ask == "Which place?"


def test_words_of_an_opening_mean_no_speaker() -> None:
    assert not means_speaker(CAR, found("165 on the shelf"))
    assert means_speaker(CAR, found("165 in the door"))


def test_every_way_of_saying_a_place_comes_to_one_word() -> None:
    assert shop_words("mirror triangle") == shop_words("sail panel") == ("sail",)
    assert own_words("deck", CAR.places["deck"]) == {"shelf"}
    assert [takes_speaker(CAR.places[one]) for one in PLACES] == [True, True, True, False]
