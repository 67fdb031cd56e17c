import itertools
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.screens.heights import Stretch, Window, left_free

number = st.integers(0, 12)
stretches = st.lists(st.tuples(number, number), max_size=5)
HALVES = [Fraction(half, 2) for half in range(25)]


def stretch(low: int, high: int) -> Stretch:
    return Stretch(Fraction(low), Fraction(high))


def window(low: int, high: int) -> Window:
    return Window(Fraction(low), Fraction(high))


@given(number, number, stretches)
def test_what_is_left_is_what_no_stretch_holds(one: int, other: int, taken: list[tuple[int, int]]) -> None:
    """Ends are whole numbers, so that halves tell every case apart."""
    whole = window(min(one, other), max(one, other))
    free = left_free(whole, [stretch(*ends) for ends in taken])
    for at in HALVES:
        inside = whole.low <= at <= whole.high and not any(low < at < high for low, high in taken)
        assert any(part.low <= at <= part.high for part in free) == inside, at


@given(number, number, stretches)
def test_what_is_left_comes_in_order_and_apart(one: int, other: int, taken: list[tuple[int, int]]) -> None:
    free = left_free(window(min(one, other), max(one, other)), [stretch(*ends) for ends in taken])
    assert all(part.low <= part.high for part in free)
    assert all(lower.high < upper.low for lower, upper in itertools.pairwise(free))


def test_a_single_height_between_two_stretches_is_left() -> None:
    assert left_free(window(0, 4), [stretch(-1, 2), stretch(2, 5)]) == (window(2, 2),)


def test_a_stretch_from_high_to_low_is_empty() -> None:
    assert stretch(3, 3).empty
    assert not stretch(2, 3).empty
