"""Lengths are shown in both units, times in hours and minutes, everything with its ±."""

from decimal import ROUND_HALF_EVEN, Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.values.quantity import read_quantity
from bezelbook.values.shown import show_inch, show_length, show_minutes, show_mm, show_quantity


# The first is the trade's own example; the others follow from 25.4 mm to the inch.
@pytest.mark.parametrize(
    ("nm", "mm_first", "inch_first"),
    [
        (60_325_000, "60.3 mm (2 3/8 in)", "2 3/8 in (60.3 mm)"),
        (165_000_000, "165 mm (6.50 in)", "6.50 in (165 mm)"),
        (165_100_000, "165.1 mm (6 1/2 in)", "6 1/2 in (165.1 mm)"),
        (254_000_000, "254 mm (10 in)", "10 in (254 mm)"),
        (3_175_000, "3.2 mm (1/8 in)", "1/8 in (3.2 mm)"),
        (0, "0 mm (0 in)", "0 in (0 mm)"),
        (-12_700_000, "-12.7 mm (-1/2 in)", "-1/2 in (-12.7 mm)"),
        (-5_000_000, "-5 mm (-0.20 in)", "-0.20 in (-5 mm)"),
    ],
)
def test_a_length_is_shown_in_both_units(nm: int, mm_first: str, inch_first: str) -> None:
    assert show_length(nm) == mm_first
    assert show_length(nm, "in") == inch_first


@pytest.mark.parametrize(
    ("nm", "shown"), [(250_000, "0.2 mm"), (350_000, "0.4 mm"), (949_999, "0.9 mm"), (950_000, "1 mm")]
)
def test_half_a_tenth_goes_to_even(nm: int, shown: str) -> None:
    assert show_mm(nm) == shown


@given(st.integers(-(10**12), 10**12))
def test_millimetres_are_never_off_by_more_than_half_a_tenth(nm: int) -> None:
    expected = (Decimal(nm) / 10**6).quantize(Decimal("0.1"), ROUND_HALF_EVEN)
    assert Decimal(show_mm(nm).removesuffix(" mm")) == expected


@given(st.integers(0, 10_000))
def test_a_64th_of_an_inch_is_shown_exactly_and_read_back(parts: int) -> None:
    nm = parts * 396_875
    assert read_quantity(show_inch(nm), "length").base == nm


@pytest.mark.parametrize(
    ("seconds", "shown"),
    [
        (5_700, "1 h 35"),
        (7_200, "2 h"),
        (2_100, "35 min"),
        (0, "0 min"),
        (3_900, "1 h 05"),
        (3_599, "1 h"),
        (90, "2 min"),
    ],
)
def test_a_time_is_shown_to_the_minute(seconds: int, shown: str) -> None:
    assert show_minutes(seconds) == shown


@pytest.mark.parametrize(
    ("text", "dimension", "shown"),
    [
        ("165 ± 1 mm", "length", "165 mm (6.50 in) ± 1 mm (0.04 in)"),
        ("165 mm", "length", "165 mm (6.50 in)"),
        ("95 min", "time", "1 h 35"),
        ("45 s", "time", "45 s"),
        ("90 s", "time", "90 s"),
        ("60 s", "time", "1 min"),
        ("130 s", "time", "2 min"),
        ("2500 Hz", "frequency", "2.5 kHz"),
        ("40%", "share", "40 %"),
        ("20 ohm", "resistance", "20 ohm"),
        ("20 ± 0.5 ohm", "resistance", "20 ± 0.5 ohm"),
        ("1500 ohm", "resistance", "1.5 kohm"),
        ("500 mA", "current", "500 mA"),
        ("0 A", "current", "0 A"),
        ("1200 g", "mass", "1.2 kg"),
        ("12.40 V", "voltage", "12.4 V"),
        ("15 degrees", "angle", "15 deg"),
        ("100 W", "power", "100 W"),
        ("4.7 uF", "capacitance", "4.7 µF"),
    ],
)
def test_a_quantity_is_shown_in_the_unit_that_suits_it(text: str, dimension: str, shown: str) -> None:
    assert show_quantity(read_quantity(text, dimension)) == shown


def test_a_quantity_of_length_is_shown_with_the_shop_s_unit_first() -> None:
    assert show_quantity(read_quantity("6 1/2 in", "length"), "in") == "6 1/2 in (165.1 mm)"
