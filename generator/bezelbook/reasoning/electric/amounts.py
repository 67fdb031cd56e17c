"""What a typed quantity is in plain units, ohm, watt, volt, amp, metre, as exact fractions with both ends of its ±."""

from collections.abc import Iterable
from fractions import Fraction
from typing import NamedTuple

from bezelbook.values.quantity import Quantity

# Base units that one plain unit holds.
_IN_ONE = {
    "resistance": 10**6,
    "power": 10**6,
    "voltage": 10**6,
    "current": 10**6,
    "length": 10**9,
    "capacitance": 10**12,
    "frequency": 10**3,
}


class Range(NamedTuple):
    """A number that lies between two ends, both of which it may be; they are one number when it is exact."""

    low: Fraction
    high: Fraction

    @property
    def exact(self) -> bool:
        """Whether there is one number that it can be."""
        return self.low == self.high


def amount(quantity: Quantity) -> Fraction:
    """The quantity in plain units, its ± left aside; raises KeyError for a dimension that no sum here uses."""
    return Fraction(quantity.base, _IN_ONE[quantity.dimension])


def between(quantity: Quantity) -> Range:
    """The least and the most that the quantity can be by its own ±; a figure without one is taken as it stands."""
    give = Fraction(quantity.give or 0, _IN_ONE[quantity.dimension])
    return Range(amount(quantity) - give, amount(quantity) + give)


def spanning(ranges: Iterable[Range]) -> Range:
    """The least and the most of several, of which there is at least one."""
    every = tuple(ranges)
    return Range(min(one.low for one in every), max(one.high for one in every))


def above_zero(quantity: Quantity | None) -> Range | None:
    """The least and the most that a quantity can be, or None when it is blank or may be 0, so that no sum holds."""
    if quantity is None:
        return None
    ends = between(quantity)
    return ends if ends.low > 0 else None
