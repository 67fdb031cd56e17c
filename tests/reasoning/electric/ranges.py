"""Ranges as a test writes them."""

from fractions import Fraction

from bezelbook.reasoning.electric.amounts import Range


def span(low: Fraction | int | str, high: Fraction | int | str | None = None) -> Range:
    """From the one number to the other, or just the one."""
    return Range(Fraction(low), Fraction(low if high is None else high))
