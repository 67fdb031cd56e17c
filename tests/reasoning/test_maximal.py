"""The largest consistent sets, against trying out every set."""

from itertools import combinations

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.maximal import MOST_SETS, contradiction, maximal_consistent

Clashes = list[frozenset[int]]
clashes = st.lists(st.frozensets(st.integers(0, 5), min_size=1, max_size=3), max_size=4)
STATEMENTS = tuple(range(6))


def agreeing(statements: tuple[int, ...], against: Clashes) -> bool:
    """Whether no clash lies wholly within the statements."""
    return not any(clash <= set(statements) for clash in against)


def largest(against: Clashes) -> set[tuple[int, ...]]:
    """Every consistent set that cannot be added to, by trying every set."""
    found = [way for size in range(7) for way in combinations(STATEMENTS, size) if agreeing(way, against)]
    return {way for way in found if not any(set(way) < set(other) for other in found)}


@given(clashes)
def test_every_largest_set_is_found_once_in_the_statements_own_order(against: Clashes) -> None:
    found = maximal_consistent(STATEMENTS, lambda kept: agreeing(kept, against))
    assert len(set(found)) == len(found)
    assert set(found) == largest(against)


@given(clashes)
def test_sets_that_leave_out_fewest_come_first(against: Clashes) -> None:
    sizes = [len(kept) for kept in maximal_consistent(STATEMENTS, lambda kept: agreeing(kept, against))]
    assert sizes == sorted(sizes, reverse=True)


@given(clashes.filter(bool))
def test_a_contradiction_is_one_of_which_nothing_can_be_dropped(against: Clashes) -> None:
    core = contradiction(STATEMENTS, lambda kept: agreeing(kept, against))
    assert not agreeing(core, against)
    assert all(agreeing(tuple(one for one in core if one != dropped), against) for dropped in core)


def test_two_of_three_votes_win_nothing() -> None:
    found = maximal_consistent("aAb", lambda kept: not ({"a", "A"} & set(kept) and "b" in kept))
    assert found == (("a", "A"), ("b",))


def test_what_agrees_is_one_set() -> None:
    assert maximal_consistent((1, 2), lambda _: True) == ((1, 2),)


def test_a_statement_that_cannot_be_true_by_itself_is_in_no_set() -> None:
    assert maximal_consistent((1, 2), lambda kept: 2 not in kept) == ((1,),)


def test_there_is_an_end_to_how_many_sets_are_looked_for() -> None:
    pairs = [frozenset({number, -number}) for number in range(1, 7)]
    statements = [sign * number for number in range(1, 7) for sign in (1, -1)]
    found = maximal_consistent(statements, lambda kept: not any(pair <= set(kept) for pair in pairs))
    assert len(found) == MOST_SETS < 2**6
