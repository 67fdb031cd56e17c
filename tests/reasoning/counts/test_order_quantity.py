from fractions import Fraction
from math import comb

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.counts.order_quantity import order_quantity

past = st.integers(0, 60).flatmap(lambda handled: st.tuples(st.integers(0, handled), st.just(handled)))


# Trade 4.10 and 13: 5/44, 7/44 and 3/38 lost; common practice; the sum is the beta-binomial one.
def test_fifteen_of_a_hundred_and_twenty_six_lost_and_forty_four_coming_want_ten() -> None:
    assert order_quantity(5 + 7 + 3, 44 + 44 + 38, 44) == 10


def test_of_nothing_coming_nothing_is_wanted() -> None:
    assert order_quantity(3, 40, 0) == 0


def rising(start: Fraction, steps: int) -> Fraction:
    product = Fraction(1)
    for step in range(steps):
        product *= start + step
    return product


def by_definition(lost: int, handled: int, coming: int) -> int:
    """An oracle apart: each chance by itself, as the beta function's ratio, with nothing carried on."""
    ours, theirs = lost + Fraction(1, 2), handled - lost + Fraction(1, 2)
    total = Fraction(0)
    for count in range(coming + 1):
        ways = comb(coming, count) * rising(ours, count) * rising(theirs, coming - count)
        total += ways / rising(ours + theirs, coming)
        if total >= Fraction(19, 20):
            return count
    raise AssertionError("the chances do not add up to one")


@given(past, st.integers(0, 40))
def test_it_is_the_smallest_count_that_the_definition_calls_enough(case: tuple[int, int], coming: int) -> None:
    assert order_quantity(*case, coming) == by_definition(*case, coming)


def test_a_fleet_that_comes_at_once_is_summed_without_rounding() -> None:
    assert order_quantity(3, 40, 200) == by_definition(3, 40, 200)


@given(past, st.integers(0, 60))
def test_more_lost_or_more_coming_never_wants_fewer_and_never_more_than_come(
    case: tuple[int, int], coming: int
) -> None:
    lost, handled = case
    wanted = order_quantity(lost, handled, coming)
    assert 0 <= wanted <= coming
    assert order_quantity(lost, handled, coming + 1) >= wanted
    assert order_quantity(lost + 1, handled + 1, coming) >= wanted
    assert order_quantity(lost, handled + 1, coming) <= wanted


@pytest.mark.parametrize("enough", [Fraction(1), Fraction(0)])
def test_certainty_wants_all_of_them_and_no_wish_none(enough: Fraction) -> None:
    assert order_quantity(3, 40, 10, enough) == (10 if enough else 0)


def test_a_chance_that_is_just_enough_is_enough() -> None:
    # Of one clip of a sort that nobody has handled, one in two is lost.
    assert order_quantity(0, 0, 1, Fraction(1, 2)) == 0
    assert order_quantity(0, 0, 1, Fraction(51, 100)) == 1
