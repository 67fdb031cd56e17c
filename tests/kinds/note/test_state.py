from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.note.state import Clips, Sizes, State

LEAST = {"vehicle": "compact-hatch-2", "place": "dash-centre"}


def state(**fields: Any) -> State:
    return State.model_validate({**LEAST, **fields})


def test_a_vehicle_and_a_place_are_enough_and_the_rest_is_not_looked() -> None:
    seen = state()
    assert (seen.year, seen.splits) == (None, {})
    assert [seen.mounts, seen.plugs, seen.loom, seen.glass, seen.tabs, seen.cut] == [None] * 6


@pytest.mark.parametrize("missing", ["vehicle", "place"])
def test_neither_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        State.model_validate({field: value for field, value in LEAST.items() if field != missing})


def test_no_mount_and_no_word_of_a_mount_are_two_things() -> None:
    assert state(mounts="none").mounts == "none"
    assert state().mounts is None


def test_mounts_keep_their_order() -> None:
    assert state(mounts=["flush-kit", "the usual spacer"]).mounts == ("flush-kit", "the usual spacer")


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("mounts", "flush-kit"),
        ("plugs", True),
        ("loom", "somewhere"),
        ("glass", "half"),
        ("tabs", False),
        ("cut", False),
        ("year", 0),
        ("year", 2021),
        ("splits", {"build": 2}),
        ("splits", {"Build": "late"}),
        ("vehicle", "Compact hatch"),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        state(**{field: wrong})


def test_sizes_in_a_note_may_be_as_few_as_its_author_had() -> None:
    sizes = Sizes.model_validate({"depth": "6 1/2 in"})
    assert sizes.depth is not None
    assert sizes.depth.base == 165_100_000
    assert sizes.plug_and_bend is None


@pytest.mark.parametrize("lost", [-1, 1000, 0.5])
def test_clips_are_counted_whole(lost: float) -> None:
    with pytest.raises(ValidationError, match="lost"):
        Clips.model_validate({"kind": "white sail clip", "handled": 14, "lost": lost})


def test_clips_have_a_type() -> None:
    with pytest.raises(ValidationError, match="kind"):
        Clips.model_validate({"handled": 14, "lost": 2})


def test_a_speaker_without_a_record_has_sizes_too() -> None:
    sizes = Sizes.model_validate({"mounting_depth": "63 mm caliper", "bolt_circle": "156 mm", "bolt_count": 4})
    assert sizes.mounting_depth is not None
    assert (sizes.mounting_depth.base, sizes.bolt_count) == (63_000_000, 4)
