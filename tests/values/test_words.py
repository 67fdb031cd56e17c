"""The word lists are the trade's, in the order in which people say them."""

from typing import get_args

import pytest

from bezelbook.values import words


def test_the_words_are_those_of_the_shop() -> None:
    assert words.VERDICTS == ("goes in", "goes in if", "does not", "not tried")
    assert (
        *("goes in", "goes in if", "too close", "does not", "nobody has tried", "argued over"),
    ) == words.ANSWER_VERDICTS
    assert words.SURENESSES == ("fitted", "dry-fitted", "measured", "eyeballed", "told", "worked out")
    assert words.STRONG == ("fitted", "dry-fitted", "measured")
    assert words.SIDES == ("left", "right", "centre")
    assert words.WEIGHTS == ("stop", "look first", "tidy up")
    assert words.UNKNOWNS == ("not looked", "not there", "not needed", "does not apply")
    assert len(words.DATUMS) == 6


def test_the_ninths_cover_three_by_three() -> None:
    assert len(words.NINTHS) == len(set(words.NINTHS)) == 9


def test_every_speaker_lead_is_a_circuit_by_end_side_and_sign() -> None:
    leads = {f"{side} {end} {sign}" for side in ("left", "right") for end in ("front", "rear") for sign in "+-"}
    assert leads < set(words.CIRCUITS)


@pytest.mark.parametrize(
    ("listed", "type_"),
    [
        (words.VERDICTS, words.Verdict),
        (words.ANSWER_VERDICTS, words.AnswerVerdict),
        (words.SURENESSES, words.Sureness),
        (words.SIDES, words.Side),
        (words.NINTHS, words.Ninth),
        (words.DATUMS, words.Datum),
        (words.WEIGHTS, words.Weight),
        (words.UNKNOWNS, words.Unknown),
        (words.SAFETIES, words.Safety),
        (words.PLUG_SIDES, words.PlugSide),
        (words.PLUG_VIEWS, words.PlugView),
        (words.EDGES, words.Edge),
        (words.CIRCUITS, words.Circuit),
        (words.FUNCTIONS, words.Function),
    ],
)
def test_each_list_says_what_its_type_says(listed: tuple[str, ...], type_: object) -> None:
    assert listed == get_args(type_)
