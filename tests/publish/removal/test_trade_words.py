from typing import get_args

from bezelbook.kinds.note.removal import ToolUsed
from bezelbook.kinds.supply.fastener import FastenerKind
from bezelbook.publish.removal.trade_words import (
    DIRECTION_WORDS,
    DIRECTIONS,
    FASTENERS,
    LINES,
    PIECES,
    REACH,
    REACH_WORDS,
    FirstUse,
)


def test_every_word_that_a_note_may_choose_is_explained_in_half_a_line() -> None:
    assert tuple(FASTENERS) == get_args(FastenerKind)
    assert tuple(DIRECTIONS) == DIRECTION_WORDS
    reach = ToolUsed.model_json_schema()["properties"]["reach"]["items"]["enum"]
    assert list(REACH_WORDS) == reach
    for meaning in (*FASTENERS.values(), *DIRECTIONS.values(), *REACH.values(), *PIECES.values(), *LINES.values()):
        assert 10 < len(meaning) <= 90
        assert not meaning.endswith(".")


def test_a_word_is_explained_where_it_is_said_first_and_not_again() -> None:
    told = FirstUse()
    assert told.said(["centre-bezel", "a radio Bezel"]) == [("bezel", PIECES["bezel"])]
    assert told.said(["another bezel"]) == []


def test_a_word_inside_another_is_not_said() -> None:
    assert FirstUse().said(["strips"]) == [("strip", PIECES["strip"])]
    assert FirstUse().said(["stripped the podium"]) == []


def test_two_words_of_one_meaning_are_explained_by_the_first() -> None:
    meaning = FASTENERS["push rivet"]
    assert FirstUse().said(["7 × Push rivet"], ("Push rivet", meaning)) == [("Push rivet", meaning)]


def test_another_order_explains_its_words_again_and_what_a_line_means_stands_once_a_page() -> None:
    told = FirstUse()
    both = [("bezel", PIECES["bezel"]), ("unplug", LINES["unplug"])]
    assert told.said(["bezel", "Unplug"]) == both
    told.begin()
    assert told.said(["bezel", "Unplug"]) == both[:1]


def test_once_is_once() -> None:
    told = FirstUse()
    assert [told.once("a"), told.once("b"), told.once("a")] == [True, True, False]
