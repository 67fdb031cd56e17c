from fractions import Fraction
from typing import Any

import pytest

from bezelbook.kinds.pieces import Filter
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.speaker import coil, coil_ways, high_only, nominal_from_meter
from tests.reasoning import making
from tests.reasoning.electric.ranges import span


def speaker(**content: Any) -> Speaker:
    said = {"name": "one", "speaker_kind": "coaxial", "nominal": "6 in"} | content
    made: Speaker = making.record("speakers", "one", said)
    return made


def test_a_load_that_nobody_read_is_unknown() -> None:
    assert coil(speaker()) is None
    assert coil_ways(speaker(voice_coils=2)) == ()
    assert coil(speaker(impedance="0 ohm")) is None


def test_a_speaker_of_several_coils_is_several_loads() -> None:
    assert [way.comes_to for way in coil_ways(speaker(impedance="4 ohm"))] == [span(4)]
    assert [way.comes_to for way in coil_ways(speaker(impedance="4 ohm", voice_coils=2))] == [span(8), span(2)]


# Trade 4.7: what a meter reads is 0.8 to 0.9 of nominal; common practice.
def test_a_meters_reading_points_at_a_nominal_between_two_bounds() -> None:
    points_at = nominal_from_meter(Range(Fraction(36, 10), Fraction(36, 10)))
    assert points_at == span(4, Fraction(9, 2))
    loose = nominal_from_meter(Range(Fraction(18, 10), Fraction(36, 10)))
    assert loose == span(2, Fraction(9, 2))


@pytest.mark.parametrize(
    ("filter_", "high"),
    [
        (Filter(lets_through="high"), True),
        (Filter(lets_through="low"), False),
        (Filter(lets_through="a band"), False),
        (Filter(), False),
        ("not there", False),
        (None, False),
    ],
)
def test_only_what_lets_the_high_notes_through_alone_takes_the_load_off_the_low_ones(
    filter_: object, *, high: bool
) -> None:
    assert high_only([filter_]) is high
    assert high_only([None, filter_]) is high


def test_a_capacitor_alone_lets_the_high_notes_through() -> None:
    with_it = speaker(filter_supplied={"capacitor": "4.7 µF"})
    assert high_only([with_it.filter_supplied])
    low = speaker(filter_supplied={"capacitor": "4.7 µF", "lets_through": "low"})
    assert not high_only([low.filter_supplied])
    assert not high_only([])
