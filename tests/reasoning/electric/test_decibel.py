from decimal import Decimal, localcontext
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.electric.decibel import power_change, tenths_of_a_decibel


# Trade 4.7: 10·log10(2/4), three decibels less.
def test_four_ohm_in_place_of_two_is_three_decibels_less() -> None:
    assert power_change(Fraction(2), Fraction(4)) == "3.0 dB less at the same setting"
    assert power_change(Fraction(4), Fraction(2)) == "3.0 dB more at the same setting"
    # 10·log10(1.023) is 0.0988.
    assert power_change(Fraction(1023), Fraction(1000)) == "0.1 dB more at the same setting"
    assert power_change(Fraction(1000), Fraction(1023)) == "0.1 dB less at the same setting"


def test_the_same_load_is_the_same_power() -> None:
    assert power_change(Fraction(4), Fraction(4)) == "the same power at the same setting"
    assert power_change(Fraction(400), Fraction(401)) == "the same power at the same setting"


@pytest.mark.parametrize(("ratio", "tenths"), [(10, 100), (100, 200), (Fraction(1, 1000), -300), (8, 90), (1, 0)])
def test_ten_times_the_power_is_ten_decibels(ratio: Fraction | int, tenths: int) -> None:
    assert tenths_of_a_decibel(Fraction(ratio)) == tenths


@given(st.fractions(Fraction(1, 10**4), 10**4, max_denominator=10**4))
def test_it_is_the_logarithm_that_the_decimal_library_works_out(ratio: Fraction) -> None:
    with localcontext(prec=40):
        exact = 100 * (Decimal(ratio.numerator) / Decimal(ratio.denominator)).log10()
    assert abs(exact - tenths_of_a_decibel(ratio)) <= Decimal("0.5")


@given(st.integers(1, 64), st.integers(1, 64))
def test_what_one_change_takes_the_change_back_gives(one: int, other: int) -> None:
    assert tenths_of_a_decibel(Fraction(one, other)) == -tenths_of_a_decibel(Fraction(other, one))
