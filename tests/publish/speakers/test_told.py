"""What the browser is told of places for speakers."""

from pathlib import Path

import pytest

from bezelbook.pipeline import knowledge_of
from bezelbook.publish.speakers.place import Places, places_for_speakers
from bezelbook.publish.speakers.told import speakers_told
from bezelbook.publish.telling import Telling


@pytest.fixture(scope="module")
def places(books: Path) -> Places:
    return places_for_speakers(knowledge_of(books / "doors").book)


def test_a_place_tells_its_states_its_answers_and_what_is_known(places: Places) -> None:
    book = places[("compact-hatch-2", "front-door-left")].book
    told = speakers_told(Telling(book), "compact-hatch-2", places)
    left = told["places"]["front-door-left"]
    assert told["answers"][left["states"]["|||"][0]][0] == "goes in if"
    assert "measured: cut-out 151 ± 0.5 mm by caliper" in left["known"]
