"""Sines against an independent library: Python's own floating point, and the exact ones that everybody knows."""

from fractions import Fraction
from math import pi, sin

import pytest

from bezelbook.reasoning.speakers.sines import PI, sine


@pytest.mark.parametrize("share", [Fraction(part, 720) for part in range(0, 361, 7)])
def test_the_sine_lies_between_its_bounds_and_they_are_close(share: Fraction) -> None:
    low, high = sine(share)
    assert low <= high
    assert high - low < Fraction(1, 10**15)
    assert float(low) == pytest.approx(sin(float(share) * pi), abs=1e-14)


def test_exact_sines_lie_within() -> None:
    low, high = sine(Fraction(1, 6))
    assert low <= Fraction(1, 2) <= high
    for share, square in ((Fraction(1, 4), Fraction(1, 2)), (Fraction(1, 3), Fraction(3, 4))):
        low, high = sine(share)
        assert low**2 <= square <= high**2
    low, high = sine(Fraction(1, 2))
    assert low <= 1 <= high
    assert sine(Fraction(0)) == (Fraction(0), Fraction(0))


def test_pi_lies_between_archimedes_and_its_next_convergent() -> None:
    assert Fraction(223, 71) < Fraction(103993, 33102) < PI[0] < PI[1] < Fraction(104348, 33215)
