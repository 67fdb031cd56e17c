from fractions import Fraction

import pytest

from bezelbook.reasoning.electric.conductor import at_temperature, conductor
from bezelbook.values.decimals import decimals


# Trade 4.9, milliohm a metre: common practice, and the law of the gauge.
@pytest.mark.parametrize(
    ("size", "milliohm"),
    [
        ("1/0 AWG", "0.32"),
        ("2 AWG", "0.51"),
        ("4 AWG", "0.82"),
        ("8 AWG", "2.06"),
        ("10 AWG", "3.28"),
        ("12 AWG", "5.21"),
        ("14 AWG", "8.29"),
        ("16 AWG", "13.2"),
        ("18AWG", "20.9"),
    ],
)
def test_a_metre_resists_as_much_as_shops_say(size: str, milliohm: str) -> None:
    assert decimals(conductor(size).per_metre.low * 1000, len(milliohm.partition(".")[2])) == milliohm


def test_a_square_millimetre_is_exact() -> None:
    wire = conductor("21 mm2")
    assert wire.per_metre == (Fraction(1, 58 * 21), Fraction(1, 58 * 21))
    assert wire.gauge == 5
    assert conductor("21 mm²").per_metre == wire.per_metre
    assert conductor("2.5mm2").square_mm == (Fraction(5, 2), Fraction(5, 2))


# Trade 4.9: 1.5 to 1.6 times; common practice.
def test_clad_aluminium_resists_half_as_much_again_and_more() -> None:
    copper, clad = conductor("10 mm2").per_metre, conductor("10 mm2", "copper-clad aluminium").per_metre
    assert clad == (copper.low * Fraction(3, 2), copper.high * Fraction(8, 5))
    assert conductor("10 mm2", None).per_metre == (copper.low, clad.high)


def test_its_size_is_said_both_ways() -> None:
    assert conductor("4 AWG").words == "4 AWG, 21.15 mm²"
    assert conductor("21 mm2").words == "21 mm², at least 5 AWG"
    assert conductor("0.001 mm2").words == "0.001 mm²"
    # From memory: number 27 has 0.102 mm², number 26 has 0.129 mm².
    assert conductor("0.1236 mm2").words == "0.124 mm², at least 27 AWG"
    assert conductor("0.001 mm2").gauge is None


def test_a_wire_of_number_nought_is_one_nought() -> None:
    assert conductor("0 AWG").square_mm == conductor("1/0 AWG").square_mm


def test_at_twenty_degrees_nothing_changes() -> None:
    assert at_temperature(Fraction(3), Fraction(20)) == 3
    assert at_temperature(Fraction(1), Fraction(120)) == Fraction(1393, 1000)
