from cmath import exp
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.channel import Hanging, sees
from tests.reasoning.electric.ranges import span


def hanging(ohm: int | None, *, high_only: bool = False) -> Hanging:
    load = None if ohm is None else Range(Fraction(ohm), Fraction(ohm))
    return Hanging("door", load, high_only)


def test_a_speaker_plays_everything_unless_it_is_said_not_to() -> None:
    assert sees([Hanging("door", span(4))], nothing_else=True).low_notes == span(4)


def test_two_speakers_on_one_channel_are_in_parallel() -> None:
    seen = sees([hanging(4), hanging(4)], nothing_else=True)
    assert seen.low_notes == seen.where_all_play == seen.least == span(2)


# Trade 4.7: a tweeter behind a capacitor does not halve the bass range, and can dip where both play; take the least.
def test_a_tweeter_behind_its_capacitor_counts_where_both_play_and_not_below() -> None:
    seen = sees([hanging(4), hanging(4, high_only=True)], nothing_else=True)
    assert seen.low_notes == span(4)
    assert seen.where_all_play == span(2)
    assert seen.least == span(2)


def test_a_tweeter_alone_loads_no_low_notes() -> None:
    seen = sees([hanging(4, high_only=True)], nothing_else=True)
    assert seen.low_notes is None
    assert seen.least == span(4)


def test_until_somebody_looked_what_else_hangs_there_nothing_is_known() -> None:
    seen = sees([hanging(4)], nothing_else=False)
    assert seen.low_notes is None
    assert seen.least is None


def test_one_load_that_nobody_read_leaves_all_of_it_unknown_but_what_it_does_not_touch() -> None:
    seen = sees([hanging(4), hanging(None, high_only=True)], nothing_else=True)
    assert seen.low_notes == span(4)
    assert seen.least is None
    assert sees([], nothing_else=True).least is None


@given(st.integers(1, 16), st.integers(1, 16), st.floats(-6, 6))
def test_no_note_sees_less_than_the_least_or_more_than_the_low_notes(woofer: int, tweeter: int, octave: float) -> None:
    # An oracle apart: the impedance of a resistance beside one behind a capacitor, as a complex number.
    behind = tweeter * (1 + exp(-octave) / 1j)
    impedance = abs(1 / (1 / complex(woofer) + 1 / behind))
    seen = sees([hanging(woofer), hanging(tweeter, high_only=True)], nothing_else=True)
    assert seen.least is not None
    assert seen.low_notes is not None
    assert float(seen.least.low) - 1e-9 <= impedance <= float(seen.low_notes.high) + 1e-9
