from typing import Any, get_args

import pytest
from pydantic import ValidationError

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.circuits import Does
from bezelbook.values.words import CIRCUITS

LEAST = {"id": "late-t", "name": "The T", "adapter_kind": "T"}


def adapter(**fields: Any) -> Adapter:
    return Adapter.model_validate({**LEAST, **fields})


def test_a_name_and_what_sort_of_adapter_are_enough() -> None:
    late = adapter()
    assert (late.ends, late.circuits, late.loop_backs, late.fuse, late.needs_module) == ({}, {}, (), None, None)


@pytest.mark.parametrize("missing", ["name", "adapter_kind"])
def test_neither_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Adapter.model_validate({field: value for field, value in LEAST.items() if field != missing})


@pytest.mark.parametrize("does", get_args(Does))
def test_every_circuit_can_be_said_in_one_word(does: str) -> None:
    circuits = adapter(circuits=dict.fromkeys(CIRCUITS, does)).circuits
    assert {way.does for way in circuits.values()} == {does}
    assert set(circuits) == set(CIRCUITS)


def test_one_word_and_the_same_word_as_a_field_say_the_same() -> None:
    assert adapter(circuits={"constant": "passes"}) == adapter(circuits={"constant": {"does": "passes"}})


def test_a_circuit_left_out_was_not_looked_at_and_one_not_there_was() -> None:
    circuits = adapter(circuits={"accessory": "not there"}).circuits
    assert circuits["accessory"].does == "not there"
    assert "illumination" not in circuits


def test_a_circuit_that_is_cut_open_comes_out_by_ends() -> None:
    way = adapter(circuits={"left front +": {"does": "broken out", "out_at": {"a": "d", "b": "c"}}}).circuits
    assert way["left front +"].out_at == {"a": "d", "b": "c"}


def test_each_end_says_which_half_it_is() -> None:
    ends = adapter(
        ends={
            "a": {"connector": "square-24", "side": "unit side"},
            "b": {"connector": "square-24", "side": "vehicle side"},
            "c": {"ends_in": "bare leads"},
        }
    ).ends
    assert [end.side for end in ends.values()] == ["unit side", "vehicle side", None]


@pytest.mark.parametrize("module", ["not needed", "not looked", ["bus-box"]])
def test_it_needs_modules_by_name_or_none_and_then_says_so(module: object) -> None:
    assert adapter(needs_module=module).needs_module == (tuple(module) if isinstance(module, list) else module)


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("adapter_kind", "harness"),
        ("ends", [{"connector": "square-24"}]),
        ("ends", {"A": {"connector": "square-24"}}),
        ("ends", {"a": {"connector": "the square one"}}),
        ("ends", {"a": {"side": "female"}}),
        ("circuits", {"red": "passes"}),
        ("circuits", {"constant": "yes"}),
        ("circuits", {"constant": None}),
        ("circuits", {"constant": {}}),
        ("circuits", {"constant": {"does": "passes", "cavities": {"a": 0}}}),
        ("circuits", {"constant": {"does": "passes", "amps": 10}}),
        ("loop_backs", [{"how": "supplied"}]),
        ("loop_backs", [{"closes": [], "how": "supplied"}]),
        ("loop_backs", [{"closes": ["left front"], "how": "supplied"}]),
        ("fuse", "none"),
        ("length", "18"),
        ("needs_module", "bus-box"),
        ("made_for", [{"vehicle": "Compact hatch"}]),
        ("looks_like", [{"adapter": "early-t"}]),
        ("resistor", {"rated": "10 W"}),
        ("signal", "balanced"),
        ("supply", "6"),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        adapter(**{field: wrong})
