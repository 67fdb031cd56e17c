"""What is left open of a speaker is asked, with the speakers that may be meant."""

from typing import Any

import pytest

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.spoken.found import Choice
from bezelbook.reasoning.words import read_words
from tests.reasoning.spoken.an_odd_shop import SHOP, an_odd_shop
from tests.rules.case_books import book_of


@pytest.mark.parametrize(
    ("text", "ask", "options"),
    [
        ("cart right footwell red one blue 130", "Which one?", ["red thirteen", "blue thirteen"]),
        ("cart right footwell 143", "Is 143 its depth, or the hole it needs?", ["143 deep", "cut out 143"]),
        ("cart right footwell tweeter", "Which speaker, or how deep is it?", ["blue thirteen", "red thirteen"]),
        (
            "cart right footwell 6x9",
            "The book has no 6 x 9 in speaker of that sort. How deep is it, or which other one?",
            ["blue thirteen", "red thirteen"],
        ),
    ],
)
def test_what_is_open_is_asked(text: str, ask: str, options: list[str]) -> None:
    found = read_words(an_odd_shop(), text).read
    assert isinstance(found, Choice)
    assert (found.ask, sorted(words for _, words in found.options)) == (ask, sorted(options))
    assert found.at == (("grain-cart-4", "foot-r"),)


def test_where_only_the_side_is_open_the_question_goes_with_it() -> None:
    found = read_words(an_odd_shop(), "cart flap red one").read
    assert isinstance(found, Choice)
    assert found.question is not None
    assert (found.question.speaker, found.question.place) == ("red-thirteen", "")


def test_a_mount_that_two_share_is_asked_about_first() -> None:
    ring = {"mount_kind": "spacer", "thickness": "10 mm caliper"}
    twice = book_of({"book": {**SHOP, "mounts": {"one": {"name": "one", **ring}, "two": {"name": "two", **ring}}}})
    found = read_words(twice, "cart right footwell red one 10 mm ring").read
    assert isinstance(found, Choice)
    assert found.ask == "Which mount?"


def test_a_bare_number_beside_a_speaker_with_sizes_of_its_own_is_told_as_not_read() -> None:
    assert read_words(an_odd_shop(), "cart right footwell red one 63").took == ("63 was not read as a size",)


def test_of_a_size_class_the_speakers_sold_as_that_are_offered() -> None:
    found = read_words(an_odd_shop(), "cart right footwell 130").read
    assert found == Choice(
        "No two 5 1/4 in speakers need be alike. Which one, or how deep is it?",
        (("Blue thirteen", "blue thirteen"), ("Red thirteen", "red thirteen")),
        at=(("grain-cart-4", "foot-r"),),
    )


def with_a_pod_and_builds() -> KnowledgeBase:
    """The odd shop's cart with two builds and a place whose name holds a number and a kind of speaker."""
    cart = SHOP["vehicles"]["grain-cart-4"]
    pod = {"kind": "mirror triangle", "side": "left", "name": "tweeter 63 pod"}
    splits: dict[str, Any] = {"build": {"values": {"early": {}, "late": {}}}}
    more = {**cart, "splits": splits, "places": {**cart["places"], "pod": pod}}
    gold = {"name": "Gold tip", "speaker_kind": "tweeter", "nominal": "1 in"}
    speakers = {**SHOP["speakers"], "gold-tip": gold}
    return book_of({"book": {**SHOP, "vehicles": {"grain-cart-4": more}, "speakers": speakers}})


def test_the_name_of_a_place_is_neither_a_size_nor_a_sort_of_speaker() -> None:
    found = read_words(with_a_pod_and_builds(), "cart tweeter 63 pod").read
    assert isinstance(found, Choice)
    assert found.ask == "Which speaker, or how deep is it?"
    assert {name for name, _ in found.options} == {"Red thirteen", "Blue thirteen", "Gold tip"}


def test_the_build_and_the_tabs_that_were_said_are_asked_for() -> None:
    found = read_words(with_a_pod_and_builds(), "cart late right footwell red one tabs out").read
    assert isinstance(found, SpeakerQuestion)
    assert (found.splits, found.tabs, found.place) == ({"build": "late"}, "out", "foot-r")
