"""A wire's size is a gauge number or an area of copper, and a number alone is neither."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from bezelbook.values.wire_size import WIRE_PATTERN, WireSize, is_wire_size, wire_complaint

WIRES = TypeAdapter(WireSize)


@pytest.mark.parametrize("text", ["4 AWG", "4AWG", "1/0 AWG", "18 AWG", "40 AWG", "21 mm2", "0.75 mm²", "2.5 mm2"])
def test_a_gauge_and_an_area_are_sizes(text: str) -> None:
    assert is_wire_size(text)
    assert wire_complaint(text) is None


@pytest.mark.parametrize("text", ["4", "5/0 AWG", "0/0 AWG", "41 AWG", "4 mm", "4 AWG\n", "-2 mm2", ""])
def test_nothing_else_is(text: str) -> None:
    assert not is_wire_size(text)
    assert wire_complaint(text)


@given(st.text(max_size=12) | st.from_regex(r"[0-9]{1,3}(/0|\.[0-9]{1,4})? ?(AWG|mm2)\n?", fullmatch=True))
def test_the_pattern_and_the_model_agree(text: str) -> None:
    try:
        WIRES.validate_python(text)
        read = True
    except ValidationError:
        read = False
    assert read == (re.search(WIRE_PATTERN, text) is not None)


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("4", "Write 4 AWG or 4 mm2"),
        ("4 ga", "Write 4 AWG"),
        ("8 gauge", "Write 8 AWG"),
        ("1/0", "Write 1/0 AWG"),
        ("2,5 mm²", "Write 2.5 mm2"),
        ("16 sq mm", "Write 16 mm2"),
        ("4 mm", "Write 4 AWG or 21 mm2"),
        ("thick", "Write 4 AWG or 21 mm2"),
    ],
)
def test_another_way_to_say_it_gets_what_it_may_mean(text: str, mend: str) -> None:
    wrong = wire_complaint(text)
    assert wrong
    assert (wrong.what, wrong.mend) == (f'"{text}" is not the size of a wire', mend)


@pytest.mark.parametrize(
    ("value", "said"), [(4, "4 AWG or 4 mm2"), (2.5, "2.5 mm2"), (True, "valid string"), (None, "valid string")]
)
def test_a_bare_number_is_refused_with_its_readings(value: object, said: str) -> None:
    with pytest.raises(ValidationError, match=said):
        WIRES.validate_python(value)


def test_the_schema_holds_the_pattern() -> None:
    assert WIRES.json_schema() == {"type": "string", "pattern": WIRE_PATTERN}
