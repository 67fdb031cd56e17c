from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.note.speaker_place import BoltHoles, FactorySpeaker, FilterSeen, SideRuled, SpeakerPlaceSeen
from bezelbook.kinds.record import Part


def test_nothing_has_to_be_seen() -> None:
    assert not any(SpeakerPlaceSeen().model_dump().values())
    assert not any(FactorySpeaker().model_dump().values())
    assert SideRuled().other_side is None


def test_assumed_is_not_measured() -> None:
    assumed, measured = (SideRuled.model_validate({"other_side": f"{how} the same"}) for how in ("assumed", "measured"))
    assert assumed != measured


def test_no_filter_and_no_look_at_one_are_two_things() -> None:
    assert FactorySpeaker().filter is None
    assert FactorySpeaker.model_validate({"filter": "not there"}).filter == "not there"


def test_a_filter_has_a_place_of_its_own() -> None:
    found = FactorySpeaker.model_validate({"filter": {"capacitor": "10 µF", "where": "in the lead"}}).filter
    assert isinstance(found, FilterSeen)
    assert found.capacitor is not None
    assert (found.capacitor.base, found.where) == (10_000_000, "in the lead")


def test_speakers_that_share_a_channel_are_named_by_place() -> None:
    both = FactorySpeaker.model_validate({"driven_by": "factory amplifier", "together_with": ["mirror-left"]})
    assert both.together_with == ("mirror-left",)


@pytest.mark.parametrize(
    ("piece", "wrong"),
    [
        (BoltHoles, {"kind": "screws"}),
        (BoltHoles, {"first": 1}),
        (BoltHoles, {"circle": "156 mm"}),
        (FactorySpeaker, {"impedance": 2}),
        (FactorySpeaker, {"filter": "none"}),
        (FactorySpeaker, {"driven_by": "amp"}),
        (FactorySpeaker, {"together_with": ["Mirror left"]}),
        (SpeakerPlaceSeen, {"own_mesh": "yes"}),
        (SideRuled, {"other_side": "same"}),
    ],
)
def test_a_piece_says_which_value_it_does_not_take(piece: type[Part], wrong: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        piece.model_validate(wrong)
