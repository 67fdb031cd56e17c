"""What a clock position is: where on a round thing something sits, written 6 o'clock or 1:30."""

import re
from typing import Annotated

from pydantic import AfterValidator, BeforeValidator, WithJsonSchema

from bezelbook.values.complaint import Wrong, checked

CLOCK_PATTERN = r"^(?:1[0-2]|[1-9])(?: o'clock|:[0-5][0-9])$(?!\n)"
_CLOCK = re.compile(CLOCK_PATTERN)
_LOOSE = re.compile(r"(1[0-2]|[1-9])(?:[.:h]?([0-5][0-9]))?\D*")


def is_clock(text: str) -> bool:
    """Say whether the text is a position on the clock."""
    return _CLOCK.match(text) is not None


def clock_complaint(text: str) -> Wrong | None:
    """Say why the text is no position on the clock, with the one it may mean; nothing when it is one."""
    if is_clock(text):
        return None
    return Wrong(f'"{text}" is not a position on the clock', f"Write {_meant(text)}")


def _meant(text: str) -> str:
    found = _LOOSE.fullmatch(text.strip())
    if not found:
        return "6 o'clock or 1:30"
    hour, minutes = found.groups()
    return f"{hour}:{minutes}" if minutes else f"{hour} o'clock"


def minutes_of(text: str) -> int:
    """Give the minutes since 12 of a clock position, 0 to 719: two of them are a degree on the thing."""
    hour, _, minutes = text.removesuffix(" o'clock").partition(":")
    return int(hour) % 12 * 60 + int(minutes or 0)


def _as_text(value: object) -> object:
    """A bare hour is met with the complaint about texts, which knows how to mend it."""
    return str(value) if isinstance(value, int) and not isinstance(value, bool) else value


Clock = Annotated[
    str,
    AfterValidator(checked(clock_complaint)),
    BeforeValidator(_as_text),
    WithJsonSchema({"type": "string", "pattern": CLOCK_PATTERN}),
]
"""A field that holds a clock position, 12 at the top, seen from the front."""
