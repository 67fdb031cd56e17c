"""The states whose answers are published are the ways of fitting that a place knows."""

from pathlib import Path

import pytest

from bezelbook.pipeline import knowledge_of
from bezelbook.publish.speakers.place import Places, places_for_speakers
from bezelbook.publish.speakers.state import State, states_of


@pytest.fixture(scope="module")
def places(books: Path) -> Places:
    return places_for_speakers(knowledge_of(books / "doors").book)


def test_every_ring_is_a_state_and_the_glass_up_where_no_mount_is_named(places: Places) -> None:
    keys = [state.key for state in states_of(places[("compact-hatch-2", "front-door-left")])]
    assert keys[:4] == ["|||", "|||up", "|none||", "|none||up"]
    assert "|ten-ring||" in keys


def test_where_no_note_stands_there_is_only_the_open_question(places: Places) -> None:
    assert states_of(places[("compact-hatch-2", "front-door-right")]) == (State(),)
