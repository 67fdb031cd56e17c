from fractions import Fraction

import pytest

from bezelbook.reasoning.electric.amounts import Range, above_zero, amount, between, spanning
from bezelbook.values.quantity import read_quantity
from tests.reasoning.electric.ranges import span


@pytest.mark.parametrize(
    ("typed", "dimension", "plain"),
    [
        ("4 ohm", "resistance", Fraction(4)),
        ("1.2 kohm", "resistance", Fraction(1200)),
        ("500 mA", "current", Fraction(1, 2)),
        ("13.8 V", "voltage", Fraction(69, 5)),
        ("1.5 kW", "power", Fraction(1500)),
        ("5.5 m", "length", Fraction(11, 2)),
        ("4.7 µF", "capacitance", Fraction(47, 10**7)),
        ("3.5 kHz", "frequency", Fraction(3500)),
    ],
)
def test_a_quantity_is_so_many_plain_units(typed: str, dimension: str, plain: Fraction) -> None:
    assert amount(read_quantity(typed, dimension)) == plain


def test_a_plus_minus_gives_two_ends() -> None:
    assert between(read_quantity("20 ± 1 ohm", "resistance")) == Range(Fraction(19), Fraction(21))
    sure = between(read_quantity("20 ohm", "resistance"))
    assert sure == span(20)
    assert sure.exact
    assert not between(read_quantity("20 ± 1 ohm", "resistance")).exact


def test_several_ranges_span_from_the_least_to_the_most() -> None:
    one, other = Range(Fraction(1), Fraction(3)), Range(Fraction(2), Fraction(5))
    assert spanning([one, other]) == span(1, 5)


@pytest.mark.parametrize("typed", ["0 ohm", "1 ± 1 ohm", "1 ± 2 ohm"])
def test_what_may_be_nothing_is_not_used_in_a_sum(typed: str) -> None:
    assert above_zero(read_quantity(typed, "resistance")) is None


def test_a_blank_is_not_used_in_a_sum() -> None:
    assert above_zero(None) is None
    assert above_zero(read_quantity("2 ohm", "resistance")) == span(2)
    assert above_zero(read_quantity("0.5 ohm", "resistance")) == span("0.5")
