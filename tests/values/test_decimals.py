from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.values.decimals import decimals, exact_or_about


@pytest.mark.parametrize(
    ("number", "places", "shown"),
    [
        (Fraction(8, 3), 2, "2.67"),
        (Fraction(4), 2, "4"),
        (Fraction(400), 0, "400"),
        (Fraction(400), 2, "400"),
        (Fraction(5, 2), 0, "2"),
        (Fraction(7, 2), 0, "4"),
        (Fraction(-8, 3), 1, "-2.7"),
        (Fraction(1, 1000), 2, "0"),
    ],
)
def test_a_number_is_rounded_once_and_ends_in_no_idle_zeros(number: Fraction, places: int, shown: str) -> None:
    assert decimals(number, places) == shown


def test_what_the_places_do_not_hold_is_said_to_be_about() -> None:
    assert exact_or_about(Fraction(8, 3), 2, "ohm") == "about 2.67 ohm"
    assert exact_or_about(Fraction(5, 2), 2, "ohm") == "2.5 ohm"


@given(st.decimals(-(10**6), 10**6, places=5), st.integers(0, 4))
def test_it_rounds_as_the_decimal_library_does(number: Decimal, places: int) -> None:
    expected = number.quantize(Decimal(1).scaleb(-places), ROUND_HALF_EVEN)
    assert Decimal(decimals(Fraction(number), places)) == expected
