from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.agreement.consensus import (
    Figure,
    consensus,
    e_n_squared,
    e_n_squared_of_rest,
    root_up,
    variance_between,
)

values = st.integers(-1000, 1000).map(Fraction)
gives = st.integers(1, 50).map(Fraction)
figures = st.lists(st.builds(Figure, values, gives), min_size=2, max_size=6)


def figure(value: int, give: int) -> Figure:
    return Figure(Fraction(value), Fraction(give))


def test_two_of_one_tolerance_meet_in_the_middle() -> None:
    """By hand: the mean of 200 and 204 is 202, and its ± is that of one by the root of two."""
    found = consensus([figure(200, 2), figure(204, 2)])
    assert found.value == 202
    assert found.give_squared == 2
    assert found.give == 2
    # Each is two from the mean, which is two standard deviations of one, since a ± is two of them.
    assert found.chi_square == 8
    assert found.birge_squared == 8


def test_the_closer_reading_weighs_more() -> None:
    """By hand: weights 1 and 1/4 put the mean of 200 and 210 at 202."""
    assert consensus([figure(200, 1), figure(210, 2)]).value == 202


@given(figures)
def test_the_mean_lies_among_the_figures_and_is_surer_than_any(some: list[Figure]) -> None:
    found = consensus(some)
    assert min(one.value for one in some) <= found.value <= max(one.value for one in some)
    assert found.give_squared <= min(one.give**2 for one in some)
    assert found.chi_square >= 0


@given(figures, values, st.integers(1, 9))
def test_the_unit_and_the_zero_do_not_matter(some: list[Figure], shift: Fraction, scale: int) -> None:
    moved = [Figure(one.value * scale + shift, one.give * scale) for one in some]
    found, other = consensus(some), consensus(moved)
    assert other.value == found.value * scale + shift
    assert other.give_squared == found.give_squared * scale**2
    assert other.chi_square == found.chi_square


@given(figures)
def test_one_against_the_rest_is_one_against_all_with_its_own_part_taken_out(some: list[Figure]) -> None:
    """The identity by which M. G. Cox compares a figure with a mean that it is part of."""
    whole = consensus(some)
    for index, one in enumerate(some):
        left = one.give**2 - whole.give_squared
        assert e_n_squared_of_rest(some, index) == (one.value - whole.value) ** 2 / left


def test_e_n_of_two_is_the_same_both_ways() -> None:
    one, other = figure(1825, 3), figure(1820, 4)
    assert e_n_squared(one, other) == e_n_squared(other, one) == e_n_squared_of_rest([one, other], 0) == 1


@given(figures)
def test_what_scatters_no_wider_than_its_tolerance_has_nothing_on_top(some: list[Figure]) -> None:
    extra = variance_between(some)
    assert (extra > 0) == (consensus(some).chi_square > len(some) - 1)


def test_what_is_on_top_of_two_that_are_equally_sure_is_worked_out_by_hand() -> None:
    """Readings 0 and 10 ± 2 have a variance of 50 between them, of which their ± explains that of one, 1."""
    assert variance_between([figure(0, 2), figure(10, 2)]) == 49


@given(figures)
def test_what_is_on_top_makes_the_mean_less_sure(some: list[Figure]) -> None:
    assert consensus(some, variance_between(some)).give_squared >= consensus(some).give_squared


@given(st.fractions(0, 10**6))
def test_a_root_is_rounded_up_to_the_next_whole_number(square: Fraction) -> None:
    root = root_up(square)
    assert root**2 >= square
    assert root == 0 or (root - 1) ** 2 < square
