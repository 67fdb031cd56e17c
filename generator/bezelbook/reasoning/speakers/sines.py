"""The sine of a share of a half turn, bounded from both sides by fractions, so that no rounding decides anything."""

from fractions import Fraction

# The first digits of pi, cut off and then one up in the last place.
PI_DIGITS = Fraction(314159265358979323846, 10**20)
PI = (PI_DIGITS, PI_DIGITS + Fraction(1, 10**20))
TERMS = 12


def sine(half_turns: Fraction) -> tuple[Fraction, Fraction]:
    """A fraction that is no more, and one that is no less, than the sine of `half_turns` times pi.

    `half_turns` is from 0 to 1/2, where the sine rises. The terms of its series shrink and take turns in sign, so it
    lies between any two partial sums that follow one another (Leibniz).
    """
    low, high = (half_turns * end for end in PI)
    return _sums(low)[0], _sums(high)[1]


def _sums(angle: Fraction) -> tuple[Fraction, Fraction]:
    """The last two partial sums of the series, the lower one first."""
    term = total = before = angle
    for number in range(1, TERMS):
        term = -term * angle**2 / (2 * number * (2 * number + 1))
        before, total = total, total + term
    return min(before, total), max(before, total)
