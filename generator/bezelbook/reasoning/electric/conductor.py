"""What a metre of wire resists, by its size and its metal."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from bezelbook.reasoning.electric.amounts import Range, spanning
from bezelbook.reasoning.electric.gauge import copper_in, gauge_number, gauge_words, gauges_within
from bezelbook.values.decimals import decimals

Metal = Literal["copper", "copper-clad aluminium"]

# 100 % IACS copper at 20 °C carries 58 m/(ohm mm²), exact by definition (IEC 60028; NBS Handbook 100, section 1.1).
CONDUCTIVITY = 58
# What a degree Celsius adds to its resistance at 20 °C (NBS Handbook 100).
PER_DEGREE = Fraction(393, 100_000)
# Copper-clad aluminium against copper of the same size. Trade 4.9: common practice, without a source.
CLAD = Range(Fraction(15, 10), Fraction(16, 10))


@dataclass(frozen=True, slots=True)
class Conductor:
    """A wire: its copper in mm², the gauge that it is or the thickest that is no thicker, and ohm a metre at 20 °C.

    `per_metre` spans what it may be where the `metal` is None, not looked. `gauge` is None for wire under number 40.
    """

    size: str
    metal: Metal | None
    gauge: int | None
    square_mm: Range
    per_metre: Range

    @property
    def words(self) -> str:
        """Its size in both ways of saying it, `4 AWG, 21.15 mm²`."""
        if self.size.endswith("AWG"):
            return f"{self.size}, {decimals(self.square_mm.low, 2)} mm²"
        near = f", at least {gauge_words(self.gauge)}" if self.gauge is not None else ""
        return f"{decimals(self.square_mm.low, 3)} mm²{near}"


def conductor(size: str, metal: Metal | None = "copper") -> Conductor:
    """The wire of a size as a record writes it, `4 AWG` or `21 mm2`; with None as metal it may be either.

    The figures are of solid copper. A stranded wire sold by its mm² may resist a sixth more: IEC 60228 allows it.
    """
    if size.endswith("AWG"):
        gauge: int | None = gauge_number(size.removesuffix("AWG").strip())
        square = copper_in(gauge or 0)
    else:
        area = Fraction(size.replace("²", "2").removesuffix("mm2").strip())
        square, gauge = Range(area, area), next(gauges_within(area), None)
    return Conductor(size, metal, gauge, square, _of_metal(_of_copper(square), metal))


def at_temperature(ohm: Fraction, celsius: Fraction) -> Fraction:
    """What copper of so many ohm at 20 °C has at another temperature: R·(1 + 0.00393·(t - 20))."""
    return ohm * (1 + PER_DEGREE * (celsius - 20))


def _of_copper(square: Range) -> Range:
    return Range(1 / (CONDUCTIVITY * square.high), 1 / (CONDUCTIVITY * square.low))


def _of_metal(copper: Range, metal: Metal | None) -> Range:
    clad = Range(copper.low * CLAD.low, copper.high * CLAD.high)
    if metal is None:
        return spanning([copper, clad])
    return copper if metal == "copper" else clad
