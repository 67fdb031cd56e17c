"""What the page of a resistor, or of a lead with one in it, says of heat and of where it belongs."""

from dataclasses import dataclass
from fractions import Fraction

from bezelbook.publish.electric.wording import watts_words
from bezelbook.reasoning.electric.amounts import Range, above_zero, amount, between
from bezelbook.reasoning.electric.dissipation import Heat, enough, heat_at_peak, heat_at_reading, rating_wanted
from bezelbook.reasoning.electric.resistor_place import FIXED, WHERE
from bezelbook.values.decimals import decimals
from bezelbook.values.quantity import Quantity

# A factory amplifier with a booster, as a meter reads it. Trade 4.8: common practice, without a source.
BOOSTED_VOLTS = Fraction(20)
ENOUGH_WORDS = {
    "enough": "which is enough for all of these up to 14.4 V",
    "enough for clean sound only": "which is enough for clean sound, and too small for an amplifier driven too far",
    "too small": "which is too small even for clean sound",
    "not looked": "so whether it stands this is unknown",
}


@dataclass(frozen=True, slots=True)
class HeatPart:
    """The heat of one resistor in words, case by case, whether its rating is enough, and where it belongs."""

    rows: tuple[tuple[str, str, str], ...]
    rated: str
    where: tuple[str, ...]


def heat_part(value: Quantity, rated: Quantity | None, metered: Quantity | None = None) -> HeatPart | None:
    """The heat in a resistor of this value; None when it may be 0 ohm, and then no sum holds.

    `metered` is what the amplifier was metered to give, loud: where that is more than is taken for granted, the
    rated power is held against it.
    """
    ohm = above_zero(value)
    if ohm is None:
        return None
    usual = heat_at_peak(ohm)
    read = heat_at_reading(ohm, between(metered).high) if metered else Fraction(0)
    heat = Heat(max(usual.sine, read), max(usual.square, read))
    said = f"It is rated {rated.typed}" if rated else "What it is rated for is not looked"
    words = f"{said}, {ENOUGH_WORDS[enough(amount(rated) if rated else None, heat)]}."
    loud = [(f"output metered here, loud, {metered.typed}", read)] if metered and read else []
    return HeatPart(tuple(_rows([*_cases(ohm, usual), *loud])), words, (WHERE, FIXED))


def _cases(ohm: Range, heat: Heat) -> list[tuple[str, Fraction]]:
    return [
        ("output on 14.4 V, clean sine", heat.sine),
        ("output on 14.4 V, driven fully square", heat.square),
        ("boosted amplifier, 20 V on the meter", heat_at_reading(ohm, BOOSTED_VOLTS)),
    ]


def _rows(cases: list[tuple[str, Fraction]]) -> list[tuple[str, str, str]]:
    return [(case, watts_words(watts), f"{decimals(rating_wanted(watts), 2)} W or more") for case, watts in cases]
