"""A place for a speaker is found by its telling words and its side."""

import pytest

from bezelbook.reasoning.spoken.found import Choice, Found
from bezelbook.reasoning.spoken.places import means_speaker, own_words, shop_words, speaker_place, takes_speaker
from bezelbook.reasoning.vocabulary import Phrase
from tests.reasoning.making import vehicle

DOOR = {"kind": "door lower", "side": "left"}
PLACES = {
    "door-left": DOOR,
    "door-right": {**DOOR, "side": "right"},
    "deck": {"kind": "parcel shelf", "side": "centre"},
    "slot": {"kind": "pocket", "side": "centre", "name": "shelf slot"},
}
CAR = vehicle(places=PLACES)


SLOT, NOOK = Phrase(("slot",), "place", "slot"), Phrase(("nook",), "place", "door-left")


def found(text: str, *phrases: Phrase) -> Found:
    said = Found(tuple(text.split()), list(text.split()))
    said.take(phrases)
    return said


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
    locker = Phrase(("door", "locker"), "place", "locker")
    assert means_speaker(CAR, found("165 in the door locker", locker)), "it names what is neither, and says door too"


def test_every_way_of_saying_a_place_comes_to_one_word() -> None:
    assert shop_words("mirror triangle") == shop_words("sail panel") == ("sail",)
    assert own_words("deck", CAR.places["deck"]) == {"shelf"}
    assert [takes_speaker(CAR.places[one]) for one in PLACES] == [True, True, True, False]


def test_a_place_that_was_named_tells_a_speaker_from_a_box() -> None:
    assert means_speaker(CAR, found("165 nook", NOOK))
    assert not means_speaker(CAR, found("slot door 165", SLOT))
    assert speaker_place(CAR, found("165 nook", NOOK)) == "door-left"


def test_no_such_place_is_told_from_an_opening_that_takes_no_speaker() -> None:
    three = (("door left", "door left"), ("door right", "door right"), ("deck", "deck"))
    nowhere = f"The book has no such place for a speaker in the {CAR.name}. Which place?"
    assert speaker_place(CAR, found("slot rear door", SLOT)) == Choice(nowhere, three)
    assert speaker_place(CAR, found("slot rear", SLOT)) == Choice("shelf slot takes no speaker. Which place?", three)
    nameless = vehicle(places={"door": DOOR, "slot": {"kind": "pocket", "side": "centre"}})
    asked = speaker_place(nameless, found("slot rear", SLOT))
    assert asked == Choice("slot takes no speaker. Which place?", (("door", "door"),))


def test_places_are_offered_by_their_names_and_sides_with_what_is_known_there() -> None:
    second = vehicle(places={"door-one": DOOR, "door-two": {**DOOR, "name": "Second door"}})
    offered = (("door one", "door one"), ("Second door", "door two"))
    assert speaker_place(second, found("left door")) == Choice("Which place?", offered)
    sides = (("door left", "door left"), ("door right", "door right"))
    at = ((CAR.id, "door-left"), (CAR.id, "door-right"))
    assert speaker_place(CAR, found("doors")) == Choice("Which side?", sides, at=at)


UNIT, SIX = Phrase(("box",), "unit", "box"), Phrase(("six",), "speaker", "six")


def test_a_head_unit_that_is_named_is_meant_unless_a_speaker_is_named_at_its_place() -> None:
    assert not means_speaker(CAR, found("box door", UNIT))
    assert means_speaker(CAR, found("box six door", UNIT, SIX))
    assert not means_speaker(CAR, found("box six", UNIT, SIX))
    assert not means_speaker(CAR, found("box six door slot", UNIT, SIX, SLOT))


def test_a_place_that_takes_neither_makes_no_number_a_speaker_s() -> None:
    car = vehicle(places={**PLACES, "bay": {"kind": "engine bay", "side": "centre"}})
    assert not means_speaker(car, found("165 bay", Phrase(("bay",), "place", "bay")))


def test_a_side_among_the_words_of_a_place_counts() -> None:
    nooks = [Phrase(("left", "nook"), "place", id_) for id_ in ("door-left", "door-right")]
    assert speaker_place(CAR, found("left nook", *nooks)) == "door-left"
