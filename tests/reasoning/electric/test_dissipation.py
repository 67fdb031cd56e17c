from fractions import Fraction

import pytest

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.dissipation import Enough, enough, heat_at_peak, heat_at_reading, rating_wanted
from bezelbook.values.decimals import decimals


def ohm(value: int, give: int = 0) -> Range:
    return Range(Fraction(value - give), Fraction(value + give))


# Trade 4.8: common practice without a source, and Joule's law.
def test_twenty_ohm_on_a_bridge_output_take_five_watts_clean_and_ten_square() -> None:
    heat = heat_at_peak(ohm(20))
    assert decimals(heat.sine, 1) == "5.2"
    assert decimals(heat.square, 1) == "10.4"


def test_twenty_ohm_on_a_boosted_amplifier_take_twenty_watts() -> None:
    assert heat_at_reading(ohm(20), Fraction(20)) == 20


def test_forty_seven_ohm_take_two_watts() -> None:
    assert decimals(heat_at_reading(ohm(47), Fraction(102, 10)), 1) == "2.2"


def test_the_lowest_that_its_plus_minus_allows_takes_the_most() -> None:
    assert heat_at_reading(ohm(20, 1), Fraction(19)) == 19
    assert heat_at_peak(ohm(20, 1), Fraction(19)).square == 19


def test_a_rating_is_the_next_preferred_one_from_twice_the_heat() -> None:
    assert rating_wanted(Fraction(52, 10)) == 12
    assert rating_wanted(Fraction(5)) == 10
    assert rating_wanted(Fraction(501, 100)) == 12


@pytest.mark.parametrize(
    ("rated", "said"),
    [
        (None, "not looked"),
        (Fraction(25), "enough"),
        (Fraction(20736, 1000), "enough"),
        (Fraction(20735, 1000), "enough for clean sound only"),
        (Fraction(10368, 1000), "enough for clean sound only"),
        (Fraction(10), "too small"),
    ],
)
def test_a_rating_is_held_against_twice_what_is_expected(rated: Fraction | None, said: Enough) -> None:
    # 14.4² / 20 = 10.368 W square, half of that as a sine.
    assert enough(rated, heat_at_peak(ohm(20))) == said
