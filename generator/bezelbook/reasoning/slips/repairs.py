"""What a number outside the usual was probably meant to be: another unit, a point in the wrong place."""

import re
from fractions import Fraction

from bezelbook.values.quantity import Quantity
from bezelbook.values.shown import show_length, show_quantity
from bezelbook.values.unit import INCH

# Common practice, no source: what each dimension is mistyped as, by the factor that mends it.
LENGTHS = (
    ("inches", Fraction(254, 10)),
    ("centimetres", Fraction(10)),
    ("inches, the point slipped", Fraction(254, 100)),
)
SHORTER = {
    "in": (("millimetres", Fraction(10, 254)),),
    "cm": (("millimetres", Fraction(1, 10)),),
}
OTHERS = {
    "time": (("hours", Fraction(60)), ("seconds", Fraction(1, 60))),
    "resistance": (("thousandths", Fraction(1, 1000)),),
    "current": (("milliamps", Fraction(1, 1000)),),
    "voltage": (("millivolts", Fraction(1, 1000)),),
    "power": (),
}
# How far a decimal may be from a sixteenth of an inch and still have been read off a rule, in nanometres.
ROUNDED = INCH.size * 6 // 1000
SIXTEENTH = INCH.size // 16


def repairs(typed: Quantity, low: int, high: int) -> tuple[tuple[str, str], ...]:
    """What would be usual instead, as the word for it and the value read back, the likeliest first."""
    found = []
    for word, factor in _ways(typed):
        meant = int(typed.base * factor)
        if low <= meant <= high:
            found.append((word, _shown(typed, word, meant)))
    return tuple(found)


def off_the_rule(length: int) -> int:
    """The sixteenth of an inch that a length was read as, in nanometres, where it is that but for its decimals."""
    near = round(Fraction(length, SIXTEENTH)) * SIXTEENTH
    return near if abs(near - length) <= ROUNDED else length


def _ways(typed: Quantity) -> tuple[tuple[str, Fraction], ...]:
    if typed.dimension != "length":
        return OTHERS[typed.dimension]
    # A number in inches that is too long was millimetres; one in millimetres that is too short was something longer.
    inches = re.search(r"in|\"|″|”|“|''", typed.typed) is not None
    return SHORTER["in"] if inches else SHORTER["cm"] if "cm" in typed.typed else LENGTHS


def _shown(typed: Quantity, word: str, meant: int) -> str:
    if typed.dimension == "length":
        return show_length(off_the_rule(meant) if word.startswith("inches") else meant)
    return show_quantity(Quantity(typed.dimension, meant, None, None, ""))
