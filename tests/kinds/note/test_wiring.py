from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.note.wiring import Aerial, CavityReading, Channel, SoundSeen, SupplyFound
from bezelbook.kinds.record import Part
from bezelbook.values.words import CIRCUITS

CAVITY = {"cavity": 4, "carries": "constant"}


def test_a_cavity_carries_a_circuit_or_whatever_somebody_calls_it() -> None:
    assert CavityReading.model_validate(CAVITY).carries == "constant"
    assert CavityReading.model_validate({**CAVITY, "carries": "something at 6 V"}).carries == "something at 6 V"


def test_an_editor_offers_the_circuits() -> None:
    assert set(CIRCUITS) < set(CavityReading.model_json_schema()["properties"]["carries"]["examples"])


def test_a_reading_without_the_key_s_place_proves_no_accessory_so_it_can_be_said() -> None:
    reading = CavityReading.model_validate({**CAVITY, "volts": "12.4 V", "key": "out", "asleep": "asleep"})
    assert (reading.key, reading.asleep) == ("out", "asleep")


def test_nothing_has_to_be_seen_or_found() -> None:
    assert not any(SupplyFound().model_dump().values())
    assert not any(SoundSeen().model_dump().values())
    assert not any(Aerial().model_dump().values())


@pytest.mark.parametrize("word", ["wire", "data bus", "both", "not looked", "not there"])
def test_how_accessory_comes_may_be_unknown_in_so_many_words(word: str) -> None:
    assert SupplyFound.model_validate({"accessory_supply": word}).accessory_supply == word


@pytest.mark.parametrize(
    ("piece", "wrong"),
    [
        (CavityReading, {"cavity": 4}),
        (CavityReading, {**CAVITY, "cavity": 0}),
        (CavityReading, {**CAVITY, "cavity": 201}),
        (CavityReading, {**CAVITY, "volts": 12.4}),
        (CavityReading, {**CAVITY, "ohms": "3.4 V"}),
        (CavityReading, {**CAVITY, "key": "in"}),
        (CavityReading, {**CAVITY, "sure": "certain"}),
        (Channel, {"band": "low"}),
        (Channel, {"channel": "one", "band": "bass"}),
        (Channel, {"channel": "one", "feeds": ["Left door"]}),
        (SupplyFound, {"accessory_supply": "red wire"}),
        (SupplyFound, {"bus_sleep": 9}),
        (SupplyFound, {"rest_current": "18"}),
        (Aerial, {"amplified": True}),
        (SoundSeen, {"amplifier": "yes"}),
        (SoundSeen, {"sound_paths": ["music"]}),
        (SoundSeen, {"populated": "14"}),
    ],
)
def test_a_piece_says_which_value_it_does_not_take(piece: type[Part], wrong: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        piece.model_validate(wrong)
