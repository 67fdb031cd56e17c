from fractions import Fraction
from math import pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.electric.capacitor import corner, corner_words


# Trade 4.7, at 4 ohm: common practice, and 1/(2·pi·R·C).
@pytest.mark.parametrize(
    ("microfarad", "words"),
    [
        ("47", "about 850 Hz"),
        ("22", "about 1.8 kHz"),
        ("10", "about 4 kHz"),
        ("6.8", "about 5.9 kHz"),
        ("4.7", "about 8.5 kHz"),
        ("39.8", "about 1 kHz"),
        ("4700", "about 8.5 Hz"),
        ("0.5", "about 80 kHz"),
        ("40000", "about 1 Hz"),
    ],
)
def test_a_capacitor_acts_from_a_corner(microfarad: str, words: str) -> None:
    assert corner_words(Fraction(4), Fraction(microfarad) / 10**6) == words


@given(st.integers(1, 64), st.integers(1, 10**4))
def test_the_corner_lies_between_its_bounds(ohm: int, tenths_of_a_microfarad: int) -> None:
    farad = Fraction(tenths_of_a_microfarad, 10**7)
    low, high = corner(Fraction(ohm), farad)
    assert low < high
    assert float(low) == pytest.approx(1 / (2 * pi * ohm * float(farad)), rel=1e-12)
    assert high - low < low / 10**15
