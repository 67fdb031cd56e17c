"""A quantity is read exactly as spoken, and everything else is refused."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity, pattern, read_quantity
from tests.values.spoken import SIZES, mangled, singles, with_give

MM = 1_000_000
INCH = 25_400_000

dimensions = st.sampled_from(sorted(SIZES))
any_single = dimensions.flatmap(lambda name: singles(name).map(lambda single: (name, *single)))
any_with_give = dimensions.flatmap(lambda name: with_give(name).map(lambda given_: (name, *given_)))


def is_read(text: str, dimension: str, *, signed: bool, sized: bool, plus_minus: bool) -> bool:
    try:
        read_quantity(text, dimension, signed=signed, sized=sized, plus_minus=plus_minus)
    except Wrong:
        return False
    return True


# What each text means is the trade's own list of spellings, worked out by hand.
@pytest.mark.parametrize(
    ("text", "nm"),
    [
        ("165 mm", 165 * MM),
        ("165mm", 165 * MM),
        ("165 MM", 165 * MM),
        ("165 Mm", 165 * MM),
        ("6 1/2 in", 165_100_000),
        ("6-1/2 in", 165_100_000),
        ("6–1/2 in", 165_100_000),
        ("6½ in", 165_100_000),
        ('6 ½"', 165_100_000),
        ('2-3/8"', 60_325_000),
        ("2 3⁄8 in", 60_325_000),
        ("6.5in", 165_100_000),
        ("6 inch", 6 * INCH),
        ("6 inches", 6 * INCH),
        ("6 in.", 6 * INCH),
        ("6″", 6 * INCH),
        ("6“", 6 * INCH),
        ("6”", 6 * INCH),
        ("6,5 mm", 6_500_000),
        ("1.000,5 mm", 1_000_500_000),
        ("1 000 mm", 1_000 * MM),
        ("05 in", 5 * INCH),
        ("1 ft 2 in", 14 * INCH),
        ("6' 2\"", 74 * INCH),
        ("1 ft 2½ in", 14 * INCH + INCH // 2),
        ("18.2 cm", 182 * MM),
        ("5.5 m", 5_500 * MM),
        ("1/64 in", 396_875),
        ("0 mm", 0),
        (" 165 mm ", 165 * MM),
    ],
)
def test_a_length_is_read_as_spoken(text: str, nm: int) -> None:
    assert read_quantity(text, "length") == Quantity("length", nm, give=None, by=None, typed=text)


@pytest.mark.parametrize(
    ("text", "dimension", "base"),
    [
        ("20 ohm", "resistance", 20_000_000),
        ("20 ohms", "resistance", 20_000_000),
        ("20 Ω", "resistance", 20_000_000),
        ("20 \u2126", "resistance", 20_000_000),
        ("10 W", "power", 10_000_000),
        ("1/4 W", "power", 250_000),
        ("1 h 45", "time", 6_300),
        ("1 h 45 min", "time", 6_300),
        ("95 min", "time", 5_700),
        ("1.5 h", "time", 5_400),
        ("1h05", "time", 3_900),
        ("1.2 kg", "mass", 1_200_000),
        ("300 g", "mass", 300_000),
        ("12.4 V", "voltage", 12_400_000),
        ("2 A", "current", 2_000_000),
        ("500 mA", "current", 500_000),
        ("15 deg", "angle", 15_000),
        ("15°", "angle", 15_000),
        ("10 µF", "capacitance", 10_000_000),
        ("10 \u03bcF", "capacitance", 10_000_000),
        ("10 uF", "capacitance", 10_000_000),
        ("45 s", "time", 45),
        ("90 sec", "time", 90),
        ("80 Hz", "frequency", 80_000),
        ("3.5 kHz", "frequency", 3_500_000),
        ("90.5 dB", "sensitivity", 90_500),
        ("70 °C", "temperature", 70_000),
        ("70C", "temperature", 70_000),
        ("40 %", "share", 40_000),
        ("40%", "share", 40_000),
    ],
)
def test_every_other_dimension_is_read_as_spoken(text: str, dimension: str, base: int) -> None:
    assert read_quantity(text, dimension).base == base


@pytest.mark.parametrize(
    "text", ["165 ± 1 mm", "165 mm ± 1 mm", "165 +/- 1 mm", "165±1mm", "165 mm +- 0.1 cm", "16.5 cm ± 1 mm"]
)
def test_a_give_is_read_with_one_unit_or_two(text: str) -> None:
    quantity = read_quantity(text, "length")
    assert (quantity.base, quantity.give) == (165 * MM, MM)


def test_a_fraction_may_be_a_give() -> None:
    quantity = read_quantity("6 1/2 ± 1/16 in", "length")
    assert (quantity.base, quantity.give) == (165_100_000, 1_587_500)


@pytest.mark.parametrize(
    ("text", "by"),
    [("165 mm caliper", "caliper"), ("165 ± 1 mm printed", "printed"), ("165 mm Printed", "printed"), ("165 mm", None)],
)
def test_a_size_says_how_it_is_known(text: str, by: str | None) -> None:
    assert read_quantity(text, "length", sized=True).by == by


@pytest.mark.parametrize(
    ("text", "nm"),
    [("−5 mm", -5 * MM), ("-5 mm", -5 * MM), ("–5 mm", -5 * MM), ("+5 mm", 5 * MM), ("- 1 ft 2 in", -14 * INCH)],
)
def test_a_sign_is_read_only_where_it_has_a_meaning(text: str, nm: int) -> None:
    assert read_quantity(text, "length", signed=True).base == nm
    assert not is_read(text, "length", signed=False, sized=False, plus_minus=True)


@pytest.mark.parametrize(
    "text",
    [
        *("165", "165 ± 1", "1,000 mm", "2-3 mm", "182 x 53 mm", "1/2 1/4 in", "5 mm mm", "mm", "nan mm", "5 nm"),
        *("50(1) mm", "6in 1/2", "165 ± 0 mm", "165 mm ± 0.0", "1/3 in", "19/8 in", "6.12345 in", "12345678 mm"),
        *("", "   ", "165 mm\n", "1e3 mm", "٣ mm", "165 mm caliper", "10 M", "6' 14\"", "1.2.3 mm", "6 - 1/2 in"),
    ],
)
def test_what_can_be_misread_is_refused(text: str) -> None:
    with pytest.raises(Wrong):
        read_quantity(text, "length")


@pytest.mark.parametrize(("text", "dimension"), [("1.125 h", "time"), ("0.25 min", "time"), ("0.1234 g", "mass")])
def test_no_number_is_read_that_base_units_cannot_hold(text: str, dimension: str) -> None:
    with pytest.raises(Wrong):
        read_quantity(text, dimension)


@given(any_single)
def test_a_quantity_has_the_value_that_arithmetic_gives_it(single: tuple[str, str, int]) -> None:
    dimension, text, base = single
    assert read_quantity(text, dimension) == Quantity(dimension, base, give=None, by=None, typed=text)


@given(any_with_give)
def test_a_give_has_the_value_that_arithmetic_gives_it(spread: tuple[str, str, int, int]) -> None:
    dimension, text, base, give = spread
    assert read_quantity(text, dimension) == Quantity(dimension, base, give=give, by=None, typed=text)


@given(st.integers(0, 9_999), st.integers(0, 11), st.integers(0, 63), st.sampled_from(["{} ft {} in", "{}' {}\""]))
def test_feet_and_inches_add_up(feet: int, inches: int, parts: int, shape: str) -> None:
    text = shape.format(feet, f"{inches} {parts}/64" if parts else inches)
    assert read_quantity(text, "length").base == (Fraction(12 * feet + inches) + Fraction(parts, 64)) * INCH


good = st.one_of(any_single.map(lambda item: item[1]), any_with_give.map(lambda item: item[1]))


@given(mangled(good) | good | st.text(max_size=12), dimensions, st.booleans(), st.booleans(), st.booleans())
def test_the_pattern_and_the_reader_agree_both_ways(
    text: str,
    dimension: str,
    signed: bool,  # noqa: FBT001
    sized: bool,  # noqa: FBT001
    plus_minus: bool,  # noqa: FBT001
) -> None:
    expression = pattern(dimension, signed=signed, sized=sized, plus_minus=plus_minus)
    read = is_read(text, dimension, signed=signed, sized=sized, plus_minus=plus_minus)
    assert (re.fullmatch(expression, text) is not None) == read
    assert (re.search(expression, text) is not None) == read, "an editor searches rather than matches"


@given(any_single)
def test_what_is_read_without_a_give_needs_none(single: tuple[str, str, int]) -> None:
    dimension, text, base = single
    assert read_quantity(text, dimension, plus_minus=False).base == base


@given(any_with_give)
def test_a_give_is_refused_where_none_belongs(spread: tuple[str, str, int, int]) -> None:
    with pytest.raises(Wrong):
        read_quantity(spread[1], spread[0], plus_minus=False)
