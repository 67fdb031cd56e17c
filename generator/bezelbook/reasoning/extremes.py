"""How low and how high one number can be, once all bounds are known."""

from collections.abc import Iterable, Mapping, Sequence
from typing import TypeVar

from bezelbook.reasoning.bounds import Either, Leaf, Number, Under

N = TypeVar("N", bound=Number)
Ends = tuple[int, int | None]


def lowest(leaves: Iterable[Leaf], number: Number) -> int:
    """The smallest value that a number can have over these leaves; 0 when nothing holds it up."""
    return min((leaf.at(number) for leaf in leaves), default=0)


def ceiling(leaf: Leaf, number: Number) -> int | None:
    """The value that a number stays under in one leaf, as far as plain upper bounds tell; None when none does.

    Lifting the number lifts whatever it holds up, and breaks an either once all of its options are broken.
    """
    return _ceiling(leaf, number, tops_of(leaf.eithers))


def ends_of(leaves: Sequence[Leaf], numbers: Iterable[N]) -> dict[N, Ends]:
    """For each number its smallest value over these leaves, and the one it stays under in all; None when none is."""
    tops = [tops_of(leaf.eithers) for leaf in leaves]
    found: dict[N, Ends] = {}
    for number in numbers:
        highest = [_ceiling(leaf, number, known) for leaf, known in zip(leaves, tops, strict=True)]
        known = [top for top in highest if top is not None]
        found[number] = (lowest(leaves, number), max(known) if known and len(known) == len(highest) else None)
    return found


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
