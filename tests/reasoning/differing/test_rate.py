"""How often what in truth made the difference is among the first two that the book proposes."""

from collections import Counter
from collections.abc import Callable, Iterator
from random import Random

import pytest

from bezelbook.knowledge_base import knowledge_base
from bezelbook.reasoning.differing.explaining import explained
from tests.reasoning import making
from tests.reasoning.differing.clashing_world import Pair, reading_pairs, tried_pairs


def ranked(pair: Pair) -> list[str]:
    book = knowledge_base(pair.book)
    found = explained(book, book.vehicles[making.CAR], making.HOLE, (pair.first, pair.second))
    return [*dict.fromkeys(one.axis for one in found)]


def rates(pairs: list[Pair]) -> tuple[float, float]:
    """The share of pairs with a true axis among the first two, and what naming the two commonest would have got."""
    hits = [bool(set(ranked(pair)[:2]) & pair.true) for pair in pairs]
    commonest = {axis for axis, _ in Counter(axis for pair in pairs for axis in pair.true).most_common(2)}
    return sum(hits) / len(hits), sum(bool(commonest & pair.true) for pair in pairs) / len(pairs)


def drawn(make: Callable[[Random], Iterator[Pair]], seeds: range) -> list[Pair]:
    """A few pairs of each shop, so that one with many notes does not outweigh the rest."""
    return [pair for seed in seeds for pair in list(make(Random(seed)))[:3]]  # noqa: S311


@pytest.mark.parametrize(("make", "seeds"), [(tried_pairs, 1200), (reading_pairs, 300)])
def test_the_true_axis_is_among_the_first_two(make: Callable[[Random], Iterator[Pair]], seeds: int) -> None:
    pairs = drawn(make, range(seeds))
    rate, guessed = rates(pairs)
    print(f"{make.__name__}: {len(pairs)} clashes, right in the first two {rate:.1%}, commonest two {guessed:.1%}")  # noqa: T201
    assert rate >= 0.9
    assert rate > guessed
