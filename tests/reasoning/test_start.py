"""Bounds that many questions start from, against trying out all numbers."""

from hypothesis import given

from bezelbook.reasoning.bounds import Case, Constraint, Either, OneOf, Rise, Under, before_choices
from bezelbook.reasoning.extremes import ends_of
from bezelbook.reasoning.start import MOST_STARTS, Start, Starts
from tests.reasoning.systems import NUMBERS, solutions, systems


@given(systems, systems)
def test_more_bounds_agree_exactly_where_some_numbers_satisfy_all_of_them(
    first: list[Constraint], more: list[Constraint]
) -> None:
    assert Start(first).agrees(more) == bool(solutions([*first, *more]))


@given(systems, systems, systems)
def test_one_question_changes_nothing_for_the_next(
    first: list[Constraint], one: list[Constraint], other: list[Constraint]
) -> None:
    start = Start(first)
    start.agrees(one)
    assert start.agrees(other) == Start(first).agrees(other)


def test_a_choice_that_does_for_the_bounds_alone_is_taken_back_where_a_question_needs_the_other() -> None:
    either_way = OneOf((Case((Rise("a", None, 1),)), Case((Rise("b", None, 1),))))
    start = Start([either_way])
    assert start.agrees([Either((Under("a", None, 1),))])
    assert start.agrees([Either((Under("b", None, 1),))])
    assert not start.agrees([Either((Under("a", None, 1),)), Either((Under("b", None, 1),))])


def test_nothing_agrees_with_what_cannot_be() -> None:
    lifts_itself = [Rise("a", "b", 1), Rise("b", "a", 0)]
    no_choice = [OneOf(())]
    for impossible in (lifts_itself, no_choice):
        assert not Start(impossible).agrees([])
        assert list(Start(impossible).leaves()) == []


def test_what_is_added_holds_beside_what_was_there_and_mends_nothing() -> None:
    low = Either((Under("a", None, 3),))
    assert not Start([Rise("a", None, 5)]).adding([low]).agrees([])
    assert not Start([Rise("a", "b", 1), Rise("b", "a", 0)]).adding([low]).agrees([])
    assert Start([Rise("b", None, 5)]).adding([low]).agrees([])


@given(systems, systems)
def test_bounds_may_be_added_one_lot_after_the_other(first: list[Constraint], more: list[Constraint]) -> None:
    assert Start(first).adding(more).agrees([]) == bool(solutions([*first, *more]))


def test_a_start_is_begun_once_as_long_as_it_is_kept() -> None:
    starts, begun = Starts(), []

    def begin() -> Start:
        begun.append(1)
        return Start([])

    assert starts.of("a", begin) is starts.of("a", begin)
    assert len(begun) == 1
    for number in range(MOST_STARTS):
        starts.of(number, begin)
    starts.of("a", begin)
    assert len(begun) == MOST_STARTS + 2


def test_a_start_knows_the_numbers_that_were_added_last() -> None:
    assert Start([Rise("a", "b", 1)]).adding([Either((Under("c", None, 3),))]).numbers == {"c", None}


@given(systems)
def test_its_ends_are_those_of_what_it_has(system: list[Constraint]) -> None:
    assert Start(system).ends(NUMBERS) == ends_of(before_choices(system), NUMBERS)


def test_a_start_goes_through_the_choices_that_it_needs_or_else_through_all() -> None:
    start = Start([OneOf((Case(), Case((Rise("a", None, 3),))))])
    assert [leaf.at("a") for leaf in start.leaves()] == [0]
    assert [leaf.at("a") for leaf in start.leaves(eager=True)] == [0, 3]
