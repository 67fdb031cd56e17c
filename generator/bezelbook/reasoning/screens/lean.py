"""How much shorter a leaning screen looks from the front, and how far its edge dips, between exact bounds."""

from fractions import Fraction

from bezelbook.reasoning.screens.between import Between

QUARTER_TURN = 90_000  # millidegrees
# π lies strictly between these two.
PI_LOW = Fraction(3_141_592_653_589_793, 10**15)
PI_HIGH = Fraction(3_141_592_653_589_794, 10**15)
TERMS = 9
ANY = Between(Fraction(0), Fraction(1))


def cosine(angle: int) -> Between:
    """The cosine of an angle in millidegrees, leaning either way; of more than a quarter turn nothing is said."""
    size = abs(angle)
    if size > QUARTER_TURN:
        return ANY
    most, least = _radians(size)
    return Between(max(Fraction(0), _series(most, 0, TERMS + 1)), _series(least, 0, TERMS))


def sine(angle: int) -> Between:
    """The sine of the size of an angle in millidegrees; of more than a quarter turn nothing is said."""
    size = abs(angle)
    if size > QUARTER_TURN:
        return ANY
    most, least = _radians(size)
    return Between(_series(least, 1, TERMS + 1), min(Fraction(1), _series(most, 1, TERMS)))


def _radians(size: int) -> tuple[Fraction, Fraction]:
    share = Fraction(size, 2 * QUARTER_TURN)
    return share * PI_HIGH, share * PI_LOW


def _series(x: Fraction, power: int, terms: int) -> Fraction:
    """So many terms of the series of the cosine (`power` 0) or the sine (1).

    The terms fall and alternate up to a quarter turn, so that an odd number of them is too much, an even too little.
    """
    term = x**power
    total = Fraction(0)
    for _ in range(terms):
        total += term
        term = -term * x * x / ((power + 1) * (power + 2))
        power += 2
    return total
