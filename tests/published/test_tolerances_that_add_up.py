"""Sizes with tolerances added at their worst, against published stacks.

The pocket, 20.2 ± 0.05 mm with three parts in it, and ten parts of ± 0.1 mm: read on two public teaching pages on
tolerance analysis. The shaft in its housing: K. W. Chase, Tolerance Allocation Methods for Designers, ADCATS Report
99-6 (Brigham Young University), from memory; what was computed from it agrees. Root sums, which the same sources print
beside, are not used here: a shop that trusts them is short once in a while.
"""

from fractions import Fraction

import pytest

from bezelbook.reasoning.screens.between import NOTHING, Between

# Each part with its sign, its size and its tolerance; then the gap and its worst case, as printed.
STACKS = {
    "pocket": ((("+", "20.2", "0.05"), ("-", "6.0", "0.1"), ("-", "9.0", "0.12"), ("-", "5.0", "0.08")), "0.2", "0.35"),
    "ten equal": ((("+", "0", "0.1"),) * 10, "0", "1.0"),
    "shaft in its housing": (
        (
            ("-", "0.0505", "0.0015"),
            ("+", "8.0", "0.008"),
            ("-", "0.5093", "0.0025"),
            ("+", "0.4", "0.002"),
            ("-", "7.711", "0.006"),
            ("+", "0.4", "0.002"),
            ("-", "0.5093", "0.0025"),
        ),
        "0.0199",
        "0.0245",
    ),
}


@pytest.mark.parametrize("name", STACKS)
def test_a_stack_is_as_wide_as_published(name: str) -> None:
    parts, gap, worst = STACKS[name]
    total = NOTHING
    for sign, size, give in parts:
        part = Between(Fraction(size) - Fraction(give), Fraction(size) + Fraction(give))
        total = total.plus(part) if sign == "+" else total.minus(part)
    assert total == Between(Fraction(gap) - Fraction(worst), Fraction(gap) + Fraction(worst))


def test_the_pocket_may_be_too_small_by_what_is_printed() -> None:
    """The page prints a gap from -0.15 to 0.55 mm."""
    total = Between(Fraction("20.15"), Fraction("20.25"))
    for size, give in (("6.0", "0.1"), ("9.0", "0.12"), ("5.0", "0.08")):
        total = total.minus(Between(Fraction(size) - Fraction(give), Fraction(size) + Fraction(give)))
    assert (total.low, total.high) == (Fraction("-0.15"), Fraction("0.55"))
