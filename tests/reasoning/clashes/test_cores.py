"""The smallest sets of statements that cannot all be true, against every subset of a handful of them."""

from itertools import combinations

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.clashes.cores import cores

STATEMENTS = tuple(range(6))
# What cannot all be true, by hand: some sets of statements, and with them all that hold one of them.
FORBIDDEN = st.lists(st.frozensets(st.sampled_from(STATEMENTS), min_size=1, max_size=4), max_size=5)


def minimal(forbidden: list[frozenset[int]]) -> set[frozenset[int]]:
    """Every smallest contradiction, by trying all subsets."""
    every = [frozenset(some) for size in range(1, 7) for some in combinations(STATEMENTS, size)]
    bad = [some for some in every if any(one <= some for one in forbidden)]
    return {some for some in bad if not any(other < some for other in bad)}


def found(forbidden: list[frozenset[int]]) -> list[frozenset[int]]:
    return [frozenset(core) for core in cores(STATEMENTS, lambda some: not any(one <= set(some) for one in forbidden))]


@given(FORBIDDEN)
def test_each_is_a_smallest_contradiction_and_none_is_told_twice(forbidden: list[frozenset[int]]) -> None:
    told = found(forbidden)
    assert set(told) <= minimal(forbidden)
    assert len(told) == len(set(told))


@given(FORBIDDEN)
def test_something_is_told_whenever_anything_clashes(forbidden: list[frozenset[int]]) -> None:
    assert bool(found(forbidden)) == bool(minimal(forbidden))


@given(FORBIDDEN)
def test_whatever_clashes_with_one_other_is_named(forbidden: list[frozenset[int]]) -> None:
    named = frozenset().union(*found(forbidden))
    assert all(one in named for core in minimal(forbidden) if len(core) < 3 for one in core)


@given(st.sampled_from(STATEMENTS), FORBIDDEN)
def test_one_false_statement_among_true_ones_is_always_named(false: int, forbidden: list[frozenset[int]]) -> None:
    clashes = [one | {false} for one in forbidden]
    assert all(false in core for core in found(clashes))


def test_a_clash_of_three_beside_one_of_two() -> None:
    assert found([frozenset({0, 1}), frozenset({2, 3, 4})]) == [{0, 1}, {2, 3, 4}]


def test_what_clashes_only_with_two_that_were_left_out() -> None:
    pairs = [frozenset(pair) for pair in ((0, 2), (0, 3), (1, 2), (1, 3))]
    assert {0, 1, 5} in found([*pairs, frozenset({0, 1, 5})])


def test_what_agrees_is_not_told() -> None:
    assert cores((1, 2, 3), lambda _: True) == ()
