"""How hot a load resistor is driven, and what rating it wants."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.preferred import no_less

# The supply that a bridge output swings between, and how far above the expected a rating is chosen. Trade 4.8: common
# practice, without a source.
SUPPLY_VOLTS = Fraction(144, 10)
TIMES_EXPECTED = 2

Enough = Literal["enough", "enough for clean sound only", "too small", "not looked"]


@dataclass(frozen=True, slots=True)
class Heat:
    """The most that is turned into heat, in W: by a clean sine, and by the same output driven fully square."""

    sine: Fraction
    square: Fraction


def heat_at_peak(ohm: Range, volts: Fraction = SUPPLY_VOLTS) -> Heat:
    """What a resistor takes across an output that swings up to `volts`: V²/2R for a sine, V²/R for a square wave.

    The lowest that its ± allows takes the most. `ohm` is above 0.
    """
    square = volts**2 / ohm.low
    return Heat(square / 2, square)


def heat_at_reading(ohm: Range, volts: Fraction) -> Fraction:
    """What a resistor takes, in W, at a voltage as a meter reads it (r.m.s.): V²/R, at the lowest its ± allows."""
    return volts**2 / ohm.low


def rating_wanted(expected: Fraction) -> Fraction:
    """The smallest preferred rating in W (E12) that is twice the expected heat or more."""
    return no_less(TIMES_EXPECTED * expected, "E12")


def enough(rated: Fraction | None, heat: Heat) -> Enough:
    """Whether a rating in W, None when not looked, is twice the expected heat."""
    if rated is None:
        return "not looked"
    if rated >= TIMES_EXPECTED * heat.square:
        return "enough"
    return "enough for clean sound only" if rated >= TIMES_EXPECTED * heat.sine else "too small"
