"""What jobs use up, and how much of it."""

from collections.abc import Iterable
from dataclasses import dataclass

from bezelbook.kinds.note.record import After
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.evidence import job_key
from bezelbook.values.shown import show_length


@dataclass(frozen=True, slots=True)
class UsedUp:
    """One thing that jobs used, by id or words: pieces, and lengths in nm, from the least; either may be none."""

    what: str
    name: str
    counts: tuple[int, ...]
    lengths: tuple[int, ...]
    jobs: int

    def words(self, first: str) -> str:
        """How much a job used, from the least to the most; `first` is the unit shown first, mm or in."""
        said = [_span([str(count) for count in self.counts]), _span([show_length(nm, first) for nm in self.lengths])]
        return " and ".join(one for one in said if one) or "how much is not looked"


def used_up(book: KnowledgeBase, notes: Iterable[After]) -> tuple[UsedUp, ...]:
    """What these notes wrote back as used, in order of name; one job's notes at one place count once."""
    found: dict[str, dict[tuple[object, ...], tuple[int | None, int | None]]] = {}
    for note in notes:
        for one in note.used:
            record = book.named("supply", one.what)
            what = record.id if record else folded(one.what)
            length = one.length.base if one.length else None
            found.setdefault(what, {})[(*job_key(note), note.vehicle, note.place)] = (one.count, length)
    return tuple(sorted((_one(book, what, [*jobs.values()]) for what, jobs in found.items()), key=lambda one: one.name))


def _one(book: KnowledgeBase, what: str, jobs: list[tuple[int | None, int | None]]) -> UsedUp:
    counts = tuple(sorted(count for count, _ in jobs if count is not None))
    lengths = tuple(sorted(length for _, length in jobs if length is not None))
    name = book.supplies[what].name if what in book.supplies else what
    return UsedUp(what, name, counts, lengths, len(jobs))


def _span(shown: list[str]) -> str:
    if not shown:
        return ""
    return shown[0] if shown[0] == shown[-1] else f"{shown[0]} to {shown[-1]}"
