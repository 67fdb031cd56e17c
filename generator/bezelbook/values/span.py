"""An interval of lengths in nanometres: open at its ends when it has a ±, a single point when it is exact."""

from dataclasses import dataclass

from bezelbook.values.quantity import Quantity


@dataclass(frozen=True, slots=True)
class Span:
    """Everything a size may be: strictly between `low` and `high`, or exactly there when both are equal.

    Both are in nanometres; None means that nothing bounds it on that side. `reached` says that `low` itself is inside.
    """

    low: int | None
    high: int | None
    reached: bool = False

    @property
    def known(self) -> bool:
        """Whether both ends are bounded."""
        return self.low is not None and self.high is not None

    @property
    def exact(self) -> bool:
        """Whether it is one single value."""
        return self.known and self.low == self.high

    @property
    def closed(self) -> bool:
        """Whether its low end is inside."""
        return self.exact or self.reached

    def plus(self, other: "Span") -> "Span":
        """All sums of one value from each."""
        closed = self.closed and other.closed
        return _from(_add(self.low, other.low), _add(self.high, other.high), closed=closed)

    def minus(self, other: "Span") -> "Span":
        """All differences of one value from each."""
        return self.plus(Span(_negative(other.high), _negative(other.low), other.exact))

    def at_least(self, other: "Span") -> "Span":
        """The larger of one value from each; an unbounded end stays unbounded."""
        low = max((end for end in (self.low, other.low) if end is not None), default=None)
        high = None if self.high is None or other.high is None else max(self.high, other.high)
        return _from(low, high, closed=all(one.closed for one in (self, other) if one.low == low))


UNKNOWN = Span(None, None)
NOTHING = Span(0, 0)
BLANK = Span(0, None, reached=True)


def around(middle: int, give: int) -> Span:
    """The span of a value read as `middle` with an error smaller than `give`, both in nanometres."""
    return Span(middle - give, middle + give)


def span_of(quantity: Quantity, house: int | None) -> Span:
    """The span of a typed length: its own ±, else the `house` ± in nanometres, else exactly what was typed."""
    give = quantity.give if quantity.give is not None else house
    return around(quantity.base, give or 0)


def _from(low: int | None, high: int | None, *, closed: bool) -> Span:
    return Span(low, high, closed and low != high)


def _add(one: int | None, other: int | None) -> int | None:
    return None if one is None or other is None else one + other


def _negative(end: int | None) -> int | None:
    return None if end is None else -end
