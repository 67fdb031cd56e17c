from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.speaker.record import Speaker

LEAST = {"id": "shallow-six", "name": "Shallow six", "speaker_kind": "coaxial", "nominal": "6 1/2 in"}


def speaker(**fields: Any) -> Speaker:
    return Speaker.model_validate({**LEAST, **fields})


def test_a_name_a_sort_and_what_it_is_sold_as_are_enough() -> None:
    six = speaker()
    assert (six.mounting_depth, six.cut_out, six.bolts, six.impedance) == (None, None, None, None)


@pytest.mark.parametrize("missing", ["name", "speaker_kind", "nominal"])
def test_none_of_them_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Speaker.model_validate({field: value for field, value in LEAST.items() if field != missing})


@pytest.mark.parametrize("nominal", ["6 1/2 in", "6.5", "6 x 9", "one inch dome"])
def test_the_size_it_is_sold_as_is_a_name_and_no_length(nominal: str) -> None:
    assert speaker(nominal=nominal).nominal == nominal


def test_its_depth_keeps_how_it_was_read_and_how_well() -> None:
    depth = speaker(mounting_depth="48.5 ± 0.2 mm caliper").mounting_depth
    assert depth is not None
    assert (depth.base, depth.give, depth.by) == (48_500_000, 200_000, "caliper")


def test_slots_reach_from_one_bolt_circle_to_another() -> None:
    bolts = speaker(bolts={"count": 4, "circle_least": "153 mm caliper", "circle_most": "158 mm caliper"}).bolts
    assert bolts is not None
    assert bolts.circle_least is not None
    assert bolts.circle_most is not None
    assert bolts.circle_least.base < bolts.circle_most.base


def test_no_filter_needed_is_something_that_somebody_knows() -> None:
    assert speaker().filter_needed is None
    assert speaker(filter_needed="not needed").filter_needed == "not needed"


def test_nominal_impedance_and_the_meter_are_two_numbers() -> None:
    four = speaker(impedance="4 ohm", dc_resistance="3.4 ohm")
    assert four.impedance != four.dc_resistance


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("speaker_kind", "coax"),
        ("nominal", 6.5),
        ("shape", "circle"),
        ("mounting_depth", 48.5),
        ("mounting_depth", "48.5 ohm"),
        ("cut_out", "flush"),
        ("flat", "12"),
        ("magnet_shape", "big"),
        ("bolts", {"count": 4, "circle": 156}),
        ("bolts", {"first": "top"}),
        ("terminals", {"at": 6}),
        ("impedance", "4 W"),
        ("voice_coils", 0),
        ("power", "60"),
        ("sensitivity", "90"),
        ("filter_needed", "none"),
        ("filter_supplied", {"capacitor": "4.7 mm"}),
        ("filter_supplied", {"order": 0}),
        ("filter_supplied", {"corner": "8.5"}),
        ("mesh", True),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        speaker(**{field: wrong})
