from bezelbook.reasoning.circuits.in_words import (
    ends_words,
    in_hand,
    lacks_together,
    own_supply,
    rows_together,
    verdict_words,
)
from bezelbook.reasoning.circuits.jobs import JOBS, Job
from bezelbook.reasoning.circuits.table import table
from tests.reasoning.circuits.a_car import chained, plug_in, seen, tee
from tests.reasoning.making import record


def test_circuits_that_fare_alike_stand_together() -> None:
    found = rows_together(table(chained(seen("one"), plug_in("plug-in", "constant", "ground"))))
    assert found[0] == ("constant and ground", "used", found[0][2])


def test_circuits_with_the_same_remedies_stand_together() -> None:
    assert "reverse, park brake and speed" in dict(lacks_together(chained(seen("one"), plug_in())))


def test_only_an_added_amplifier_has_a_supply_of_its_own() -> None:
    assert own_supply(chained(seen("one"), plug_in())) == ""
    for job in JOBS[1:]:
        words = own_supply(chained(seen("one"), tee(), job=Job(job)))
        assert "fused beside the battery" in words
        assert "ground of its own" in words


def test_a_piece_is_in_hand_when_the_shelf_has_one() -> None:
    shelf = record("shelf", "plug-in", {"thing": "plug-in", "count": 1})
    empty = record("shelf", "plug-in", {"thing": "plug-in", "count": 0})
    assert in_hand(chained(plug_in(), shelf).car.book, "plug-in") == "on the shelf"
    assert in_hand(chained(plug_in(), empty).car.book, "plug-in") == "to order"


def test_ends_are_said_in_their_order() -> None:
    chain = chained(seen("one"), tee(ends={"a": {"connector": "square"}, "b": {"ends_in": "phono"}, "c": {}}))
    words = ends_words(chain.car.book, chain.car.book.adapters["tee"])
    assert words == "The square to phono to an end nobody looked at"


def test_the_verdict_names_what_is_missing() -> None:
    assert verdict_words(chained(seen("one"), plug_in("plug-in", "constant"))).startswith("not complete: missing")
