"""Answers about typed sizes as the browser is told them."""

from pathlib import Path

import pytest

from bezelbook.pipeline import knowledge_of
from bezelbook.publish.speakers.place import Places, places_for_speakers
from bezelbook.publish.speakers.state import State
from bezelbook.publish.speakers.typed import typed_told


@pytest.fixture(scope="module")
def places(books: Path) -> Places:
    return places_for_speakers(knowledge_of(books / "doors").book)


def test_every_size_is_told_without_a_mount_and_only_the_depth_with_one(places: Places) -> None:
    left = places[("compact-hatch-2", "front-door-left")]
    assert set(typed_told(left, State(), lambda _: 0)) == {"mounting_depth", "cut_out", "basket", "front_height"}
    assert set(typed_told(left, State((), ("ten-ring",)), lambda _: 0)) == {"mounting_depth"}
    assert typed_told(left, State(glass="up"), lambda _: 0) == {}
