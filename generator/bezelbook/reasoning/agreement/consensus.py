"""What several readings of one quantity come to, weighted by their ±, in exact fractions."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import isqrt

# A ± is taken as an expanded uncertainty: this many standard deviations (GUM 6.2, about 95 %).
COVERAGE = 2


@dataclass(frozen=True, slots=True)
class Figure:
    """A reading as a number with its ±, in one unit; the ± is above nothing."""

    value: Fraction
    give: Fraction


@dataclass(frozen=True, slots=True)
class Consensus:
    """The weighted mean of some figures; its ± is kept squared, because only that is a fraction.

    `chi_square` is the sum of the squared distances from it, each in standard deviations of its figure.
    """

    value: Fraction
    give_squared: Fraction
    chi_square: Fraction
    count: int

    @property
    def give(self) -> int:
        """Its ± in whole units of the figures, rounded up."""
        return root_up(self.give_squared)

    @property
    def birge_squared(self) -> Fraction:
        """The square of the Birge ratio: 1 where the figures scatter as their ± says. Two figures at least.

        R. T. Birge, Physical Review 40 (1932) 207.
        """
        return self.chi_square / (self.count - 1)


def consensus(figures: Sequence[Figure], between: Fraction = Fraction(0)) -> Consensus:
    """The mean of one figure or more, each weighted by the inverse of its squared ±.

    `between` is a variance that every figure has on top of its own. M. G. Cox, Metrologia 39 (2002) 589, procedure A.
    """
    weighted = [(1 / (figure.give**2 + COVERAGE**2 * between), figure.value) for figure in figures]
    total = sum((weight for weight, _ in weighted), Fraction(0))
    mean = sum((weight * value for weight, value in weighted), Fraction(0)) / total
    scatter = sum((weight * (value - mean) ** 2 for weight, value in weighted), Fraction(0))
    return Consensus(mean, 1 / total, COVERAGE**2 * scatter, len(figures))


def e_n_squared(one: Figure, other: Figure) -> Fraction:
    """The square of E_n between two independent figures: up to 1 they agree. ISO 13528, 9.7."""
    return (one.value - other.value) ** 2 / (one.give**2 + other.give**2)


def e_n_squared_of_rest(figures: Sequence[Figure], index: int) -> Fraction:
    """The square of E_n between one figure and the consensus of the others, of which there is at least one.

    It is the same as that between the figure and the consensus of all, where the figure's own part in that consensus
    is taken out of the variance: (x - mean)² / (U² - U(mean)²).
    """
    own = figures[index]
    rest = consensus([*figures[:index], *figures[index + 1 :]])
    return (own.value - rest.value) ** 2 / (own.give**2 + rest.give_squared)


def variance_between(figures: Sequence[Figure]) -> Fraction:
    """How much variance two or more figures have on top of what their ± explains; never less than nothing.

    The one-step estimate of R. DerSimonian and N. Laird, Controlled Clinical Trials 7 (1986) 177.
    """
    weights = [COVERAGE**2 / figure.give**2 for figure in figures]
    total = sum(weights, Fraction(0))
    scale = total - sum((weight**2 for weight in weights), Fraction(0)) / total
    return max(Fraction(0), (consensus(figures).chi_square - (len(figures) - 1)) / scale)


def root_up(square: Fraction) -> int:
    """The smallest whole number whose square is not below this one."""
    root = isqrt(square.numerator // square.denominator)
    return root if root * root >= square else root + 1
