from decimal import Decimal, localcontext
from fractions import Fraction

from hypothesis import example, given
from hypothesis import strategies as st

from bezelbook.reasoning.screens.between import Between
from bezelbook.reasoning.screens.lean import ANY, cosine, sine

angles = st.integers(-90_000, 90_000)


def root(number: int) -> Fraction:
    """A square root to forty digits, by the decimal library."""
    with localcontext() as context:
        context.prec = 40
        return Fraction(Decimal(number).sqrt())


# Closed forms of the cosine, by angle in millidegrees.
CLOSED = {
    0: Fraction(1),
    15_000: (root(6) + root(2)) / 4,
    30_000: root(3) / 2,
    36_000: (1 + root(5)) / 4,
    45_000: root(2) / 2,
    60_000: Fraction(1, 2),
    72_000: (root(5) - 1) / 4,
    90_000: Fraction(0),
}


def holds(share: Between, value: Fraction) -> bool:
    return share.low <= value + Fraction(1, 10**35) and value - Fraction(1, 10**35) <= share.high


def test_the_bounds_hold_the_closed_forms() -> None:
    for angle, value in CLOSED.items():
        assert holds(cosine(angle), value), angle
        assert holds(sine(90_000 - angle), value), angle


@given(angles)
@example(90_000)
def test_the_bounds_are_closer_than_anybody_can_measure(angle: int) -> None:
    for share in (cosine(angle), sine(angle)):
        assert 0 <= share.low <= share.high <= 1
        assert share.high - share.low < Fraction(1, 10**12)


@given(angles)
def test_to_lean_forward_is_as_short_as_to_lean_back(angle: int) -> None:
    assert cosine(angle) == cosine(-angle)
    assert sine(angle) == sine(-angle)


@given(angles, angles)
def test_more_lean_is_never_taller(one: int, other: int) -> None:
    flat, steep = sorted((one, other), key=abs)
    assert cosine(steep).low <= cosine(flat).high
    assert sine(flat).low <= sine(steep).high


@given(angles)
def test_the_squares_come_to_one(angle: int) -> None:
    across, along = cosine(angle), sine(angle)
    assert across.low**2 + along.low**2 <= 1 <= across.high**2 + along.high**2


def test_upright_is_exactly_as_high_as_it_is() -> None:
    assert cosine(0) == Between(Fraction(1), Fraction(1))
    assert sine(0) == Between(Fraction(0), Fraction(0))
    assert (cosine(90_000).low, sine(90_000).high) == (Fraction(0), Fraction(1))


def test_of_more_than_a_quarter_turn_nothing_is_said() -> None:
    assert cosine(90_001) == sine(-90_001) == ANY
