"""By how many decibels power changes when a speaker of one impedance takes the place of another."""

from fractions import Fraction


def tenths_of_a_decibel(ratio: Fraction) -> int:
    """Ten times the decibels that a ratio of powers above 0 is, 10·log10(ratio), rounded to the nearest whole.

    Exact: n is nearest where 10^(2n-1) < ratio^200 < 10^(2n+1), compared as whole numbers; no ratio of whole numbers
    lies on such a bound. The decibel is a tenth of the logarithm to ten of a ratio of powers (ISO 80000-3:2006).
    """
    power = ratio**200
    # The number of digits says n to within a few; from there one step at a time.
    nearest = (len(str(power.numerator)) - len(str(power.denominator))) // 2
    while power > _ten_to(2 * nearest + 1):
        nearest += 1
    while power < _ten_to(2 * nearest - 1):
        nearest -= 1
    return nearest


def power_change(before: Fraction, after: Fraction) -> str:
    """What becomes of the power at an equal voltage when ohms `before` become ohms `after`, both above 0."""
    tenths = tenths_of_a_decibel(before / after)
    if tenths == 0:
        return "the same power at the same setting"
    way = "more" if tenths > 0 else "less"
    return f"{abs(tenths) // 10}.{abs(tenths) % 10} dB {way} at the same setting"


def _ten_to(exponent: int) -> Fraction:
    return Fraction(10) ** exponent
