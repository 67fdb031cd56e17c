from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.wiring import each_side, in_parallel, in_series, ways
from tests.reasoning.electric.ranges import span


def ohm(*values: int) -> list[Range]:
    return [Range(Fraction(value), Fraction(value)) for value in values]


loads = st.lists(st.integers(1, 64), min_size=1, max_size=6)


# Trade's worked results: common practice, and Kirchhoff.
def test_four_and_four_in_parallel_are_two_and_four_and_eight_are_two_and_two_thirds() -> None:
    assert in_parallel(ohm(4, 4)) == span(2)
    assert in_parallel(ohm(4, 8)).low == Fraction(8, 3)


def test_two_of_two_ohm_are_one_in_parallel_and_four_in_series() -> None:
    assert in_parallel(ohm(2, 2)) == span(1)
    assert in_series(ohm(2, 2)) == span(4)


def test_each_side_of_a_bridge_sees_half() -> None:
    assert each_side(Range(Fraction(4), Fraction(6))) == span(2, 3)


def test_nothing_in_series_is_nothing_and_a_short_shorts_the_rest() -> None:
    assert in_series([]) == span(0)
    assert in_parallel(ohm(0, 4)) == span(0)


def test_a_plus_minus_goes_through_to_both_ends() -> None:
    loose = Range(Fraction(3), Fraction(5))
    assert in_series([loose, loose]) == span(6, 10)
    assert in_parallel([loose, loose]) == (Fraction(3, 2), Fraction(5, 2))


@pytest.mark.parametrize(
    ("count", "expected"),
    [
        (1, {"alone": 4}),
        (2, {"in series": 8, "in parallel": 2}),
        (3, {"in series": 12, "in parallel": Fraction(4, 3)}),
        (4, {"in series": 16, "2 rows of 2 in series, side by side": 4, "in parallel": 1}),
    ],
)
def test_coils_alike_are_wired_in_every_even_way(count: int, expected: dict[str, Fraction]) -> None:
    found = {way.words: way.comes_to.low for way in ways(ohm(4)[0], count)}
    assert found == expected
    assert list(found.values()) == sorted(found.values(), reverse=True)


@given(loads)
def test_the_current_through_loads_in_parallel_adds_up(values: list[int]) -> None:
    # An oracle apart: at 1 V each load takes 1/R, and all of it goes through the one that stands for them.
    total = sum(Fraction(1, value) for value in values)
    assert in_parallel(ohm(*values)).low * total == 1


@given(loads, st.integers(1, 64))
def test_one_more_in_parallel_never_raises_the_load_and_one_more_in_series_never_lowers_it(
    values: list[int], more: int
) -> None:
    assert in_parallel(ohm(*values, more)).low < in_parallel(ohm(*values)).low
    assert in_series(ohm(*values, more)).low > in_series(ohm(*values)).low


@given(loads)
def test_the_least_load_is_between_a_share_of_the_smallest_and_the_smallest(values: list[int]) -> None:
    assert Fraction(min(values), len(values)) <= in_parallel(ohm(*values)).low <= min(values)
