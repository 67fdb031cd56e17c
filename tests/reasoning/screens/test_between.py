from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.screens.between import FAR, NOWHERE_KNOWN, Between, exactly, read
from bezelbook.values.quantity import read_quantity
from tests.reasoning.screens.dashes import floater

ends = st.tuples(st.integers(-50, 50), st.integers(-50, 50)).map(lambda two: (min(two), max(two)))


def between(low: int, high: int) -> Between:
    return Between(Fraction(low), Fraction(high))


@given(ends, ends)
def test_sums_differences_and_the_smaller_keep_every_case(one: tuple[int, int], other: tuple[int, int]) -> None:
    cases = [(x, y) for x in range(one[0], one[1] + 1) for y in range(other[0], other[1] + 1)]
    first, second = between(*one), between(*other)
    for found, values in (
        (first.plus(second), [x + y for x, y in cases]),
        (first.minus(second), [x - y for x, y in cases]),
        (first.least(second), [min(x, y) for x, y in cases]),
    ):
        assert found == between(min(values), max(values))


def test_a_share_of_a_size_keeps_both_ends() -> None:
    assert between(100, 120).times(Between(Fraction(1, 2), Fraction(3, 4))) == between(50, 90)


def test_the_middle_is_half_way() -> None:
    assert between(3, 6).middle == Fraction(9, 2)


def test_what_nobody_read_is_not_bounded() -> None:
    assert not NOWHERE_KNOWN.bounded
    assert not Between(Fraction(0), FAR).bounded
    assert exactly(3).bounded


def test_a_length_is_read_with_its_own_tolerance_else_the_houses() -> None:
    own, bare = (read_quantity(text, "length") for text in ("30 ± 2 mm", "30 mm"))
    assert read(own, 5_000_000) == between(28_000_000, 32_000_000)
    assert read(bare, 5_000_000) == between(25_000_000, 35_000_000)


def test_flush_is_exactly_nothing() -> None:
    screen = floater(offset_least="flush").screen
    assert screen is not None
    assert screen.offset_least is not None
    assert read(screen.offset_least, 5) == exactly(0)
