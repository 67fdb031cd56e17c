"""Which radios somebody wants at a place: those that went in, those that were asked for, those of jobs to come."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.note.record import Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.cars import standing_notes
from bezelbook.reasoning.circuits.said import strong
from bezelbook.reasoning.quote import quote


@dataclass(frozen=True, slots=True)
class WantedUnit:
    """A radio, who says that it is wanted in which build, and the field that says so.

    `leads` is whether a note of it names an adapter that was used; `kind` and `id` are the record's that says it.
    """

    unit: HeadUnit
    kind: str
    id: str
    says: str
    path: tuple[str | int, ...]
    splits: Mapping[str, str]
    year: int | None
    leads: bool = False


def units_wanted(book: KnowledgeBase, vehicle: str, place: str) -> tuple[WantedUnit, ...]:
    """Every time a radio of the book is wanted at a place: what went in first, then jobs, then questions."""
    return (*_went_in(book, vehicle, place), *_of_jobs(book, vehicle, place), *_asked(book, vehicle, place))


def _went_in(book: KnowledgeBase, vehicle: str, place: str) -> Iterator[WantedUnit]:
    for note in standing_notes(book, vehicle, place):
        if not isinstance(note, Tried) or note.verdict not in ("goes in", "goes in if") or not strong(note):
            continue
        if unit := book.head_unit_named(note.what):
            says = quote(book, note)
            yield WantedUnit(unit, "note", note.id, says, ("what",), note.splits, note.year, bool(note.adapters))


def _of_jobs(book: KnowledgeBase, vehicle: str, place: str) -> Iterator[WantedUnit]:
    for job in book.jobs.values():
        for at, wish in enumerate(job.wishes):
            unit = book.head_unit_named(wish.what)
            if unit and (job.vehicle, wish.place) == (vehicle, place) and wish.want in ("replace", "add"):
                says = f"{job.tag}: {wish.want} {unit.name}"
                yield WantedUnit(unit, "job", job.id, says, ("wishes", at, "what"), job.splits, job.year)


def _asked(book: KnowledgeBase, vehicle: str, place: str) -> Iterator[WantedUnit]:
    for one in book.questions.values():
        unit = book.head_unit_named(one.what or "")
        if unit and (one.vehicle, one.place) == (vehicle, place):
            yield WantedUnit(unit, "asked", one.id, one.words, ("what",), one.splits, one.year)
