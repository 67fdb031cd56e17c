from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.module.record import Module

LEAST = {"id": "bus-box", "name": "Bus box", "module_kind": "data"}


def module(**fields: Any) -> Module:
    return Module.model_validate({**LEAST, **fields})


def test_a_name_and_what_sort_of_module_are_enough() -> None:
    box = module()
    assert not any([box.outputs, box.keeps, box.needs_adapter, box.programming])


@pytest.mark.parametrize("missing", ["name", "module_kind"])
def test_neither_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Module.model_validate({field: value for field, value in LEAST.items() if field != missing})


@pytest.mark.parametrize("field", ["firmware", "stowed", "settings_as_fitted"])
def test_how_it_was_left_in_a_car_is_written_back_and_no_part_of_its_record(field: str) -> None:
    with pytest.raises(ValidationError, match="extra"):
        module(**{field: "behind the glovebox"})


def test_each_output_says_how_much_it_gives() -> None:
    outputs = module(outputs={"accessory": {"volts": "12 V", "most": "2 A"}, "speed": {}}).outputs
    assert outputs["accessory"].most is not None
    assert (outputs["accessory"].most.base, outputs["speed"].most) == (2_000_000, None)


def test_what_it_keeps_is_said_function_by_function() -> None:
    keeps = module(keeps={"wheel buttons": "kept", "menus": "partly", "camera": "not looked"}).keeps
    assert keeps == {"wheel buttons": "kept", "menus": "partly", "camera": "not looked"}


def test_programming_takes_time_or_is_not_needed() -> None:
    assert module(programming="not needed").programming == "not needed"
    quick = module(programming="15 min", keep_alive="45 s")
    assert not isinstance(quick.keep_alive, str)
    assert quick.keep_alive is not None
    assert quick.keep_alive.base == 45


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("module_kind", "canbus"),
        ("made_for", [{"place": "dash-centre"}]),
        ("needs_adapter", "late-t"),
        ("needs", ["power"]),
        ("outputs", {"power": {"most": "2 A"}}),
        ("outputs", {"accessory": {"most": 2}}),
        ("keeps", {"everything": "kept"}),
        ("keeps", {"chimes": True}),
        ("settings", [{"name": "switch 1"}]),
        ("programming", 15),
        ("ends_on_door", "yes"),
        ("network", "canbus"),
        ("volume", "12 V"),
        ("sleep_current", "3"),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        module(**{field: wrong})
