"""A day is a day that the calendar has, from 2000 to 2099."""

import calendar
import re
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from bezelbook.values.day import DAY_PATTERN, Day, day_complaint, is_day

DAYS = TypeAdapter(Day)


def test_every_day_of_the_century_is_a_day_and_no_other_is() -> None:
    first = date(2000, 1, 1)
    real = {(first + timedelta(n)).isoformat() for n in range(36_525)}
    written = {f"{y:04}-{m:02}-{d:02}" for y in range(1999, 2102) for m in range(14) for d in range(33)}
    assert {text for text in written if is_day(text)} == real


def test_leap_days_follow_the_calendar() -> None:
    leap = {year for year in range(2000, 2100) if is_day(f"{year}-02-29")}
    assert leap == {year for year in range(2000, 2100) if calendar.isleap(year)}


@given(st.text(max_size=12) | st.from_regex(r"20[0-9]{2}-[01][0-9]-[0-3][0-9]\n?", fullmatch=True))
def test_the_pattern_and_the_model_agree(text: str) -> None:
    try:
        DAYS.validate_python(text)
        read = True
    except ValidationError:
        read = False
    assert read == (re.search(DAY_PATTERN, text) is not None)


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("2026-3-9", "Write 2026-03-09"),
        ("09/03/2026", "Write 2026-03-09 or 2026-09-03"),
        ("25.12.2026", "Write 2026-12-25"),
        ("12/25/26", "Write 2026-12-25"),
        ("2023-02-29", "Write year-month-day, such as 2026-03-09"),
        ("yesterday", "Write year-month-day, such as 2026-03-09"),
        ("1926-03-09", "Write year-month-day, such as 2026-03-09"),
    ],
)
def test_another_way_to_write_a_date_gets_its_readings(text: str, mend: str) -> None:
    wrong = day_complaint(text)
    assert wrong
    assert wrong.mend == mend
    assert wrong.what == f'"{text}" is not a day of the calendar from 2000 to 2099'


def test_a_day_draws_no_complaint() -> None:
    assert day_complaint("2026-03-09") is None


def test_the_schema_holds_the_pattern() -> None:
    assert DAYS.json_schema() == {"type": "string", "pattern": DAY_PATTERN}
