"""How many of a thing to have ready, when so many of those handled before were lost."""

from fractions import Fraction
from math import prod

ENOUGH = Fraction(95, 100)


def order_quantity(lost: int, handled: int, coming: int, enough: Fraction = ENOUGH) -> int:
    """The fewest that will do with a chance of `enough` or more, when `coming` of them are handled next.

    `lost` is at most `handled`. The number lost next has the beta-binomial distribution that follows from Jeffreys'
    prior, a beta distribution of 1/2 and 1/2 (Brown, Cai and DasGupta, Statistical Science 16, 2001, section 4.1). It
    is summed in whole numbers, each chance times `total`, so that no rounding decides. Takes time that grows as the
    square of `coming`.
    """
    kept = handled - lost
    total = _rising(2 * handled + 2, coming)
    weight = _rising(2 * kept + 1, coming)
    sum_ = weight
    for count in range(coming):
        if sum_ >= enough * total:
            return count
        weight = weight * (coming - count) * (2 * lost + 1 + 2 * count)
        weight //= (count + 1) * (2 * kept + 1 + 2 * (coming - count - 1))
        sum_ += weight
    return coming


def _rising(first: int, steps: int) -> int:
    """The product of so many whole numbers from the first on, each two more than the one before."""
    return prod(first + 2 * step for step in range(steps))
