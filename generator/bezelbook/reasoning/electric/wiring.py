"""What loads come to when they are wired in series or in parallel, and in which ways several alike can be wired."""

from collections.abc import Sequence
from fractions import Fraction
from typing import NamedTuple

from bezelbook.reasoning.electric.amounts import Range


class Wiring(NamedTuple):
    """A way to wire loads, in words, and what they come to in ohm."""

    words: str
    comes_to: Range


def in_series(loads: Sequence[Range]) -> Range:
    """The sum of loads in ohm; nothing at all is 0."""
    return Range(sum((one.low for one in loads), Fraction(0)), sum((one.high for one in loads), Fraction(0)))


def in_parallel(loads: Sequence[Range]) -> Range:
    """One by the sum of one by each load in ohm; there is at least one, and a load of 0 shorts the rest."""
    return Range(_parallel([one.low for one in loads]), _parallel([one.high for one in loads]))


def each_side(bridged: Range) -> Range:
    """What each of two bridged channels sees of a load in ohm: half of it, since the other drives the other half."""
    return Range(bridged.low / 2, bridged.high / 2)


def ways(load: Range, count: int) -> tuple[Wiring, ...]:
    """Every even way to wire so many loads alike, from the most ohms to the fewest.

    Rows of the same length are put side by side: all in series is one row, all in parallel are rows of one.
    """
    lengths = [length for length in range(count, 0, -1) if count % length == 0]
    return tuple(Wiring(_words(count, length), _rows(load, count, length)) for length in lengths)


def _rows(load: Range, count: int, length: int) -> Range:
    return in_parallel([in_series([load] * length)] * (count // length))


def _words(count: int, length: int) -> str:
    if count == 1:
        return "alone"
    if length == count:
        return "in series"
    return "in parallel" if length == 1 else f"{count // length} rows of {length} in series, side by side"


def _parallel(ohms: Sequence[Fraction]) -> Fraction:
    if min(ohms) <= 0:
        return Fraction(0)
    return 1 / sum((1 / one for one in ohms), Fraction(0))
