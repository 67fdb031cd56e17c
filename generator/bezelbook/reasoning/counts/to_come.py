"""What the jobs to come want of each thing."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.job.record import Job
from bezelbook.kinds.record import PART_KINDS
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.counts.by_build import clips_at
from bezelbook.reasoning.counts.lost import Tally, standing


@dataclass(frozen=True, slots=True)
class Wanted:
    """What one job to come wants of a thing: how many, None when that is not known, and why."""

    job: Job
    count: int | None
    why: str


def wanted(book: KnowledgeBase, everywhere: Mapping[str, Tally], today: str) -> Mapping[str, tuple[Wanted, ...]]:
    """The jobs to come that want a thing, by its id; soonest first and those without a day last.

    A job is over when its day is, or when a note was written back with its tag.
    """
    over = {note.job for note in standing(book)}
    coming = [job for job in book.jobs.values() if job.tag not in over and not (job.day and job.day < today)]
    found: dict[str, list[Wanted]] = {}
    for job in sorted(coming, key=lambda job: (job.day or "no day", job.id)):
        for thing, one in _of(book, job, everywhere, today):
            found.setdefault(thing, []).append(one)
    return {thing: tuple(jobs) for thing, jobs in found.items()}


def _of(book: KnowledgeBase, job: Job, everywhere: Mapping[str, Tally], today: str) -> Iterator[tuple[str, Wanted]]:
    wished = [thing for wish in job.wishes for thing in _named(book, wish.what)]
    mounts = [mount for wish in job.wishes for mount in wish.mounts]
    for thing in dict.fromkeys(wished):
        yield thing, Wanted(job, wished.count(thing), "it is what is wished for")
    for mount in dict.fromkeys(mounts):
        yield mount, Wanted(job, mounts.count(mount), "it is the mount that is settled")
    for place in dict.fromkeys(wish.place for wish in job.wishes if wish.place):
        for need in clips_at(book, job.vehicle, place, everywhere, today, job.splits):
            yield need.kind, Wanted(job, need.need, f"clips at the {place.replace('-', ' ')}")


def _named(book: KnowledgeBase, words: str) -> Iterator[str]:
    """The things that the words of a wish name, by any of their names: one of each kind at most."""
    found = (book.named(kind, words) for kind in PART_KINDS)
    return iter(dict.fromkeys(one.id for one in found if one))
