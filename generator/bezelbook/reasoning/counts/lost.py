"""How many clips of a type were handled and lost in past jobs, a copied job counted once."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import After
from bezelbook.kinds.note.state import Clips
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.counts.fixing import kind_key
from bezelbook.reasoning.evidence import job_key, unreplaced, witnesses

THIN = 3


@dataclass(frozen=True, slots=True)
class Handled:
    """Clips of one type in one job, by the note that wrote them back."""

    note: After
    handled: int
    lost: int


@dataclass(frozen=True, slots=True)
class Tally:
    """What became of a type of clip: `jobs` count, notes `aside` say that more were lost than handled."""

    jobs: tuple[Handled, ...] = ()
    aside: tuple[str, ...] = ()

    @property
    def handled(self) -> int:
        """How many came out, over all jobs."""
        return sum(one.handled for one in self.jobs)

    @property
    def lost(self) -> int:
        """How many of them broke or flew."""
        return sum(one.lost for one in self.jobs)

    @property
    def witnesses(self) -> int:
        """How many independent jobs that is."""
        return witnesses(one.note for one in self.jobs)

    @property
    def thin(self) -> bool:
        """Whether that is too few to lean on."""
        return self.witnesses < THIN


def tallies(book: KnowledgeBase, notes: Iterable[After]) -> Mapping[str, Tally]:
    """What these notes wrote back of clips, by kind as `kind_key` has it.

    Two notes of one job at one place are one: of two that differ the one that handled more counts, and of those the
    one that lost more. The other places of a job are other panels, and are added.
    """
    found: dict[str, list[Handled]] = {}
    for note in notes:
        rows: dict[str, list[Clips]] = {}
        for clips in note.clips:
            rows.setdefault(kind_key(book, clips.kind), []).append(clips)
        for kind, said in rows.items():
            found.setdefault(kind, []).append(_added(note, said))
    return {kind: _tally(every) for kind, every in found.items()}


def _tally(every: Iterable[Handled]) -> Tally:
    kept: dict[tuple[object, ...], Handled] = {}
    aside: list[str] = []
    for one in every:
        if one.lost > one.handled:
            aside.append(one.note.id)
        else:
            key = (*job_key(one.note), one.note.vehicle, one.note.place)
            kept[key] = max(kept.get(key, one), one, key=lambda seen: (seen.handled, seen.lost))
    return Tally(tuple(kept.values()), tuple(aside))


def standing(book: KnowledgeBase) -> tuple[After, ...]:
    """Every write-back of the book that no other took the place of."""
    return tuple(unreplaced(note for note in book.notes.values() if isinstance(note, After)))


def _added(note: After, said: Iterable[Clips]) -> Handled:
    rows = tuple(said)
    return Handled(note, sum(one.handled for one in rows), sum(one.lost for one in rows))
