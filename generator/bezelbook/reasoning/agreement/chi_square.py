"""How likely readings scatter as wide as they do or wider by chance alone, worked out to thirty digits."""

from decimal import Decimal, localcontext
from fractions import Fraction

# Digits carried along; what is given back is good to about thirty after the point.
DIGITS = 80
PI = Decimal("3.14159265358979323846264338327950288419716939937510582097494459230781640628620899862803")


def chance_of_wider(chi_square: Fraction, freedom: int) -> Decimal:
    """The chance that a chi-square of this many degrees of freedom (at least one) is this large or larger.

    The series of the incomplete gamma function (Abramowitz and Stegun 6.5.29); so far out that thirty digits after
    the point would all be noughts, it is given as nothing.
    """
    if chi_square > 4 * (freedom + 100):
        return Decimal(0)
    with localcontext() as context:
        context.prec = DIGITS
        x = Decimal(chi_square.numerator) / Decimal(chi_square.denominator) / 2
        a = Decimal(freedom) / 2
        term = total = Decimal(1)
        while term > total.scaleb(-DIGITS):
            a += 1
            term *= x / a
            total += term
        return max(Decimal(0), round(1 - _front(x, freedom) * total, 30))


def _front(x: Decimal, freedom: int) -> Decimal:
    """x^a e^-x / Γ(a + 1), where a is half of the degrees of freedom."""
    half = Decimal("0.5") if freedom % 2 else Decimal(0)
    front = (-x).exp() * (2 * (x / PI).sqrt() if half else 1)
    for step in range(1, freedom // 2 + 1):
        front *= x / (step + half)
    return front
