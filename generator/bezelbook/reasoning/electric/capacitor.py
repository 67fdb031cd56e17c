"""Where a capacitor in a tweeter's lead begins to act."""

from fractions import Fraction
from math import floor

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.pi import PI_HIGH, PI_LOW


def corner(ohm: Fraction, farad: Fraction) -> Range:
    """The frequency in Hz at which one capacitor halves the power into a load: 1/(2·pi·R·C), between two bounds."""
    return Range(1 / (2 * PI_HIGH * ohm * farad), 1 / (2 * PI_LOW * ohm * farad))


def corner_words(ohm: Fraction, farad: Fraction) -> str:
    """The corner as a shop says it, two digits: `about 850 Hz`, `about 5.9 kHz`."""
    hertz = corner(ohm, farad).low
    size = len(str(floor(hertz))) - 2
    step = Fraction(10) ** size
    rounded = round(hertz / step) * step
    if rounded >= 1000:
        return f"about {float(rounded / 1000):g} kHz"
    return f"about {float(rounded):g} Hz"
