from decimal import Decimal
from fractions import Fraction

import pytest
import scipy.stats
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.agreement.chi_square import chance_of_wider


@given(st.fractions(0, 60, max_denominator=1000), st.integers(1, 40))
def test_it_is_what_a_statistics_library_says(chi_square: Fraction, freedom: int) -> None:
    library = scipy.stats.chi2.sf(float(chi_square), freedom)
    assert float(chance_of_wider(chi_square, freedom)) == pytest.approx(library, rel=1e-10, abs=1e-25)


def test_nothing_scatters_wider_than_nothing_for_certain() -> None:
    assert chance_of_wider(Fraction(0), 3) == 1


def test_so_far_out_it_is_nothing() -> None:
    assert chance_of_wider(Fraction(4 * 103 + 1), 3) == 0
    assert scipy.stats.chi2.sf(4 * 103, 3) < 1e-80
    assert scipy.stats.chi2.sf(4 * 1100, 1000) < 1e-80


def test_just_inside_it_is_never_below_nothing() -> None:
    assert chance_of_wider(Fraction(4 * 101), 1) == 0


@given(st.fractions(0, 50), st.fractions(0, 50), st.integers(1, 20))
def test_wider_is_never_likelier(one: Fraction, other: Fraction, freedom: int) -> None:
    near, far = sorted((one, other))
    assert chance_of_wider(far, freedom) <= chance_of_wider(near, freedom)


def test_two_degrees_have_a_closed_form() -> None:
    """The chance of more than 2 log 20 is one in twenty."""
    two_log_twenty = 2 * Fraction(Decimal(20).ln())
    assert abs(chance_of_wider(two_log_twenty, 2) - Decimal("0.05")) < Decimal("1e-25")
