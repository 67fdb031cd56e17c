"""By how many decibels power changes when a speaker of one impedance takes the place of another."""

from fractions import Fraction


def tenths_of_a_decibel(ratio: Fraction) -> int:
    """Ten times the decibels that a ratio of powers above 0 is, 10·log10(ratio), rounded to the nearest whole.

    Exact: n is nearest where 10^(2n-1) < ratio^200 < 10^(2n+1), compared as whole numbers; no ratio of whole numbers
    lies on such a bound. The decibel is a tenth of the logarithm to ten of a ratio of powers (ISO 80000-3:2006).
    """
    power = ratio**200
    # Twice to the power of this is less than it, and lg 2 lies between 0.30 and 0.31: so the start is not above n.
    twos = power.numerator.bit_length() - power.denominator.bit_length() - 1
    nearest = twos * (30 if twos > 0 else 31) // 200
    while power > _ten_to(2 * nearest + 1):
        nearest += 1
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
