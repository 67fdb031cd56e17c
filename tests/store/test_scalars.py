"""A plain scalar means what the core schema of YAML 1.2 says, and nothing that 1.1 would add."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.store.scalars import resolve


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("", None),
        ("~", None),
        ("NULL", None),
        ("true", True),
        ("FALSE", False),
        ("12", 12),
        ("-12", -12),
        ("+12", 12),
        ("0o14", 12),
        ("0xfF", 255),
        ("1.", 1.0),
        ("-.5e-2", -0.005),
        ("- 5", "- 5"),
        (".", "."),
        ("-", "-"),
        ("...", "..."),
        ("0x", "0x"),
        ("0o8", "0o8"),
        ("-0x1F", "-0x1F"),
        ("1e", "1e"),
        ("tRue", "tRue"),
        ("١٢", "١٢"),
    ],
)
def test_a_word_means_what_the_core_schema_says(text: str, value: object) -> None:
    assert resolve(text) == value
    assert type(resolve(text)) is type(value)


@pytest.mark.parametrize("text", [".inf", "+.Inf", "-.INF", "1e999", "9" * 5000])
def test_what_is_too_large_to_hold_is_infinite(text: str) -> None:
    value = resolve(text)
    assert isinstance(value, float)
    assert math.isinf(value)
    assert (value < 0) == text.startswith("-")


@pytest.mark.parametrize("text", [".nan", ".NaN", ".NAN"])
def test_not_a_number_is_not_one(text: str) -> None:
    value = resolve(text)
    assert isinstance(value, float)
    assert math.isnan(value)


@given(st.integers(-(10**30), 10**30))
def test_every_integer_is_read_back(number: int) -> None:
    assert resolve(str(number)) == number


@given(st.floats(allow_nan=False, allow_infinity=False))
def test_every_float_is_read_back(number: float) -> None:
    assert resolve(repr(number)) == number


@given(st.text(min_size=1).filter(lambda text: text[0] not in "0123456789+-.~tTfFnN"))
def test_other_text_is_text(text: str) -> None:
    assert resolve(text) is text
