"""What the store says to a person at the bench: where, what is wrong, what would mend it."""

from dataclasses import dataclass
from pathlib import Path

from bezelbook.values.complaint import sentences


@dataclass(frozen=True, slots=True, order=True)
class Complaint:
    """One thing that is wrong at one place; line and column count from 1, and sorting follows the place."""

    path: str
    line: int
    column: int
    what: str
    mend: str

    def __str__(self) -> str:
        return f"{self.path}:{self.line}:{self.column}: {sentences(self.what, self.mend)}"


def shown_path(path: Path) -> str:
    """Show a path from the folder that the command runs in where it lies below that, with forward slashes."""
    if path.is_absolute() and path.is_relative_to(Path.cwd()):
        path = path.relative_to(Path.cwd())
    return path.as_posix().encode("utf-8", "surrogateescape").decode("utf-8", "replace")
