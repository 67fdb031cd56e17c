"""Which strong readings are of the same quantity in the same state, and by how many independent jobs."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from bezelbook.kinds.note.record import Measured, Room, RoomReading
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.agreement.consensus import Figure
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.claims import reading_span
from bezelbook.reasoning.evidence import Standing
from bezelbook.values.words import NINTHS, Datum, Ninth

# What is read from a face; without its face such a reading is of nobody knows what.
DEEP = ("depth", "rear depth to fixed", "rear depth to glass down", "rear depth at worst of travel", "front clearance")


class Same(NamedTuple):
    """What two readings must have in common to be of one quantity.

    `ninths` are those of which exactly the same readings tell. `loom` is None for what it does not change.
    """

    of: Room
    ninths: tuple[Ninth, ...]
    datum: Datum | None
    build: Build
    mounts: tuple[str, ...]
    tabs: str | None
    cut: str
    loom: str | None


@dataclass(frozen=True, slots=True)
class Vote:
    """One job's word on a quantity, in nanometres: its readings, and all that they allow as one figure.

    A job that read twice is still one job, so that its readings together are trusted no more than one of them.
    `house` says that a ± among them is the house's for the tool, because nobody typed one.
    """

    notes: tuple[Measured, ...]
    readings: tuple[RoomReading, ...]
    values: tuple[Fraction, ...]
    figure: Figure
    house: bool


@dataclass(frozen=True, slots=True)
class Repeated:
    """A quantity that two jobs or more have read, with the word of each."""

    same: Same
    votes: tuple[Vote, ...]


class _Taken(NamedTuple):
    note: Measured
    reading: RoomReading
    low: Fraction
    high: Fraction


def repeated(book: KnowledgeBase, standing: Iterable[Standing]) -> tuple[Repeated, ...]:
    """Every quantity of a place that two independent jobs or more have read, in the order of what it is.

    Left out is what cannot be told to be the same: a reading of nobody knows which build, a depth that does not say
    where or from which face, one by eye, and a ± of nothing, which weighs more than anybody can read.
    """
    by_spot: dict[Same, list[_Taken]] = {}
    for one in standing:
        for same, taken in _taken(book, one):
            by_spot.setdefault(same, []).append(taken)
    by_readings: dict[tuple[Same, tuple[int, ...]], list[Ninth]] = {}
    kept: dict[tuple[Same, tuple[int, ...]], list[_Taken]] = {}
    for same, found in by_spot.items():
        key = same._replace(ninths=()), tuple(id(taken.reading) for taken in found)
        by_readings.setdefault(key, []).extend(same.ninths)
        kept[key] = found
    whole = (
        Repeated(key[0]._replace(ninths=_in_order(by_readings[key])), _votes(found)) for key, found in kept.items()
    )
    return tuple(sorted((one for one in whole if len(one.votes) > 1), key=_order))


def _taken(book: KnowledgeBase, one: Standing) -> Iterator[tuple[Same, _Taken]]:
    note = one.note
    if not isinstance(note, Measured) or one.stack is None or len(one.builds) != 1:
        return
    for reading in note.readings:
        deep = reading.of in DEEP
        if reading.tool == "eye" or (deep and reading.datum is None):
            continue
        span = reading_span(book.shop.tools, reading)
        if span.low is None or span.high is None or span.exact:
            continue
        taken = _Taken(note, reading, Fraction(span.low), Fraction(span.high))
        state = (note.tabs, one.cut, one.loom if deep else None)
        for spot in _spots(reading):
            yield Same(reading.of, spot, reading.datum if deep else None, one.builds[0], one.stack.key, *state), taken


def _spots(reading: RoomReading) -> tuple[tuple[Ninth, ...], ...]:
    """The spots that a reading is of: each of its ninths, or the one there is where a size has no ninths."""
    if reading.of != "depth":
        return ((),)
    ninths = NINTHS if reading.zones == "all" else reading.zones
    return tuple((ninth,) for ninth in dict.fromkeys(ninths))


def _in_order(ninths: list[Ninth]) -> tuple[Ninth, ...]:
    return tuple(ninth for ninth in NINTHS if ninth in ninths)


def _votes(found: Iterable[_Taken]) -> tuple[Vote, ...]:
    by_job: dict[tuple[str | None, ...], list[_Taken]] = {}
    for taken in found:
        note = taken.note
        witness = (note.job,) if note.job else (note.author, note.date)
        by_job.setdefault(witness, []).append(taken)
    return tuple(_vote(readings) for readings in by_job.values())


def _vote(taken: list[_Taken]) -> Vote:
    low, high = min(one.low for one in taken), max(one.high for one in taken)
    return Vote(
        tuple(one.note for one in taken),
        tuple(one.reading for one in taken),
        tuple((one.low + one.high) / 2 for one in taken),
        Figure((low + high) / 2, (high - low) / 2),
        any(one.reading.reads.give is None for one in taken),
    )


def _order(one: Repeated) -> tuple[str, ...]:
    first = "".join(f"{NINTHS.index(ninth)}" for ninth in one.same.ninths)
    return (one.same.of, repr(one.same.build), first, repr(one.same))
