from fractions import Fraction
from itertools import pairwise

import pytest

from bezelbook.reasoning.electric.gauge import copper_in, gauge_number, gauge_words, gauges_within
from bezelbook.reasoning.electric.pi import PI_HIGH, PI_LOW


@pytest.fixture(autouse=True)
def worked_out_anew() -> None:
    """What any test before has left is forgotten, so that these see it worked out."""
    copper_in.cache_clear()


@pytest.mark.parametrize(("words", "number"), [("4", 4), ("0", 0), ("1/0", 0), ("2/0", -1), ("4/0", -3), ("40", 40)])
def test_a_gauge_has_a_number(words: str, number: int) -> None:
    assert gauge_number(words) == number


def test_a_number_is_a_gauge_again() -> None:
    assert [gauge_words(number) for number in (-3, -1, 0, 1, 16)] == [
        "4/0 AWG",
        "2/0 AWG",
        "1/0 AWG",
        "1 AWG",
        "16 AWG",
    ]
    assert [gauge_number(gauge_words(number).split()[0]) for number in range(-3, 41)] == [*range(-3, 41)]


# Trade 4.9: common practice, and the law of the gauge.
@pytest.mark.parametrize(
    ("gauge", "square"), [(4, "21"), (8, "8.4"), (10, "5.3"), (12, "3.3"), (16, "1.3"), (18, "0.82")]
)
def test_a_gauge_holds_about_as_much_copper_as_shops_say(gauge: int, square: str) -> None:
    assert float(copper_in(gauge).low) == pytest.approx(float(square), rel=0.01)


def test_no_gauge_holds_more_than_the_one_before() -> None:
    areas = [copper_in(number) for number in range(-3, 41)]
    assert all(thick.low > thin.high for thick, thin in pairwise(areas))


def test_a_square_of_copper_is_at_least_the_gauges_that_hold_no_more() -> None:
    assert next(gauges_within(Fraction(21))) == 5
    assert next(gauges_within(Fraction(22))) == 4
    assert next(gauges_within(Fraction(500))) == -3
    assert [*gauges_within(Fraction(1, 1000))] == []
    assert [*gauges_within(copper_in(40).high)] == [40]


# The law of the gauge itself (NBS Handbook 100, section 2.1): the 39th power of the square of a diameter is whole.
@pytest.mark.parametrize("number", range(-3, 41))
def test_the_law_of_the_gauge_lies_between_the_bounds(number: int) -> None:
    square = Fraction(127, 1000) ** 2
    low, high = copper_in(number).low * 4 / PI_LOW / square, copper_in(number).high * 4 / PI_HIGH / square
    assert low**39 <= Fraction(92) ** (2 * (36 - number)) < high**39
    assert high - low == Fraction(1, 10**20)
