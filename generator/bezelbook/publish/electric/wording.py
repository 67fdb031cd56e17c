"""How volts, amps and watts are worded on a page."""

from fractions import Fraction

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.values.decimals import decimals


def amps_words(amps: Range) -> str:
    """A current to the whole amp from ten up and to a hundredth below, both ends where they differ: `27 to 54 A`."""
    return _span(amps, 0 if amps.high >= 10 else 2, "A")


def volts_words(volts: Range) -> str:
    """A drop to a hundredth of a volt, both ends where they differ: `0.27 V`."""
    return _span(volts, 2, "V")


def watts_words(watts: Fraction) -> str:
    """Heat to a tenth of a watt below a hundred, and to the whole watt from there: `5.2 W`."""
    return f"{decimals(watts, 0 if watts >= 100 else 1)} W"


def _span(range_: Range, places: int, unit: str) -> str:
    low, high = decimals(range_.low, places), decimals(range_.high, places)
    return f"{low} {unit}" if low == high else f"{low} to {high} {unit}"
