"""What a day of the book is: a calendar day of this century, written 2026-03-09."""

import re
from datetime import date
from typing import Annotated

from pydantic import AfterValidator, WithJsonSchema

from bezelbook.values.complaint import Wrong, checked

_LONG_MONTHS = "(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])"
_SHORT_MONTHS = "(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)"
_FEBRUARY = "02-(?:0[1-9]|1[0-9]|2[0-8])"
# Every fourth year from 2000 to 2096 is a leap year: 2000 divides by 400, and 2100 is out of reach.
_LEAP_DAY = "20(?:[02468][048]|[13579][26])-02-29"

DAY_PATTERN = rf"^(?:20[0-9]{{2}}-(?:{_LONG_MONTHS}|{_SHORT_MONTHS}|{_FEBRUARY})|{_LEAP_DAY})$(?!\n)"
_DAY = re.compile(DAY_PATTERN)
_LOOSE = re.compile(r"([0-9]{1,4})[-/. ]([0-9]{1,2})[-/. ]([0-9]{1,4})")


def is_day(text: str) -> bool:
    """Say whether the text is a day from 2000-01-01 to 2099-12-31 that the calendar has."""
    return _DAY.match(text) is not None


def day_complaint(text: str) -> Wrong | None:
    """Say why the text is not a day, with the days that it may mean; nothing when it is one."""
    if is_day(text):
        return None
    readings = _readings(text)
    mend = f"Write {' or '.join(readings)}" if readings else "Write year-month-day, such as 2026-03-09"
    return Wrong(f'"{text}" is not a day of the calendar from 2000 to 2099', mend)


def _readings(text: str) -> list[str]:
    """Give each day that other ways of writing dates would take the text for, most likely first."""
    found = _LOOSE.fullmatch(text.strip())
    if not found:
        return []
    first, middle, last = (int(part) for part in found.groups())
    orders = [(first, middle, last), (last, middle, first), (last, first, middle)]
    days = [_iso(2000 + year if year < 100 else year, month, day) for year, month, day in orders]
    return list(dict.fromkeys(day for day in days if is_day(day)))


def _iso(year: int, month: int, day: int) -> str:
    try:
        return date(year, month, day).isoformat()
    except ValueError:
        return ""


_SCHEMA = WithJsonSchema({"type": "string", "pattern": DAY_PATTERN})

Day = Annotated[str, AfterValidator(checked(day_complaint)), _SCHEMA]
"""A field that holds a day."""
