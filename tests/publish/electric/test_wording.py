from fractions import Fraction

from bezelbook.publish.electric.wording import amps_words, volts_words, watts_words
from bezelbook.reasoning.electric.amounts import Range


def test_a_current_is_whole_from_ten_amps_up() -> None:
    assert amps_words(Range(Fraction(544, 10), Fraction(544, 10))) == "54 A"
    assert amps_words(Range(Fraction(75, 10), Fraction(75, 10))) == "7.5 A"
    assert amps_words(Range(Fraction(1, 8), Fraction(10))) == "0 to 10 A"
    assert amps_words(Range(Fraction(27), Fraction(54))) == "27 to 54 A"


def test_a_drop_has_two_places_and_one_end_where_both_look_alike() -> None:
    assert volts_words(Range(Fraction(2658, 10000), Fraction(2659, 10000))) == "0.27 V"
    assert volts_words(Range(Fraction(1, 4), Fraction(1, 2))) == "0.25 to 0.5 V"


def test_heat_has_one_place_below_a_hundred_watts() -> None:
    assert watts_words(Fraction(5184, 1000)) == "5.2 W"
    assert watts_words(Fraction(9994, 100)) == "99.9 W"
    assert watts_words(Fraction(1004, 10)) == "100 W"
