"""A length that is known to lie between two others, in nanometres, worst cases kept on both sides."""

from dataclasses import dataclass
from fractions import Fraction

from bezelbook.values.quantity import Quantity
from bezelbook.values.span import span_of

# Where nothing bounds a length: a hundred metres, and no dash is as wide.
FAR = Fraction(100_000_000_000)


@dataclass(frozen=True, slots=True)
class Between:
    """Every value from `low` to `high`."""

    low: Fraction
    high: Fraction

    @property
    def middle(self) -> Fraction:
        """Half way."""
        return (self.low + self.high) / 2

    @property
    def bounded(self) -> bool:
        """Whether somebody's reading bounds it on both sides."""
        return self.low > -FAR / 2 and self.high < FAR / 2

    def plus(self, other: "Between") -> "Between":
        """All sums of one value from each."""
        return Between(self.low + other.low, self.high + other.high)

    def minus(self, other: "Between") -> "Between":
        """All differences of one value from each."""
        return Between(self.low - other.high, self.high - other.low)

    def times(self, share: "Between") -> "Between":
        """All products with one value of a share; both are nothing or more."""
        return Between(self.low * share.low, self.high * share.high)

    def least(self, other: "Between") -> "Between":
        """The smaller of one value from each."""
        return Between(min(self.low, other.low), min(self.high, other.high))


NOWHERE_KNOWN = Between(-FAR, FAR)
NOTHING = Between(Fraction(0), Fraction(0))


def exactly(length: Fraction | int) -> Between:
    """One value."""
    return Between(Fraction(length), Fraction(length))


def read(quantity: Quantity, house: int) -> Between:
    """What a typed length may be: within its own ±, else within the house's, in nanometres; `flush` is nothing."""
    span = span_of(quantity, house)
    return Between(Fraction(span.low or 0), Fraction(span.high or 0))
