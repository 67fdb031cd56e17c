"""What a file of the site is before any engine has seen it."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class SiteFile:
    """A file to publish: its path from the top of the site, its whole text, and the record that it is made from.

    `source` is that record's path in the book without its ending, such as `vehicles/compact-hatch-2`; None for a file
    made from the book as a whole.
    """

    path: str
    text: str
    source: str | None = None
