"""Words that are recognised are taken once, and what was said most often counts."""

from bezelbook.reasoning.spoken.found import Found, most_named, replaced, spoken, tells
from bezelbook.reasoning.vocabulary import Phrase

DOOR = Phrase(("left", "door"), "place", "door-left", "car")
HAND = Phrase(("left",), "split", "left", "car", "hand")
OTHER = Phrase(("left",), "split", "left", "car", "seat")
RING = Phrase(("ten", "ring"), "mount", "ten-ring")


def found(text: str, *phrases: Phrase) -> Found:
    made = Found(tuple(text.split()), list(text.split()))
    made.take(phrases)
    return made


def test_the_longest_phrase_is_taken_first_and_each_word_once() -> None:
    made = found("left door left", HAND, DOOR)
    assert made.named("place") == ["door-left"]
    assert made.named("split", axis="hand") == ["left"]
    assert made.left == [None, None, None]


def test_words_that_may_speak_of_two_axes_speak_of_none() -> None:
    assert found("left", HAND, OTHER).named("split", axis="hand") == []


def test_what_is_said_most_often_counts() -> None:
    assert list(most_named(["left", "right", "left"])) == ["left"]
    assert list(most_named(["left", "right"])) == ["left", "right"]


def test_a_side_is_given_back_and_other_words_stay_taken() -> None:
    made = found("ten ring left", RING, HAND)
    made.give_back(("left", "right"))
    assert made.left == [None, None, "left"]
    assert made.named("split", axis="hand") == []
    kept = found("left", HAND, Phrase(("left",), "mount", "left"))
    kept.give_back(("left",))
    assert kept.left == [None]


def test_words_of_a_place_may_be_put_back() -> None:
    made = found("ten ring left door please", RING, DOOR)
    assert made.text(with_places=False) == "| | | | please"
    assert made.text(with_places=True) == "| | left door please"


def test_a_shared_word_names_a_thing_unless_it_tells_nothing() -> None:
    assert found("the ring").sharing([RING]) == ["ten-ring"]
    assert found("ten").sharing([RING]) == []
    assert [tells("ring"), tells("the"), tells("6x9")] == [True, False, False]


def test_what_shares_most_words_is_nearest_if_it_shares_more_than_one() -> None:
    disc = Phrase(("full", "double", "with", "disc", "slot"), "unit", "full")
    older = Phrase(("disc", "double", "older"), "unit", "older")
    also = Phrase(("the", "disc"), "unit", "older")
    assert found("disc full double").nearest([disc, older, also]) == ["full"]
    assert found("double disc").nearest([disc, older, also]) == ["full", "older"]
    assert found("double double the with").nearest([disc, older, also]) == []
    assert found("full double disc", Phrase(("full", "double"), "mount", "m")).nearest([disc]) == []
    assert found("disc").nearest([]) == []


def test_patterns_are_replaced_in_turn_with_their_groups() -> None:
    assert replaced("4 by 6", (("(4) by (6)", "$1x$2"), ("4x6", "oval"))) == "oval"
    assert spoken("front-door-left") == "front door left"
