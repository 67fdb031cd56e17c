from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.vehicle.record import Vehicle

LEAST = {
    "id": "compact-hatch-2",
    "name": "Compact hatch",
    "vehicle_class": "compact hatch",
    "generation": 2,
    "model_years": 6,
}
OPENING = {"kind": "plain opening", "side": "centre"}


def vehicle(**fields: Any) -> Vehicle:
    return Vehicle.model_validate({**LEAST, **fields})


def test_a_class_a_generation_and_its_years_are_enough() -> None:
    hatch = vehicle()
    assert (hatch.splits, hatch.places, hatch.never_built, hatch.supply) == ({}, {}, (), None)


@pytest.mark.parametrize("missing", ["name", "vehicle_class", "generation", "model_years"])
def test_none_of_them_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Vehicle.model_validate({field: value for field, value in LEAST.items() if field != missing})


def test_a_split_may_lack_every_tell_and_bears_on_everything_until_somebody_says() -> None:
    split = vehicle(splits={"build": {"values": {"early": {}, "late": {}}}}).splits["build"]
    assert [value.tell for value in split.values.values()] == [None, None]
    assert (split.bears_on.places, split.bears_on.subjects) == ((), ())


def test_a_split_has_values() -> None:
    with pytest.raises(ValidationError, match="values"):
        vehicle(splits={"build": {"values": {}}})


@pytest.mark.parametrize("year", [0, 41, 1.5, "3"])
def test_a_model_year_is_counted_from_one(year: object) -> None:
    with pytest.raises(ValidationError, match="years"):
        vehicle(splits={"build": {"values": {"late": {"years": [year]}}}})


def test_a_place_has_a_kind_and_a_side_and_may_lack_a_name() -> None:
    place = vehicle(places={"dash-centre": OPENING}).places["dash-centre"]
    assert (place.kind, place.side, place.name, place.safety) == ("plain opening", "centre", None, None)


@pytest.mark.parametrize(
    ("field", "value"), [("kind", "hole"), ("side", "driver"), ("side", None), ("safety", "airbag")]
)
def test_a_place_uses_the_words_of_the_trade(field: str, value: object) -> None:
    with pytest.raises(ValidationError, match=field):
        vehicle(places={"dash-centre": {**OPENING, field: value}})


@pytest.mark.parametrize(
    "field",
    [
        "accessory_supply",
        "bus_sleep",
        "aerials",
        "sound_paths",
        "battery",
        "ground_points",
        "amplifier",
        "rest_current",
    ],
)
def test_a_vehicle_holds_nothing_seen_or_metered_in_a_car(field: str) -> None:
    with pytest.raises(ValidationError, match="extra"):
        vehicle(**{field: "wire"})


def test_a_split_may_say_what_sort_of_difference_it_is() -> None:
    axis: dict[str, Any] = {"values": {"left": {}, "right": {}}}
    assert vehicle(splits={"hand": axis}).splits["hand"].differs_in is None
    assert vehicle(splits={"hand": {**axis, "differs_in": "hand"}}).splits["hand"].differs_in == "hand"
    with pytest.raises(ValidationError, match="differs_in"):
        vehicle(splits={"hand": {**axis, "differs_in": "steering"}})


def test_a_place_may_name_its_other_side() -> None:
    assert vehicle(places={"door-left": {**OPENING, "other_side": "door-right"}}).places["door-left"].other_side


@pytest.mark.parametrize("field", ["depth", "width", "cut_out", "plug"])
def test_a_place_holds_nothing_measured_or_seen_in_a_car(field: str) -> None:
    with pytest.raises(ValidationError, match="extra"):
        vehicle(places={"dash-centre": {**OPENING, field: "205 mm"}})


@pytest.mark.parametrize("part", ["splits", "places", "trim"])
def test_splits_places_and_pieces_are_named_by_lower_case_words(part: str) -> None:
    with pytest.raises(ValidationError, match=part):
        vehicle(**{part: {"Dash Centre": {}}})


def test_a_piece_of_trim_may_be_a_name_alone() -> None:
    assert vehicle(trim={"upper-strip": {}}).trim["upper-strip"].safety is None


def test_a_combination_never_built_names_values_by_split() -> None:
    never = vehicle(never_built=[{"display": "wide", "audio": "base"}]).never_built
    assert never == ({"display": "wide", "audio": "base"},)
