from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

from bezelbook.reasoning.looks.look import CHASSIS, Look, Todo
from bezelbook.reasoning.looks.pair import Pair
from bezelbook.reasoning.looks.ranking import best_first, looks, openings
from tests.reasoning import making

CARS = making.vehicle(
    places={
        making.HOLE: {"kind": "plain opening", "side": "centre"},
        "overhead": {"kind": "overhead console", "side": "centre"},
        "door": {"kind": "door lower", "side": "left"},
    }
)
ASKED = making.record(
    "questions", "asked", {"words": "?", "times": 4, "vehicle": making.CAR, "place": "overhead", "what": "box"}
)
BASE = making.book(CARS, making.unit(), making.unit("printed", body_depth="110 mm printed"), ASKED)


def test_every_place_that_takes_a_box_is_an_opening() -> None:
    assert list(openings(BASE)) == [(making.CAR, making.HOLE), (making.CAR, "overhead")]


def test_the_best_look_comes_first_and_what_is_asked_for_most_is_best() -> None:
    found = looks(BASE)
    assert all(one.worth >= other.worth for one, other in pairwise(found))
    assert found[0].todo.place == "overhead"
    front = next(look.todo.what for look in found if look.todo.tool == "caliper")
    same = [look.worth for look in found if look.todo.what == front]
    assert len(same) == 2
    assert same[0] > same[1]


def test_places_that_were_worked_out_already_are_used() -> None:
    place = making.place(BASE)
    only = looks(BASE, {(making.CAR, making.HOLE): place})
    assert {look.todo.place for look in only} <= {making.HOLE, None}
    assert looks(making.book()) == ()


@pytest.mark.parametrize("times", [1, 4])
def test_what_was_asked_for_even_once_may_be_offered_up_before_all_is_read(times: int) -> None:
    asked = making.changed(ASKED, times=times)
    found = looks(making.book(CARS, making.unit(), making.unit("other"), asked))
    offered = [look.todo for look in found if look.todo.tool == "the unit itself"]
    assert [(todo.place, todo.about) for todo in offered] == [("overhead", "box")]


def look(
    vehicle: str | None, place: str | None, what: str, about: str | None = None, *, worth: int = 1, minutes: int = 2
) -> Look:
    todo = Todo(vehicle, place, (), what, "caliper", minutes, CHASSIS, about)
    return Look(todo, {}, (), Fraction(worth))


def test_of_looks_that_pay_the_same_together_the_one_that_may_settle_something_by_itself_comes_first() -> None:
    pair = Pair(making.CAR, making.HOLE, (), "box")
    alone = replace(look("9", "9", "z", minutes=3), settles={pair: Fraction(1, 7)})
    ranked = [look("9", "9", "z", worth=2), alone, look("1", "1", "a")]
    assert sorted(ranked[1:] + ranked[:1], key=best_first) == ranked


def test_of_looks_that_are_worth_the_same_the_quickest_comes_first_then_the_bench_then_by_car_place_and_words() -> None:
    ranked = [
        look("9", "9", "z", worth=3),
        look("9", "9", "z", worth=2, minutes=1),
        look(None, None, "a", worth=2),
        look(None, None, "b"),
        look(None, None, "b", "1"),
        look(None, None, "b", "a-unit"),
        look("1", None, "z"),
        look("1", "2", "a"),
        look("1", "9", "a"),
        look("1", "a-place", "a"),
        look("a-car", "1", "a"),
        look("a-car", "1", "b"),
    ]
    assert sorted(ranked[1::2] + ranked[::2], key=best_first) == ranked
