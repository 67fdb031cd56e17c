from fractions import Fraction

import pytest

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.least_load import Least, Says, Sight, limit_look, may_see, ohm, ohms
from bezelbook.reasoning.electric.wiring import ways
from bezelbook.values.quantity import Quantity, read_quantity


def typed(text: str) -> Quantity:
    return read_quantity(text, "resistance")


def load(low: int | str, high: int | str | None = None) -> Range:
    return Range(Fraction(low), Fraction(low if high is None else high))


USUAL = Least(typed("2 ohm"), typed("4 ohm"))


@pytest.mark.parametrize(
    ("seen", "single", "bridged"),
    [
        (load(4), "fine", "fine"),
        (load(2), "fine", "below the minimum"),
        (load(1), "below the minimum", "below the minimum"),
        (load("3.9"), "fine", "below the minimum"),
        (load(3, 5), "fine", "unknown"),
        (load(3, 4), "fine", "unknown"),
        (load("1.5", "2.5"), "unknown", "below the minimum"),
        (load(4, 5), "fine", "fine"),
    ],
)
def test_a_load_is_held_against_the_lowest_that_is_printed(seen: Range, single: Says, bridged: Says) -> None:
    assert may_see(seen, USUAL, "single").says == single
    assert may_see(seen, USUAL, "bridged").says == bridged


# Trade's worked result: two 2 ohm subwoofers on an amplifier that wants 4 ohm bridged.
def test_of_two_two_ohm_subwoofers_on_a_bridged_four_ohm_minimum_only_series_is_allowed() -> None:
    found = {way.words: may_see(way.comes_to, USUAL, "bridged") for way in ways(load(2), 2)}
    assert {words: sight.says for words, sight in found.items()} == {
        "in series": "fine",
        "in parallel": "below the minimum",
    }
    assert found["in parallel"].why == "1 ohm, and 4 ohm is the lowest it is made for bridged"


def test_a_load_that_nobody_knows_is_unknown_and_says_where_to_look() -> None:
    sight = may_see(None, USUAL, "single")
    look = "read it off the speakers, and see what else hangs there"
    assert sight == Sight("unknown", "the load is not known", look)


def test_a_limit_that_nobody_read_leaves_it_unknown() -> None:
    sight = may_see(load(4), Least(None, None), "single")
    assert (sight.says, sight.why) == ("unknown", "its lowest load single is not looked")
    assert (
        sight.look == limit_look("single") == "the lowest load single, printed on the amplifier or in its sheet, 2 min"
    )
    look = "the lowest load bridged, printed on the amplifier or in its sheet, 2 min"
    blank = may_see(load(4), Least(None, "not looked"), "bridged")
    assert blank == Sight("unknown", "its lowest load bridged is not looked", look)


def test_without_a_bridged_limit_half_the_load_is_held_against_the_single_one() -> None:
    only_single = Least(typed("2 ohm"), None)
    below = may_see(load(3), only_single, "bridged")
    assert below.says == "below the minimum"
    assert below.why == "each side sees half, 1.5 ohm, and 2 ohm is the lowest on one channel"
    assert may_see(load(4), only_single, "bridged").says == "unknown"


def test_what_cannot_be_bridged_is_not_answered_for() -> None:
    never = may_see(load(8), Least(typed("2 ohm"), "does not apply"), "bridged")
    assert never == Sight("does not apply", "it cannot be bridged")
    assert may_see(load(8), Least(typed("2 ohm"), "does not apply"), "single").says == "fine"


def test_a_load_that_its_plus_minus_leaves_open_is_too_near_to_tell() -> None:
    sight = may_see(load("1.5", "2.5"), USUAL, "single")
    assert sight.why == "1.5 ohm to 2.5 ohm, and 2 ohm is the lowest it is made for single: too near to tell"
    assert sight.look == "ohmmeter across the leads, amplifier unplugged, 2 min"
    assert may_see(load(4), USUAL, "single") == Sight("fine", "4 ohm, and 2 ohm is the lowest it is made for single")


def test_a_loose_limit_counts_at_the_end_that_is_safe() -> None:
    loose = Least(typed("2 ± 0.5 ohm"), None)
    assert may_see(load("2.5"), loose, "single").says == "fine"
    assert may_see(load(2), loose, "single").says == "unknown"
    assert may_see(load("1.4"), loose, "single").says == "below the minimum"
    # Half of 3 is not under what the single limit may be, half of 2.9 is.
    assert may_see(load(3), loose, "bridged").says == "unknown"
    assert may_see(load("2.9"), loose, "bridged").says == "below the minimum"


def test_a_load_in_words_says_about_where_two_places_lose_some() -> None:
    assert ohm(Fraction(8, 3)) == "about 2.67 ohm"
    assert ohms(load(2, 4)) == "2 ohm to 4 ohm"
    assert ohms(load(4)) == "4 ohm"
