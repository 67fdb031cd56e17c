from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.screens.between import Between, exactly
from bezelbook.reasoning.screens.controls import Near
from bezelbook.reasoning.screens.cover import Outlined, Over
from bezelbook.reasoning.screens.heights import Stretch
from tests.reasoning.screens.dashes import mm

whole = st.integers(-40, 40)
small = st.integers(0, 3)


def give(middle: int, by: int) -> Between:
    return Between(mm(middle - by), mm(middle + by))


def holds(stretch: Stretch, height: Fraction) -> bool:
    return stretch.low < height < stretch.high


def a_control(left: int, bottom: int, width: int, height: int, by: int = 0, *, sure: bool = True) -> Near:
    sides = (give(left, by), give(left + width, by), give(bottom, by), give(bottom + height, by))
    return Near("switch", "a-note", "top", *sides, exactly(0), sure)


def over(control: Near, half_width: int = 10, half_height: int = 6, by: int = 0) -> Over:
    return Over(control, Outlined(give(half_width, by), give(half_height, by), give(0, 0)))


def squares(left: int, right: int, bottom: int, top: int) -> set[tuple[int, int]]:
    """The square millimetres of a rectangle, each by its lower left corner."""
    return {(x, y) for x in range(left, right) for y in range(bottom, top)}


@given(whole, whole, st.integers(1, 15), st.integers(1, 15), whole)
def test_it_is_covered_where_the_two_share_a_square(left: int, bottom: int, width: int, high: int, height: int) -> None:
    """Counting squares: with every size exact, a rectangle is covered or it is free."""
    found = over(a_control(left, bottom, width, high))
    shared = squares(left, left + width, bottom, bottom + high) & squares(-10, 10, height - 6, height + 6)
    at = mm(height)
    assert (found.by(at).low > 0) == (found.by(at).high > 0) == bool(shared)
    assert holds(found.perhaps, at) == holds(found.surely, at) == bool(shared)


@given(whole, whole, st.integers(1, 15), small, small, whole)
def test_the_stretches_are_where_the_reach_says(
    left: int, bottom: int, size: int, by: int, screen: int, height: int
) -> None:
    found = over(a_control(left, bottom, size, 16 - size, by), by=screen)
    at = mm(height)
    assert holds(found.perhaps, at) == (found.by(at).high > 0)
    assert holds(found.surely, at) == (found.by(at).low > 0)


@given(whole, whole, st.integers(1, 9), st.integers(1, 9), whole)
def test_by_is_how_far_it_must_move_to_be_clear(left: int, bottom: int, width: int, high: int, height: int) -> None:
    """Worked apart: moved by so much the nearest way the two touch, and by a hair less they still share something."""
    by = over(a_control(left, bottom, width, high)).by(mm(height)).high
    ways = (10 - left, left + width + 10, height + 6 - bottom, bottom + high - (height - 6))
    assert by == mm(min(ways))


def test_a_note_that_may_be_of_another_build_covers_nothing_for_certain() -> None:
    found = over(a_control(-2, 0, 4, 4, sure=False))
    assert found.surely.empty
    assert not found.perhaps.empty


def test_beside_the_screen_it_is_free_at_any_height() -> None:
    assert over(a_control(30, 0, 4, 4)).perhaps.empty
    assert over(a_control(15, 0, 4, 4)).perhaps.empty
    assert not over(a_control(9, 0, 4, 4)).perhaps.empty


@given(whole, st.integers(1, 15), small, whole, small)
def test_a_control_further_away_is_never_worse_off(bottom: int, high: int, by: int, height: int, away: int) -> None:
    """Above the screen, away is up."""
    near, far = (over(a_control(-3, bottom + up, 6, high, by)) for up in (0, away))
    if mm(height) <= mm(bottom):
        assert far.by(mm(height)).high <= near.by(mm(height)).high
