"""How much voltage a run of wire drops, and whether that is too much."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.conductor import Conductor

# The most a run may drop. Trade 4.9: common practice, without a source.
MOST_VOLTS = Fraction(1, 2)

Says = Literal["fine", "too much", "too close"]


@dataclass(frozen=True, slots=True)
class Drop:
    """The drop in V over a whole run, there and back, and whether it is at most half a volt."""

    volts: Range
    says: Says


def drop(amps: Range, wire: Conductor, metres: Fraction) -> Drop:
    """The drop over so many metres of a wire, the way back through the ground lead among them: I·R, at 20 °C.

    Where the draw or the metal is not known it spans both ends, and is too close when the limit lies between them.
    """
    volts = Range(amps.low * wire.per_metre.low * metres, amps.high * wire.per_metre.high * metres)
    return Drop(volts, _says(volts))


def _says(volts: Range) -> Says:
    if volts.high <= MOST_VOLTS:
        return "fine"
    return "too much" if volts.low > MOST_VOLTS else "too close"
