"""A head unit in one build of one opening: whether the book answers it firmly, and how often somebody asked."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.kinds.asked.record import Asked as AskedRecord
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.needs import Needs
from bezelbook.reasoning.question import Question, asked
from bezelbook.reasoning.room import Place, Rooms, always_fits


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


def is_firm(place: Place, pair: Pair, accounts: Sequence[Rooms] | None = None, needs: Needs | None = None) -> bool:
    """Whether the answer about a pair is goes in or does not, for certain.

    `accounts` may stand in for the place's own, and `needs` for the unit's own: what would be, once somebody looked.
    """
    question = asked(place.frame, place.evidence, Question(pair.vehicle, pair.place, dict(pair.build), unit=pair.unit))
    wanted = question.needs if needs is None else needs
    rooms = place.accounts if accounts is None else accounts
    ways = [[(one, setting) for one in rooms] for setting in question.settings]
    able = [way for way in ways if any(one.takes(wanted, setting) for one, setting in way)]
    return all(always_fits(one, wanted, setting) for way in able for one, setting in way)


def open_pairs(place: Place) -> tuple[Pair, ...]:
    """The pairs of a place that have no firm answer yet."""
    return tuple(pair for pair in pairs_at(place) if not is_firm(place, pair))


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
