from itertools import pairwise

from bezelbook.reasoning.looks.ranking import looks, openings
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
