"""A number is read exactly, however a shop writes it."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.values.number import NOT_NOTHING, fraction_pattern, number_pattern, read_number

ALL = (2, 4, 8, 16, 32, 64)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("165", Fraction(165)),
        ("007", Fraction(7)),
        ("6.5", Fraction(13, 2)),
        ("6,5", Fraction(13, 2)),
        (".5", Fraction(1, 2)),
        (",5", Fraction(1, 2)),
        ("1 000", Fraction(1000)),
        ("1 000,25", Fraction(4001, 4)),
        ("1.000,5", Fraction(2001, 2)),
        ("1,000.5", Fraction(2001, 2)),
        ("1.000", Fraction(1)),
        ("6 1/2", Fraction(13, 2)),
        ("6-1/2", Fraction(13, 2)),
        ("10/16", Fraction(5, 8)),
        ("6½", Fraction(13, 2)),
        ("½", Fraction(1, 2)),
    ],
)
def test_a_number_has_its_exact_value(text: str, value: Fraction) -> None:
    assert re.fullmatch(number_pattern(4, ALL), text)
    assert read_number(text) == value


@pytest.mark.parametrize("text", ["1,000", "1.2.3", "5.", "12345678", "1/3", "4/4", "0/2", "1 0000", "", "1.00000"])
def test_what_is_not_one_number_does_not_match(text: str) -> None:
    assert not re.fullmatch(number_pattern(4, ALL), text)


@pytest.mark.parametrize(("decimals", "fits", "over"), [(0, "5", "5.1"), (1, "5.1", "5.12"), (3, "0,125", "0.1234")])
def test_decimals_end_where_exactness_does(decimals: int, fits: str, over: str) -> None:
    expression = number_pattern(decimals, ())
    assert re.fullmatch(expression, fits)
    assert not re.fullmatch(expression, over)


def test_fractions_end_where_exactness_does() -> None:
    expression = number_pattern(1, (2, 4))
    assert re.fullmatch(expression, "3/4")
    assert re.fullmatch(expression, "¾")
    assert not re.fullmatch(expression, "1/8")
    assert not re.fullmatch(expression, "⅛")
    assert not re.fullmatch(number_pattern(1, ()), "1/2")


@given(st.integers(0, 99), st.sampled_from(ALL), st.data())
def test_every_proper_fraction_is_one_of_a_rule(whole: int, under: int, data: st.DataObject) -> None:
    over = data.draw(st.integers(1, under - 1))
    text = f"{whole} {over}/{under}"
    assert re.fullmatch(fraction_pattern(ALL), text)
    assert read_number(text) == whole + Fraction(over, under)


@given(st.integers(0, 200), st.integers(0, 200))
def test_no_fraction_of_one_or_more_is_one_of_a_rule(over: int, under: int) -> None:
    matches = re.fullmatch(fraction_pattern(ALL), f"{over}/{under}") is not None
    assert matches == (under in ALL and 0 < over < under)


@pytest.mark.parametrize(
    ("text", "more"), [("0", False), ("0.00", False), ("0.01", True), ("0 1/2", True), ("½", True)]
)
def test_nothing_is_told_from_something(text: str, more: bool) -> None:  # noqa: FBT001
    assert bool(re.match(NOT_NOTHING, f"{text} mm")) == more
