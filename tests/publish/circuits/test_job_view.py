from typing import Any

from bezelbook.publish.address import Links, vehicle_page
from bezelbook.publish.circuits.job_view import JobView, job_view
from bezelbook.reasoning.circuits.in_words import load_words, verdict_words
from bezelbook.reasoning.circuits.jobs import Job
from tests.reasoning.circuits.a_car import CAR, DOOR, after, chained, module, plug_in, seen, tee


def view(*records: Any, job: Job | None = None) -> JobView:
    chain = chained(*records, job=job)
    return job_view(chain, Links(vehicle_page(CAR), chain.car.book))


def test_a_chain_is_drawn_its_pieces_numbered_and_its_circuits_grouped() -> None:
    found = view(
        seen("one"),
        plug_in("plug-in", "constant", "ground", needs_module=["box"]),
        module(needs=[], outputs={"accessory": {}}),
    )
    assert [(one.number, one.name, one.ends) for one in found.pieces] == [
        (1, "The plug-in", "The square to bare leads"),
        (2, "The box", ""),
    ]
    assert found.pieces[0].at.endswith("adapters/plug-in.html")
    assert found.pieces[0].why.endswith("to order")
    assert 'class="wires"' in found.drawing
    assert found.rows[0][:2] == ("constant and ground", "used")
    assert found.sure == "worked out"


def test_an_end_of_which_nobody_said_anything_says_so() -> None:
    ends = {"a": {"connector": "square", "side": "unit side"}, "b": {"ends_in": "bare leads"}, "c": {}}
    assert view(seen("one"), plug_in(ends=ends)).pieces[0].ends == "The square to bare leads to an end nobody looked at"


def test_circuits_with_the_same_remedy_stand_together() -> None:
    lacks = dict(view(seen("one"), plug_in()).lacks)
    assert "reverse, park brake and speed" in lacks
    assert lacks["reverse, park brake and speed"].endswith("never made up")


def test_without_a_chain_there_are_only_the_looks() -> None:
    found = view()
    assert (found.pieces, found.drawing, found.rows, found.lacks, found.sure) == ((), "", (), (), "")
    assert found.verdict == "nobody knows: the plug comes first"
    assert len(found.looks) == 1


def test_the_verdict_names_what_is_missing() -> None:
    assert verdict_words(chained(seen("one"), plug_in("plug-in", "constant"))).startswith(
        "not complete: missing ground, accessory, left"
    )
    fed = chained(seen("one"), tee(), job=Job("keep it and amplify"))
    assert verdict_words(fed) == "complete for the speakers; missing accessory"
    assert verdict_words(chained(seen("one"))).startswith("nothing in the book")


def resistor(name: str, without: str) -> Any:
    one = {"value": "20 ohm", "without_it": without}
    return after(name, place=DOOR, splits={"audio": "base"}, resistors=[one])


def test_load_resistors_are_only_what_somebody_tried() -> None:
    def words(*records: Any) -> str:
        return load_words(chained(seen("one"), tee(), *records, job=Job("keep it and amplify")))

    assert words().endswith("a ten-minute test with the speakers off.")
    assert words(resistor("a", "muted")).endswith("without them it failed in this build. 20 ohm was proven.")
    assert "not needed" in words(resistor("a", "works"))
    assert "argued over; until settled: needed. 20 ohm" in words(resistor("a", "works"), resistor("b", "muted"))
    assert load_words(chained()) == ""
