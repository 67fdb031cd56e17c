"""What several notes say of one thing, each saying once with the notes that say it."""

from collections.abc import Hashable, Iterable
from dataclasses import dataclass
from typing import Generic, TypeVar

from bezelbook.knowledge_base import folded

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Said(Generic[T]):
    """Something that was said, as the first who said it put it, and every note that says so."""

    what: T
    notes: tuple[str, ...]


def gathered(sayings: Iterable[tuple[T, str]]) -> tuple[Said[T], ...]:
    """(what, note) pairs as one saying each, in order of who said it first; letter case and hyphens do not matter."""
    found: dict[Hashable, tuple[T, list[str]]] = {}
    for what, note in sayings:
        key: Hashable = folded(what) if isinstance(what, str) else what
        _, notes = found.setdefault(key, (what, []))
        if note not in notes:
            notes.append(note)
    return tuple(Said(what, tuple(notes)) for what, notes in found.values())
