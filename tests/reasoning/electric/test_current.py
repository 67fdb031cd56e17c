from fractions import Fraction
from typing import Any

from bezelbook.kinds.amplifier.record import Amplifier
from bezelbook.reasoning.electric.current import current, draw
from bezelbook.values.decimals import decimals
from tests.reasoning import making
from tests.reasoning.electric.ranges import span


def amplifier(*power: dict[str, Any], **content: Any) -> Amplifier:
    said = {"name": "amp", "origin": "added", "power": list(power)} | content
    made: Amplifier = making.record("amplifiers", "amp", said)
    return made


# Trade 4.9: 4 x 75 + 300 W at 0.8 and 13.8 V; common practice.
def test_six_hundred_watts_take_fifty_four_amps() -> None:
    assert decimals(current(Fraction(4 * 75 + 300), Fraction(8, 10)), 0) == "54"


def test_linear_takes_more_than_switching() -> None:
    assert current(Fraction(138), Fraction(1, 2)) == 20
    linear = draw(amplifier({"watts": "69 W", "load": "4 ohm"}, channels=2, amplifier_class="linear"))
    assert linear is not None
    assert linear.amps == span(20)
    assert linear.unknown == ()


def test_without_a_class_it_lies_between_the_two() -> None:
    drawn = draw(amplifier({"watts": "69 W", "load": "4 ohm"}, channels=2))
    assert drawn is not None
    assert drawn.amps == span(Fraction(25, 2), 20)
    assert drawn.unknown == ("switching or linear is not looked",)


def test_without_power_nothing_is_known() -> None:
    assert draw(amplifier()) is None


def test_of_several_loads_the_one_that_gives_most_counts() -> None:
    drawn = draw(
        amplifier(
            {"watts": "75 W", "load": "4 ohm", "channels": 4},
            {"watts": "110 W", "load": "2 ohm", "channels": 4},
            {"watts": "220 W", "load": "4 ohm", "bridged": "bridged"},
            channels=4,
            amplifier_class="switching",
        )
    )
    assert drawn is not None
    assert drawn.watts == 440


def test_a_bridged_line_that_says_no_number_is_for_half_the_channels() -> None:
    drawn = draw(amplifier({"watts": "300 W", "load": "4 ohm", "bridged": "bridged"}, channels=4))
    assert drawn is not None
    assert drawn.watts == 600
    odd = draw(amplifier({"watts": "300 W", "load": "4 ohm", "bridged": "bridged"}, channels=5))
    assert odd is not None
    assert odd.watts == 600, "the fifth has no other to be bridged with"


def test_a_single_line_that_says_no_number_is_for_all_channels() -> None:
    drawn = draw(amplifier({"watts": "50 W", "load": "4 ohm", "bridged": "single"}, channels=4))
    assert drawn is not None
    assert drawn.watts == 200


def test_a_line_that_says_its_own_number_is_for_those_channels() -> None:
    drawn = draw(amplifier({"watts": "100 W", "load": "2 ohm", "channels": 2}, channels=4))
    assert drawn is not None
    assert drawn.watts == 200


def test_nobody_knows_how_many_channels_is_said() -> None:
    drawn = draw(amplifier({"watts": "50 W", "load": "4 ohm"}, amplifier_class="switching"))
    assert drawn is not None
    assert drawn.watts == 50
    assert drawn.unknown == ("how many channels give it at once is not looked, and taken as one",)
