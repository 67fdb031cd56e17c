"""Where something stands in a file, and what can be wrong there before anyone knows which kind it is."""

from dataclasses import dataclass

Path = tuple[str | int, ...]
"""The way from the top of a record to a value in it: keys, and positions in lists from 0."""


@dataclass(frozen=True, slots=True)
class Place:
    """A line and a column of a file, both counted from 1."""

    line: int
    column: int


@dataclass(frozen=True, slots=True)
class Fault:
    """Something in a file's text that the book does not take."""

    line: int
    column: int
    what: str
    mend: str
