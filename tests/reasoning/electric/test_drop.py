from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.conductor import conductor
from bezelbook.reasoning.electric.current import current
from bezelbook.reasoning.electric.drop import Drop, Says, drop
from bezelbook.values.decimals import decimals

SIX_HUNDRED_WATTS = current(Fraction(600), Fraction(8, 10))


def dropped(amps: Fraction | int, size: str, metres: Fraction) -> Drop:
    return drop(Range(Fraction(amps), Fraction(amps)), conductor(size), metres)


# Trade 4.9 and 13: 600 W, 5.5 m and 0.5 m of ground; common practice.
def test_four_gauge_drops_a_quarter_of_a_volt_and_eight_gauge_too_much() -> None:
    run = Fraction(55, 10) + Fraction(5, 10)
    four, eight = (dropped(SIX_HUNDRED_WATTS, size, run) for size in ("4 AWG", "8 AWG"))
    assert (decimals(four.volts.high, 2), four.says) == ("0.27", "fine")
    assert (decimals(eight.volts.low, 2), eight.says) == ("0.67", "too much")


@pytest.mark.parametrize(
    ("metres", "says"),
    [(Fraction(29), "fine"), (Fraction(2901, 100), "too much")],
)
def test_half_a_volt_is_the_most(metres: Fraction, says: Says) -> None:
    # 1 mm² is exactly 1/58 ohm a metre: 29 m of it at 1 A drop exactly half a volt.
    assert dropped(1, "1 mm2", metres).says == says


def test_a_metal_that_nobody_looked_at_may_leave_it_open() -> None:
    one = Range(Fraction(1), Fraction(1))
    assert drop(one, conductor("1 mm2", None), Fraction(20)).says == "too close"
    assert drop(one, conductor("1 mm2", None), Fraction(18)).says == "fine"
    # From exactly half a volt up: it may be the most that is allowed, or more.
    assert drop(Range(Fraction(1), Fraction(2)), conductor("1 mm2"), Fraction(29)).says == "too close"
    assert drop(one, conductor("1 mm2", None), Fraction(30)).says == "too much"
    assert drop(Range(Fraction(1), Fraction(2)), conductor("1 mm2"), Fraction(15)).volts == (
        Fraction(15, 58),
        Fraction(30, 58),
    )


@given(st.integers(1, 200), st.integers(-3, 20), st.integers(1, 20))
def test_a_thicker_wire_never_drops_more(amps: int, gauge: int, metres: int) -> None:
    thick, thin = (dropped(amps, f"{size} AWG", Fraction(metres)) for size in (gauge_of(gauge), gauge_of(gauge + 1)))
    assert thick.volts.high < thin.volts.low


def gauge_of(number: int) -> str:
    return str(number) if number > 0 else f"{1 - number}/0"
