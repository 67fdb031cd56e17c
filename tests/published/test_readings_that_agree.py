"""Readings of one thing by several people, against a published interlaboratory comparison and a statistics library.

R. N. Kacker, Metrologia 41 (2004) 132, Table 1, first row: nine laboratories, their means and variances, and the
published variance between them by the method of DerSimonian and Laird; data and figures as read in the test suite of
statsmodels, which prints 0.5359 where its own closed formula gives 0.5367, so that its tolerance of 0.001 is kept. The
weighted mean, the chi-square, the Birge ratio, the random-effects mean and both kinds of E_n were computed by
statsmodels 0.15.0 and scipy 1.17.1. A ± is two standard deviations.

E_n after ISO 13528, 9.7 (clause number from memory); the five cases are constructed, the last on the limit itself.
"""

from fractions import Fraction
from math import sqrt

import pytest
import scipy.linalg
import scipy.stats
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.agreement.chi_square import chance_of_wider
from bezelbook.reasoning.agreement.consensus import (
    COVERAGE,
    Figure,
    consensus,
    e_n_squared,
    e_n_squared_of_rest,
    variance_between,
)
from bezelbook.reasoning.agreement.odd_one import agreement

MEANS = ("61.0", "61.4", "62.21", "62.3", "62.34", "62.6", "62.7", "62.84", "65.9")
# The roots of the printed variances, all of which are squares.
DEVIATIONS = ("0.45", "1.1", "0.3", "0.45", "0.62", "0.75", "0.26", "0.15", "1.35")
VARIANCES = ("0.2025", "1.21", "0.09", "0.2025", "0.3844", "0.5625", "0.0676", "0.0225", "1.8225")
LABORATORIES = [Figure(Fraction(x), COVERAGE * Fraction(u)) for x, u in zip(MEANS, DEVIATIONS, strict=True)]
E_N_WITH_ITS_OWN_PART = (
    -1.812140235,
    -0.5405117816,
    -0.6669110967,
    -0.3243376399,
    -0.1993266289,
    0.01118484132,
    0.2464361561,
    1.230639104,
    1.232309872,
)
E_N_AS_IF_INDEPENDENT = (
    -1.710883285,
    -0.5353410352,
    -0.5856369737,
    -0.3062146274,
    -0.1933841912,
    0.01095591691,
    0.2071250577,
    0.6944788135,
    1.224470542,
)
# What a laboratory read, its ±, the reference and its ±, and E_n.
CASES = (
    ("182.4", "0.5", "182.0", "0.3", 0.6859943406),
    ("181.2", "0.5", "182.0", "0.3", -1.371988681),
    ("182.0", "0.5", "182.0", "0.3", 0.0),
    ("182.6", "0.4", "182.0", "0.45", 0.9965457582),
    ("182.5", "0.3", "182.0", "0.4", 1.0),
)


def test_the_deviations_are_the_roots_of_the_printed_variances() -> None:
    assert [Fraction(u) ** 2 for u in DEVIATIONS] == [Fraction(variance) for variance in VARIANCES]


def test_nine_laboratories_come_to_the_published_mean() -> None:
    found = consensus(LABORATORIES)
    assert float(found.value) == pytest.approx(62.583397094, abs=1e-9)
    assert sqrt(found.give_squared) / COVERAGE == pytest.approx(0.1078457055, abs=1e-10)
    assert float(found.chi_square) == pytest.approx(24.80189774, abs=1e-8)
    assert sqrt(found.birge_squared) == pytest.approx(1.76074905, abs=1e-8)
    outer = found.birge_squared * found.give_squared / COVERAGE**2
    assert sqrt(outer) == pytest.approx(0.1898892235, abs=1e-10)


def test_they_scatter_too_wide_for_chance() -> None:
    found = consensus(LABORATORIES)
    assert float(chance_of_wider(found.chi_square, 8)) == pytest.approx(0.001679351464, abs=1e-12)
    # The limits that one in twenty passes, for the chi-square and for the Birge ratio.
    limit = Fraction("15.50731306")
    assert float(chance_of_wider(limit, 8)) == pytest.approx(0.05, abs=1e-8)
    assert sqrt(limit / 8) == pytest.approx(1.392269418, abs=1e-8)
    assert not agreement(LABORATORIES).agree


def test_between_them_lies_the_published_variance() -> None:
    between = variance_between(LABORATORIES)
    assert sqrt(between) == pytest.approx(0.5359, abs=1e-3)
    assert sqrt(between) == pytest.approx(0.5367021958, abs=1e-10)
    wider = consensus(LABORATORIES, between)
    assert float(wider.value) == pytest.approx(62.3901386, abs=1e-7)
    assert sqrt(wider.give_squared) / COVERAGE == pytest.approx(0.245749668, abs=1e-9)


def test_each_laboratory_has_its_e_n_against_all() -> None:
    whole = consensus(LABORATORIES)
    for index, one in enumerate(LABORATORIES):
        apart = float(e_n_squared_of_rest(LABORATORIES, index))
        assert apart == pytest.approx(E_N_WITH_ITS_OWN_PART[index] ** 2, rel=1e-8)
        together = (one.value - whole.value) ** 2 / (one.give**2 + whole.give_squared)
        assert float(together) == pytest.approx(E_N_AS_IF_INDEPENDENT[index] ** 2, rel=1e-8)


@pytest.mark.parametrize("case", CASES, ids=[case[0] for case in CASES])
def test_e_n_of_a_reading_against_a_reference(case: tuple[str, str, str, str, float]) -> None:
    read, give, reference, reference_give, e_n = case
    squared = e_n_squared(Figure(Fraction(read), Fraction(give)), Figure(Fraction(reference), Fraction(reference_give)))
    assert float(squared) == pytest.approx(e_n**2, abs=1e-9)
    assert (squared <= 1) == (abs(e_n) <= 1)


@given(st.lists(st.tuples(st.integers(0, 400), st.integers(1, 20)), min_size=2, max_size=8))
def test_the_mean_is_what_a_least_squares_fit_of_a_constant_gives(read: list[tuple[int, int]]) -> None:
    values, deviations = ([float(number) for number in column] for column in zip(*read, strict=True))
    found = consensus([Figure(Fraction(value), COVERAGE * Fraction(u)) for value, u in read])
    weighed = [[1 / u] for u in deviations]
    [fitted], *_ = scipy.linalg.lstsq(weighed, [value / u for value, u in zip(values, deviations, strict=True)])
    [back] = scipy.linalg.pinv(weighed)  # the covariance of a least-squares fit is this, times itself
    variance = back @ back
    scatter = sum(((value - fitted) / u) ** 2 for value, u in zip(values, deviations, strict=True))
    assert float(found.value) == pytest.approx(fitted, abs=1e-5)
    assert float(found.give_squared) / COVERAGE**2 == pytest.approx(variance, rel=1e-5)
    assert float(found.chi_square) == pytest.approx(scatter, abs=1e-4)
    library = scipy.stats.chi2.sf(float(found.chi_square), len(read) - 1)
    assert float(chance_of_wider(found.chi_square, len(read) - 1)) == pytest.approx(library, rel=1e-9, abs=1e-25)
