from fractions import Fraction

import pytest
import scipy.stats
from hypothesis import assume, given
from hypothesis import strategies as st

from bezelbook.reasoning.agreement.components import Group, components, group_of

readings = st.lists(st.integers(-40, 40).map(Fraction), min_size=2, max_size=5)


def test_a_single_reading_shows_no_variance() -> None:
    assert group_of([Fraction(7)]) == Group(1, Fraction(7), Fraction(0))


@given(st.lists(readings, min_size=2, max_size=4))
def test_the_ratio_is_what_a_statistics_library_says(groups: list[list[Fraction]]) -> None:
    found = components([group_of(one) for one in groups])
    assume(found.within > 0)
    library = scipy.stats.f_oneway(*([float(reading) for reading in one] for one in groups))
    assert found.ratio is not None
    assert float(found.ratio) == pytest.approx(library.statistic, rel=1e-9, abs=1e-9)


def test_groups_that_repeat_exactly_have_no_ratio() -> None:
    found = components([group_of([Fraction(1)] * 2), group_of([Fraction(2)] * 2)])
    assert found.ratio is None
    assert found.within == 0
    assert found.variance_between == Fraction(1, 2)


def test_unequal_groups_have_the_size_in_the_middle() -> None:
    """By hand: of 1 and 3 readings, (4 - 10/4) / 1 is one and a half."""
    found = components([group_of([Fraction(1)]), group_of([Fraction(1), Fraction(2), Fraction(3)])])
    assert found.size == Fraction(3, 2)
    assert found.freedom == (1, 2)


def test_groups_closer_than_they_repeat_have_nothing_on_top() -> None:
    found = components([group_of([Fraction(0), Fraction(10)]), group_of([Fraction(1), Fraction(9)])])
    assert found.raw_variance_between < 0
    assert found.variance_between == 0


def test_the_mean_is_of_all_readings_and_equal_groups_have_their_own_size() -> None:
    groups = [[0, 2], [4, 6], [10, 14]]
    found = components([group_of([Fraction(reading) for reading in one]) for one in groups])
    assert (found.mean, found.size, found.freedom) == (Fraction(6), Fraction(2), (2, 3))
    assert components([group_of([Fraction(1)]), group_of([Fraction(4), Fraction(7)])]).mean == Fraction(4)
