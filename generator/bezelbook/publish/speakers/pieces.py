"""Answers about one typed size of a speaker, each with the sizes between which it stays the same."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import Any

from bezelbook.publish.speakers.place import PlaceForSpeakers
from bezelbook.publish.speakers.state import State
from bezelbook.reasoning.speakers.answer import SpeakerAnswer, speaker_answer
from bezelbook.reasoning.speakers.cells import demands
from bezelbook.reasoning.speakers.outlook import clearance
from bezelbook.reasoning.speakers.question import asked
from bezelbook.values.quantity import Quantity

MM = 1_000_000
# Sizes beyond these are no speaker's.
LEAST, MOST = MM, 400 * MM
TYPED_ONE = ("mounting_depth", "cut_out", "basket", "front_height")
# Between two sizes at which something known begins or ends hardly anything else changes.
CHANGES = 3
# What stands for the size in words, and is in no name.
SIZE = "\x00"


@dataclass(frozen=True)
class Piece:
    """An answer that holds for every exact size from `low` to `high`, in nanometres; `answer` is that at `low`.

    `slopes` says for each length that its conditions name whether it grows with the size (1), shrinks (-1) or stays.
    """

    low: int
    high: int
    answer: SpeakerAnswer
    slopes: tuple[tuple[int, ...], ...]


def pieces(place: PlaceForSpeakers, state: State, of: str) -> Iterator[Piece]:
    """The pieces of one size in one state, smallest first.

    Where an answer changes is looked for at every size at which something known of the place begins or ends; what
    changes in no such way is left out, and so left to the command line.
    """

    @cache
    def at(size: int) -> SpeakerAnswer:
        typed = Quantity("length", size, None, None, SIZE)
        return speaker_answer(place.book, state.question(place, None, {of: typed}), place.room)

    def alike(low: int, high: int) -> bool:
        return same(at(low), low) == same(at(high), high) and _slopes(at(low), at(high), high - low) is not None

    points = _refined(sorted({LEAST, MOST, *(end for end in _ends(place, state, of) if LEAST < end < MOST)}), alike)
    start = points[0]
    for one, other in zip(points, [*points[1:], None], strict=True):
        if other is None or not alike(start, other):
            yield Piece(start, one, at(start), _slopes(at(start), at(one), one - start) or ())
            start = other or one


def _refined(ends: list[int], alike: Callable[[int, int], bool]) -> list[int]:
    """The ends, with the nanometres beside those between which something changes."""
    points = {ends[0]}
    for low, high in pairwise(ends):
        points |= {high}
        if not alike(low, high):
            points |= {low + 1, high - 1, *_changes(low + 1, high - 1, alike)}
    return sorted(points)


def _changes(low: int, high: int, alike: Callable[[int, int], bool]) -> Iterator[int]:
    """Where something changes between two sizes, by halving; what changes too often is left open."""
    for _ in range(CHANGES):
        if low >= high or alike(low, high):
            return
        first, last = low, high
        while last - first > 1:
            middle = (first + last) // 2
            first, last = (middle, last) if alike(low, middle) else (first, middle)
        yield from (first, last)
        low = last


def same(answer: SpeakerAnswer, size: int) -> tuple[Any, ...]:
    """Everything that an answer says but for the size itself, what it leaves over, and lengths that go with it."""
    plain = {**answer.plain(), "number": None, "needs": answer.needs[len(answer.conditions) :]}
    spot = answer.spot
    number = None if spot is None else (spot.need, spot.size, spot.room, spot.left + size, spot.house)
    conditions = tuple((one.template or one.words, one.look) for one in answer.conditions)
    return (repr(plain), number, answer.uncovered, conditions)


def _slopes(low: SpeakerAnswer, high: SpeakerAnswer, rise: int) -> tuple[tuple[int, ...], ...] | None:
    """How the lengths in the conditions go with the size; None when one goes with it in no such way."""
    found = []
    for one, other in zip(low.conditions, high.conditions, strict=False):
        slopes = [_slope(more - less, rise) for less, more in zip(one.lengths, other.lengths, strict=False)]
        if None in slopes:
            return None
        found.append(tuple(slope for slope in slopes if slope is not None))
    return tuple(found)


def _slope(change: int, rise: int) -> int | None:
    return next((slope for slope in (0, 1, -1) if change == slope * rise), None)


def _ends(place: PlaceForSpeakers, state: State, of: str) -> Iterator[int]:
    """Every size at which a room that is known begins or ends, with and without what the house likes to leave."""
    question = asked(place.room, state.question(place, None, {of: Quantity("length", MM, None, None, SIZE)}))
    for rooms in place.room.accounts:
        for setting in question.settings:
            wanted = demands(place.room.frame, question.needs, setting)
            for which in (rooms, rooms.fitted, rooms.measured):
                for demand, room in zip(wanted, which.spans(setting, wanted), strict=True):
                    most = room.least if room.most is None else room.most
                    for end in (room.least, most, (room.least + most) // 2):
                        yield from (end, end - clearance(place.room.frame, question.needs, demand))
