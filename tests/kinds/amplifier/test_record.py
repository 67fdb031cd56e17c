from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.amplifier.record import Amplifier

LEAST = {"id": "small-four", "name": "Small four", "origin": "added"}


def amplifier(**fields: Any) -> Amplifier:
    return Amplifier.model_validate({**LEAST, **fields})


def test_a_name_and_where_it_comes_from_are_enough() -> None:
    four = amplifier()
    assert (four.channels, four.power, four.least_load, four.inputs) == (None, (), None, ())


@pytest.mark.parametrize("missing", ["name", "origin"])
def test_neither_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Amplifier.model_validate({field: value for field, value in LEAST.items() if field != missing})


@pytest.mark.parametrize("field", ["place", "vehicle", "channel_map", "level", "gain"])
def test_where_one_sits_and_how_it_was_set_is_seen_on_a_car(field: str) -> None:
    with pytest.raises(ValidationError, match="extra"):
        amplifier(**{field: "under the seat"})


def test_power_goes_with_the_load_it_was_given_into() -> None:
    gives = amplifier(power=[{"watts": "75 W", "load": "4 ohm", "volts": "13.8 V"}]).power[0]
    assert (gives.watts.base, gives.load.base) == (75_000_000, 4_000_000)


def test_the_lowest_load_single_and_bridged_are_two_numbers() -> None:
    four = amplifier(least_load="2 ohm", least_load_bridged="4 ohm")
    assert four.least_load != four.least_load_bridged
    assert amplifier(least_load_bridged="does not apply").least_load_bridged == "does not apply"


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("origin", "bought"),
        ("length", 208),
        ("plugs_leave", ["left"]),
        ("plugs", ["White 20"]),
        ("channels", "4"),
        ("power", [{"watts": "75 W"}]),
        ("power", [{"watts": "75 V", "load": "4 ohm"}]),
        ("least_load", "2"),
        ("amplifier_class", "D"),
        ("inputs", [{"most": "16 V"}]),
        ("inputs", [{"level": "speaker"}]),
        ("inputs", [{"level": "high", "wakes": True}]),
        ("fuses", "60"),
        ("largest_wire", "4 mm"),
        ("largest_wire", 4),
        ("network", "fibre"),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        amplifier(**{field: wrong})
