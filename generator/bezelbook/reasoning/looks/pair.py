"""A head unit in one build of one opening: whether the book answers it firmly, and how often somebody asked."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.kinds.asked.record import Asked as AskedRecord
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.outlook import always_fits
from bezelbook.reasoning.question import Asked, Question, asked
from bezelbook.reasoning.room import Place, Rooms


@dataclass(frozen=True, slots=True)
class Pair:
    """What could be asked: does this head unit go in this place of a car of this build, fitted the usual way?"""

    vehicle: str
    place: str
    build: Build
    unit: str


def pairs_at(place: Place) -> Iterator[Pair]:
    """Every head unit of the book in every build of a place."""
    frame = place.frame
    for build in frame.builds:
        for unit in frame.book.head_units:
            yield Pair(frame.vehicle.id, frame.place, build, unit)


def put(place: Place, pair: Pair) -> Asked:
    """The question whether a pair goes in, in the book's own terms."""
    return asked(place.frame, place.evidence, Question(pair.vehicle, pair.place, dict(pair.build), unit=pair.unit))


def is_firm(question: Asked, accounts: Sequence[Rooms]) -> bool:
    """Whether the answer is goes in or does not, for certain, by these accounts of the place."""
    return all(
        all(always_fits(one, question.needs, setting) for one in accounts)
        or not any(one.takes(question.needs, setting) for one in accounts)
        for setting in question.settings
    )


def open_pairs(place: Place) -> Mapping[Pair, Asked]:
    """The pairs of a place that have no firm answer yet, each as the question that is left."""
    left = {pair: still_open(place, put(place, pair)) for pair in pairs_at(place)}
    return {pair: question for pair, question in left.items() if question is not None}


def still_open(place: Place, question: Asked) -> Asked | None:
    """What is left of a question that has no firm answer yet; None when it has.

    A mounting that cannot take the unit is left out: whatever somebody reads, it never will.
    """
    return None if is_firm(question, place.accounts) else _able(place, question)


def _able(place: Place, question: Asked) -> Asked:
    able = (
        stack
        for stack in question.stacks
        for setting in question.narrowed(stacks=(stack,)).settings
        if any(one.takes(question.needs, setting) for one in place.accounts)
    )
    return question.narrowed(stacks=tuple(dict.fromkeys(able)))


def times_asked(book: KnowledgeBase, pair: Pair) -> int:
    """How often somebody asked what this pair is about: at this place, of a car that may be this build, of this unit.

    A question that does not say the build or the unit is about any; one that does not say the place is about none.
    """
    return sum(one.times for one in book.questions.values() if _about(book, one, pair, dict(pair.build)))


def _about(book: KnowledgeBase, one: AskedRecord, pair: Pair, build: Mapping[str, str]) -> bool:
    if (one.vehicle, one.place) != (pair.vehicle, pair.place):
        return False
    if any(build.get(axis, value) != value for axis, value in one.splits.items()):
        return False
    named = book.head_unit_named(one.what) if one.what else None
    return one.what is None or (named is not None and named.id == pair.unit)
