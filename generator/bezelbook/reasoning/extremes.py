"""How low and how high one number can be, once all bounds are known."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TypeVar

from bezelbook.reasoning.bounds import Either, Leaf, Number, Search, Under

N = TypeVar("N", bound=Number)
Ends = tuple[int, int | None]
NOTHING_KNOWN: Ends = (0, None)


def ends_of(start: Leaf | None, numbers: Sequence[N]) -> dict[N, Ends]:
    """For each number its smallest value over all leaves of a search from here, and the one it stays under in all.

    The latter is None where a leaf has none. Lifting and choosing bring the ends of a number only nearer to each other:
    a branch is left out once none of its own ends lies beyond those of the leaves so far.
    """
    if start is None:
        return dict.fromkeys(numbers, NOTHING_KNOWN)
    furthest, found = dict(ends_in(start, numbers)), dict[N, Ends]()

    def goes_beyond(branch: Leaf) -> bool:
        left = [number for number in numbers if found[number] != furthest[number]] if found else []
        return not found or any(not _within(ends, found[number]) for number, ends in ends_in(branch, left))

    for leaf in Search(wanted=goes_beyond).leaves((), start):
        found.update({number: _both(ends, found.get(number, ends)) for number, ends in ends_in(leaf, numbers)})
    return found or dict.fromkeys(numbers, NOTHING_KNOWN)


def ends_in(leaf: Leaf, numbers: Iterable[N]) -> Iterator[tuple[N, Ends]]:
    """Each number with its least value in one leaf, and the one it stays under there; None where no plain bound tells.

    Lifting the number lifts whatever it holds up, and breaks an either once all of its options are broken.
    """
    tops = tops_of(leaf.eithers)
    return ((number, (leaf.at(number), _ceiling(leaf, number, tops))) for number in numbers)


def _within(ends: Ends, than: Ends) -> bool:
    return ends[0] >= than[0] and (than[1] is None or (ends[1] is not None and ends[1] <= than[1]))


def _both(one: Ends, other: Ends) -> Ends:
    return min(one[0], other[0]), None if one[1] is None or other[1] is None else max(one[1], other[1])


def _ceiling(leaf: Leaf, number: Number, tops: Mapping[Number, int]) -> int | None:
    reached = leaf.reach(number)
    breaking = (_breaks_at(leaf, reached, either, tops) for either in leaf.eithers)
    return min((at for at in breaking if at is not None), default=None)


def _breaks_at(leaf: Leaf, reached: dict[Number, int], either: Either, tops: Mapping[Number, int]) -> int | None:
    at = 0
    for one in either.options:
        limit = limit_of(one, tops)
        if limit is None or (one.cell not in reached and leaf.at(one.cell) < limit):
            return None
        if leaf.at(one.cell) < limit:
            at = max(at, limit - reached[one.cell])
    return at


def tops_of(eithers: Iterable[Either]) -> dict[Number, int]:
    """The numbers that have a plain upper bound, each with its lowest."""
    tops: dict[Number, int] = {}
    for either in eithers:
        only = either.options[0]
        if len(either.options) == 1 and only.need is None:
            tops[only.cell] = min(only.by, tops.get(only.cell, only.by))
    return tops


def limit_of(one: Under, tops: Mapping[Number, int]) -> int | None:
    """The plain value that an option keeps its cell under at most; None when its need has no upper bound."""
    if one.need is None:
        return one.by
    return one.by + tops[one.need] if one.need in tops else None
