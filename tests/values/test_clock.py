"""A clock position is one of the 720 minutes of a dial, written the way people point."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from bezelbook.values.clock import CLOCK_PATTERN, Clock, clock_complaint, is_clock, minutes_of

CLOCKS = TypeAdapter(Clock)


def test_every_minute_of_a_dial_can_be_written_and_is_its_own() -> None:
    written = [f"{hour}:{minute:02}" for hour in range(1, 13) for minute in range(60)]
    assert all(is_clock(text) for text in written)
    assert sorted(minutes_of(text) for text in written) == list(range(720))


@pytest.mark.parametrize(
    ("text", "minutes"), [("12 o'clock", 0), ("3 o'clock", 180), ("6 o'clock", 360), ("1:30", 90), ("12:00", 0)]
)
def test_two_minutes_of_the_dial_are_a_degree_on_the_thing(text: str, minutes: int) -> None:
    assert minutes_of(text) == minutes


@pytest.mark.parametrize("text", ["13 o'clock", "0 o'clock", "1:60", "01:30", "6", "6 o'clock\n", "six", ""])
def test_nothing_else_is_one(text: str) -> None:
    assert not is_clock(text)
    assert clock_complaint(text)


@given(st.text(max_size=12) | st.from_regex(r"[0-9]{1,2}( o'clock|:[0-9]{2})\n?", fullmatch=True))
def test_the_pattern_and_the_model_agree(text: str) -> None:
    try:
        CLOCKS.validate_python(text)
        read = True
    except ValidationError:
        read = False
    assert read == (re.search(CLOCK_PATTERN, text) is not None)


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("6", "Write 6 o'clock"),
        ("6 o\u2019clock", "Write 6 o'clock"),
        ("1.30", "Write 1:30"),
        ("10h30", "Write 10:30"),
        ("top", "Write 6 o'clock or 1:30"),
    ],
)
def test_another_way_to_point_gets_what_it_most_likely_means(text: str, mend: str) -> None:
    wrong = clock_complaint(text)
    assert wrong
    assert (wrong.what, wrong.mend) == (f'"{text}" is not a position on the clock', mend)


@pytest.mark.parametrize(("value", "said"), [(6, "Write 6 o'clock"), (True, "valid string"), (None, "valid string")])
def test_a_bare_hour_is_refused_with_its_reading(value: object, said: str) -> None:
    with pytest.raises(ValidationError, match=said):
        CLOCKS.validate_python(value)


def test_the_schema_holds_the_pattern() -> None:
    assert CLOCKS.json_schema() == {"type": "string", "pattern": CLOCK_PATTERN}
