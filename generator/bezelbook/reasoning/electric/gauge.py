"""How much copper a wire of a gauge number holds."""

from collections.abc import Iterator
from fractions import Fraction
from functools import cache

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.pi import PI_HIGH, PI_LOW

# From 4/0 to 40; 1/0 is 0, 2/0 is -1 and so on.
THICKEST, THINNEST = -3, 40
# Twenty decimals of the root are more than any figure that is shown or compared.
_SCALE = 10**20
# (0.127 mm)², the square of the diameter of number 36.
_SQUARE_OF_36 = Fraction(127, 1000) ** 2


def gauge_number(words: str) -> int:
    """The number of a gauge as written, `4`, `1/0` or `4/0`."""
    many, _, noughts = words.partition("/")
    return 1 - int(many) if noughts else int(many)


def gauge_words(number: int) -> str:
    """A gauge as a shop writes it, `4 AWG` or `1/0 AWG`."""
    return f"{number} AWG" if number > 0 else f"{1 - number}/0 AWG"


@cache
def copper_in(number: int) -> Range:
    """The area in mm² of a solid wire of this gauge, between two bounds some 10^-19 of it apart.

    The diameter is 0.005 in at number 36 and grows by the 39th root of 92 with each number less (NBS Handbook 100,
    section 2.1; ASTM B258), so that number 4/0 has 0.46 in.
    """
    power = Fraction(92) ** (2 * (36 - number))
    root = _root_39(power.numerator * _SCALE**39 // power.denominator)
    square_low, square_high = (_SQUARE_OF_36 * Fraction(one, _SCALE) for one in (root, root + 1))
    return Range(PI_LOW / 4 * square_low, PI_HIGH / 4 * square_high)


def gauges_within(square_mm: Fraction) -> Iterator[int]:
    """The gauges that hold no more copper than this, thickest first."""
    return (number for number in range(THICKEST, THINNEST + 1) if copper_in(number).high <= square_mm)


def _root_39(value: int) -> int:
    """The largest whole number whose 39th power is no more than the value, by Newton's method from above."""
    root = 1 << (value.bit_length() // 39 + 1)
    while True:
        step = (38 * root + value // root**38) // 39
        if step >= root:
            return root
        root = step
