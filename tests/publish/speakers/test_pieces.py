"""Answers about a typed depth change where the trade's doors say that they do (trade.md 4.4 and 13)."""

from pathlib import Path

import pytest

from bezelbook.pipeline import knowledge_of
from bezelbook.publish.speakers.pieces import pieces
from bezelbook.publish.speakers.place import Places, places_for_speakers
from bezelbook.publish.speakers.state import State


@pytest.fixture(scope="module")
def places(books: Path) -> Places:
    return places_for_speakers(knowledge_of(books / "doors").book)


def test_a_depth_goes_in_up_to_what_the_house_wants_less_than_the_glass(places: Places) -> None:
    """58 ± 1 mm to the glass, 5 wanted: by the middles 53 goes in; 59 and more never does."""
    left = places[("compact-hatch-2", "front-door-left")]
    found = list(pieces(left, State((), ()), "mounting_depth"))
    assert [(one.answer.verdict, one.high) for one in found][:1] == [("goes in", 53_000_000)]
    never = [one for one in found if one.answer.verdict == "does not"]
    assert never[0].low == 59_000_000
