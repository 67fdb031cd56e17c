"""How low and how high a number can be, against trying out all numbers."""

from collections.abc import Callable, Sequence

import pytest
from hypothesis import given

from bezelbook.reasoning import extremes
from bezelbook.reasoning.bounds import Case, Constraint, Either, Leaf, OneOf, Rise, Search, Under, before_choices
from bezelbook.reasoning.extremes import Ends, ends_in, ends_of, limit_of, tops_of
from tests.reasoning.systems import NUMBERS, solutions, systems


def leaves(system: Sequence[Constraint]) -> list[Leaf]:
    return list(Search(eager=True).leaves(system))


def lowest(through: Sequence[Leaf], number: str) -> int:
    return min(least for leaf in through for _, (least, _) in ends_in(leaf, [number]))


def ceiling(leaf: Leaf, number: str) -> int | None:
    return dict(ends_in(leaf, [number]))[number][1]


@given(systems)
def test_the_lowest_is_the_least_of_any_solution(system: list[Constraint]) -> None:
    found = solutions(system)
    for number in NUMBERS if found else ():
        assert lowest(leaves(system), number) == min(values[number] for values in found)


def test_what_no_leaf_holds_up_is_nothing() -> None:
    assert lowest(leaves([Rise("b", None, 2)]), "a") == 0


@given(systems)
def test_no_solution_reaches_the_ceiling_of_every_leaf(system: list[Constraint]) -> None:
    found, through = solutions(system), leaves(system)
    for number in NUMBERS if found else ():
        tops = [ceiling(leaf, number) for leaf in through]
        known = [top for top in tops if top is not None]
        if len(known) == len(tops):
            assert max(values[number] for values in found) < max(known)


def every_end(system: Sequence[Constraint]) -> dict[str, Ends]:
    """The ends of each number, with nothing left out: those of every leaf of a search that tries the same things."""
    through = list(Search().leaves(system))
    tops = {number: [ceiling(leaf, number) for leaf in through] for number in NUMBERS}
    highest = {number: None if None in of else max(top for top in of if top is not None) for number, of in tops.items()}
    return {number: (lowest(through, number), highest[number]) for number in NUMBERS}


@given(systems)
def test_the_ends_of_many_numbers_are_those_of_each(system: list[Constraint]) -> None:
    start = before_choices(system)
    if Search().consistent(system):
        assert ends_of(start, NUMBERS) == every_end(system)
    else:
        assert ends_of(start, NUMBERS) == dict.fromkeys(NUMBERS, (0, None))


def test_no_way_is_gone_through_that_tells_nothing_new(monkeypatch: pytest.MonkeyPatch) -> None:
    # Six lengths, each read at one of nine spots: more ways than the budget, and two of them tell all there is to tell.
    spots = [f"spot {number}" for number in range(9)]
    system = [OneOf(tuple(Case((Rise(spot, None, length),)) for spot in spots)) for length in (1, 2, 3, 4, 5, 6)]
    made: list[Search] = []

    def made_to(wanted: Callable[[Leaf], bool]) -> Search:
        made.append(Search(wanted=wanted))
        return made[-1]

    monkeypatch.setattr(extremes, "Search", made_to)
    assert ends_of(before_choices([*system, Either((Under("spot 0", None, 9),))]), spots) == {
        spot: (0, 9 if spot == "spot 0" else None) for spot in spots
    }
    assert made[0].spent <= 2 * len(spots) * len(system)


def test_a_way_that_reaches_only_higher_than_those_before_is_gone_through() -> None:
    under_5, under_9 = (Either((Under("a", None, top),)) for top in (5, 9))
    held = (Rise("b", None, 1),)
    choice = OneOf((Case(held, (under_5,)), Case(held, (under_9,))))
    assert ends_of(before_choices([choice]), ["a", "b"]) == {"a": (0, 9), "b": (1, None)}


@pytest.mark.parametrize(
    ("ends", "than", "within"),
    [
        ((0, 5), (0, 5), True),
        ((1, 4), (0, 5), True),
        ((1, 4), (0, None), True),
        ((0, None), (0, None), True),
        ((0, 6), (0, 5), False),
        ((0, None), (0, 5), False),
        ((0, 4), (1, 5), False),
    ],
)
def test_ends_that_lie_no_further_out_tell_nothing_new(ends: Ends, than: Ends, *, within: bool) -> None:
    assert extremes._within(ends, than) is within


def test_what_cannot_be_solved_says_nothing_of_its_numbers() -> None:
    assert (
        ends_of(None, ["a", "b"])
        == ends_of(before_choices([OneOf(())]), ["a", "b"])
        == {"a": (0, None), "b": (0, None)}
    )


def test_the_ceiling_counts_what_a_number_lifts_with_it() -> None:
    (leaf,) = leaves([Rise("b", "a", 2), Either((Under("b", None, 7),))])
    assert (ceiling(leaf, "b"), ceiling(leaf, "a"), ceiling(leaf, "c")) == (7, 5, None)


def test_an_either_breaks_only_once_all_of_it_is_broken() -> None:
    both = Either((Under("a", None, 4), Under("b", None, 6)))
    (leaf,) = leaves([both, Rise("b", "a", 1)])
    assert ceiling(leaf, "a") == 5
    (leaf,) = leaves([both])
    assert ceiling(leaf, "a") is None
    (leaf,) = leaves([both, Rise("b", None, 6)])
    assert ceiling(leaf, "a") == 4


def test_a_need_with_a_top_of_its_own_bounds_the_cell_under_it() -> None:
    system = [Either((Under("a", "n", 1),)), Either((Under("n", None, 5),)), Either((Under("n", None, 3),))]
    (leaf,) = leaves(system)
    assert tops_of(leaf.eithers) == tops_of(reversed(leaf.eithers)) == {"n": 3}
    assert limit_of(Under("a", "n", 1), {"n": 3}) == 4
    assert limit_of(Under("a", "n", 1), {}) is None
    assert ceiling(leaf, "a") == 4
