"""The search for numbers within bounds, against trying out all of them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.bounds import (
    STRICT,
    Case,
    Constraint,
    Either,
    Leaf,
    OneOf,
    Rise,
    Search,
    Under,
    before_choices,
    exactly,
    nanometres,
    nearest,
    numbers_of,
)
from tests.reasoning.systems import NUMBERS, Values, holds, solutions, systems


@given(system=systems, eager=st.booleans())
def test_it_finds_numbers_exactly_where_there_are_any(*, system: list[Constraint], eager: bool) -> None:
    assert Search(eager=eager).consistent(system) == bool(solutions(system))


@given(system=systems, eager=st.booleans())
def test_the_least_of_a_number_over_all_leaves_is_the_least_it_can_be(*, system: list[Constraint], eager: bool) -> None:
    leaves, found = list(Search(eager=eager).leaves(system)), solutions(system)
    for number in NUMBERS if found else ():
        assert min(leaf.at(number) for leaf in leaves) == min(values[number] for values in found)


@given(system=systems, eager=st.booleans())
def test_every_leaf_is_itself_a_solution(*, system: list[Constraint], eager: bool) -> None:
    for leaf in Search(eager=eager).leaves(system):
        values: Values = {number: leaf.at(number) for number in NUMBERS}
        assert all(holds(constraint, values) for constraint in system)


@given(systems)
def test_an_eager_search_has_no_choice_left(system: list[Constraint]) -> None:
    assert all(leaf.choices == [] for leaf in Search(eager=True).leaves(system))


def test_a_round_of_rises_that_lifts_itself_has_no_solution() -> None:
    assert not Search().consistent([Rise("a", "b", 1), Rise("b", "c", 0), Rise("c", "a", 0)])
    assert Search().consistent([Rise("a", "b", 1), Rise("b", "c", -1), Rise("c", "a", 0)])


def test_that_nothing_can_be_lifted_for_ever_is_seen_at_once() -> None:
    # By one strict step a round, it would take as many rounds as there are steps in a length to reach the upper bound.
    ring = [Rise(str((number + 1) % 200), str(number), STRICT) for number in range(200)]
    low = Either((Under("0", None, exactly(1_000_000)),))
    search = Search()
    assert not search.consistent([*ring, low])
    assert search.spent == 0


def test_a_long_chain_is_lifted_to_its_end() -> None:
    chain = [Rise(str(step + 1), str(step), 1) for step in reversed(range(50))]
    (leaf,) = Search().leaves([*chain, Rise("0", None, 1)])
    assert leaf.at("50") == 51


def test_when_the_budget_runs_out_it_does_not_say_no() -> None:
    wide = [OneOf(tuple(Case((Rise(f"{name}{way}", None, 1),)) for way in range(3))) for name in "abcdef"]
    impossible = [*wide, OneOf((Case((Rise("x", "x", 1),)),))]
    assert not Search().consistent(impossible)
    assert Search(budget=10).consistent(impossible)
    assert len(list(Search(budget=10).leaves(impossible))) > 1


def test_a_branch_that_is_not_wanted_is_left_out_with_all_its_leaves() -> None:
    either_way = [OneOf((Case((Rise("a", None, size),)), Case((Rise("b", None, size),)))) for size in (3, 2)]
    search = Search(eager=True, wanted=lambda branch: branch.at("b") < 3)
    assert [(leaf.at("a"), leaf.at("b")) for leaf in search.leaves(either_way)] == [(3, 0), (3, 2)]
    assert search.spent == 5


def test_the_budget_is_spent_only_by_what_goes_beyond_it() -> None:
    impossible: list[Constraint] = [Rise("a", None, 5), Either((Under("a", None, 3),))]
    assert not Search(budget=1).consistent(impossible)
    assert Search(budget=0).consistent(impossible)


def test_a_search_may_start_from_what_was_solved_before() -> None:
    start = before_choices([Rise("a", None, 5)])
    low = [Either((Under("a", None, 3),))]
    assert not Search().consistent(low, start)
    assert [leaf.at("a") for leaf in Search().leaves([], start)] == [5]
    assert before_choices([Rise("a", "b", 1), Rise("b", "a", 0)]) is None


def test_an_eager_search_tries_every_case_and_another_only_those_it_needs() -> None:
    either_way = [OneOf((Case(), Case((Rise("a", None, 3),))))]
    assert [leaf.at("a") for leaf in Search(eager=True).leaves(either_way)] == [0, 3]
    assert [leaf.at("a") for leaf in Search().leaves(either_way)] == [0]


def test_a_case_holds_in_a_leaf_where_all_of_it_does() -> None:
    leaf = Leaf({"a": 5, "b": 6}, {}, [], [])
    assert leaf.fits(Case((Rise("b", "a", 1), Rise("a", None, 5)), (Either((Under("a", "b", 0),)),)))
    assert not leaf.fits(Case((Rise("b", "a", 2),)))
    assert not leaf.fits(Case((Rise("b", "a", 1),), (Either((Under("b", "a", 1),)),)))


def test_a_choice_that_a_harder_one_keeps_is_never_made() -> None:
    nested = [OneOf((Case((Rise("a", None, size),)), Case((Rise("b", None, size),)))) for size in range(1, 40)]
    search = Search()
    leaves = list(search.leaves(nested))
    assert [(leaf.at("a"), leaf.at("b")) for leaf in leaves] == [(39, 0), (0, 39)]
    assert search.spent == 3


def test_a_choice_that_holds_as_things_lie_is_not_made() -> None:
    nothing_to_do = OneOf((Case((Rise("a", None, 0),)), Case((Rise("b", None, 5),))))
    (leaf,) = Search().leaves([nothing_to_do])
    assert (leaf.at("a"), leaf.at("b")) == (0, 0)


def lift(over: str, by: int, under: str | None = None) -> OneOf:
    """A choice that leaves none."""
    return OneOf((Case((Rise(over, under, by),)),))


@pytest.mark.parametrize(
    ("more", "less"),
    [
        (lift("b", 5), lift("at 9", 10)),
        (lift("b", 1, "at 9"), lift("c", 9)),
        (lift("b", 5), lift("at 1", 6)),
        (lift("c", 1, "at 9"), lift("b", 10)),
    ],
)
def test_of_broken_choices_that_which_asks_for_the_most_lifting_is_made_first(more: OneOf, less: OneOf) -> None:
    start = before_choices([Rise("at 9", None, 9), Rise("at 1", None, 1)])
    left: list[list[OneOf]] = []

    def looked_at(branch: Leaf) -> bool:
        left.append(branch.choices)
        return True

    list(Search(wanted=looked_at).leaves([more, less], start))
    assert left == [[more, less], [less], []]


@pytest.mark.parametrize(
    ("first", "then"),
    [
        (Under("a", "at 3", 0), Under("a", "b", 0)),
        (Under("a", "b", 2), Under("a", "c", 1)),
        (Under("at 3", "b", 0), Under("a", "c", 0)),
    ],
)
def test_of_ways_to_stay_under_that_which_asks_for_the_least_lifting_comes_first(first: Under, then: Under) -> None:
    start = before_choices([Rise("a", None, 5), Rise("at 3", None, 3)])
    for options in (first, then), (then, first):
        leaves = list(Search().leaves([Either(options)], start))
        assert [[leaf.holds(one) for one in (first, then)] for leaf in leaves] == [[True, False], [False, True]]


def test_a_choice_without_a_case_cannot_be_kept() -> None:
    assert not Search().consistent([OneOf(())])
    assert not Search().consistent([lift("a", 3), OneOf(()), lift("b", 3)])


def test_strictly_more_is_more_than_the_same_and_less_than_a_nanometre_more() -> None:
    assert exactly(5) < exactly(5) + STRICT < exactly(5) + 1000 * STRICT < exactly(6)
    assert nanometres(exactly(5) + STRICT) == 5
    assert nanometres(exactly(-5)) == -5
    assert [nearest(exactly(5) + STRICT * steps) for steps in (-9, 0, 9)] == [5, 5, 5]
    half = exactly(1) // 2
    assert [nearest(exactly(5) + by) for by in (-half - 1, -half, half - 1, half)] == [4, 5, 5, 6]


def test_a_leaf_tells_how_far_above_a_number_the_others_must_stay() -> None:
    (leaf,) = Search().leaves([Rise("b", "a", 2), Rise("c", "b", -1), Rise("c", "a", 0), Rise("d", None, 9)])
    assert leaf.reach("a") == {"a": 0, "b": 2, "c": 1}


def test_two_numbers_that_lift_each_other_by_nothing_stay_where_they_are() -> None:
    (leaf,) = Search().leaves([Rise("b", "a", 0), Rise("a", "b", 0)])
    assert leaf.reach("a") == {"a": 0, "b": 0}


def test_a_copy_of_a_leaf_is_lifted_on_its_own() -> None:
    leaf = Leaf({"a": 1}, {"a": [Rise("b", "a", 1)]}, [], [])
    copy = leaf.copy()
    copy.values["a"] = 5
    copy.rises["a"].append(Rise("c", "a", 1))
    assert (leaf.at("a"), len(leaf.rises["a"])) == (1, 1)


@pytest.mark.parametrize("eager", [False, True])
def test_an_impossible_case_is_passed_over(*, eager: bool) -> None:
    never = Case((Rise("a", "a", 1),))
    (leaf,) = Search(eager=eager).leaves([OneOf((never, Case((Rise("a", None, 3),))))])
    assert leaf.at("a") == 3


def test_every_number_of_a_system_is_named() -> None:
    case = Case((Rise("c", "d", 0),), (Either((Under("e", None, 1),)),))
    system: list[Constraint] = [Rise("a", None, 1), Either((Under("b", "a", 0),)), OneOf((case,))]
    assert set(numbers_of(system)) == {"a", "b", "c", "d", "e", None}
