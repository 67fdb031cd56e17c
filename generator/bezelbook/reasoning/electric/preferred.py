"""The preferred values that resistors come in, and which of them is next to a wanted one."""

from fractions import Fraction
from typing import Literal

Series = Literal["E3", "E6", "E12", "E24"]

# IEC 60063, in tenths: the members from 1 up to 10.
_TENTHS: dict[Series, tuple[int, ...]] = {
    "E3": (10, 22, 47),
    "E6": (10, 15, 22, 33, 47, 68),
    "E12": (10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82),
    "E24": (10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91),
}


def no_less(wanted: Fraction, series: Series) -> Fraction:
    """The smallest preferred value that is no less than the wanted one, which is above 0."""
    decade = _decade(wanted)
    every = [*(_value(tenth, decade) for tenth in _TENTHS[series]), 10 * decade]
    return next(value for value in every if value >= wanted)


def no_more(wanted: Fraction, series: Series) -> Fraction:
    """The largest preferred value that is no more than the wanted one, which is above 0."""
    decade = _decade(wanted)
    return max(value for tenth in _TENTHS[series] if (value := _value(tenth, decade)) <= wanted)


def nearest(wanted: Fraction, series: Series) -> Fraction:
    """The preferred value that is nearest to the wanted one, which is above 0; the smaller of two as near."""
    return min(no_more(wanted, series), no_less(wanted, series), key=lambda value: abs(value - wanted))


def _value(tenth: int, decade: Fraction) -> Fraction:
    return Fraction(tenth, 10) * decade


def _decade(wanted: Fraction) -> Fraction:
    """The power of ten that is no more than the wanted value and above a tenth of it."""
    decade = Fraction(1)
    while decade > wanted:
        decade /= 10
    while decade * 10 <= wanted:
        decade *= 10
    return decade
