"""Everything tried or asked about at a place is one thing whatever it is called, and every question counts."""

from typing import Any

from bezelbook.reasoning.hanging.things import things_at
from tests.reasoning import making

MM = 1_000_000


def asked(name: str, **said: Any) -> Any:
    return making.record("questions", name, {"words": "does it go?", "vehicle": making.CAR, **said})


CONE = {"name": "cone", "nominal": "6 1/2 in", "shape": "round", "speaker_kind": "coaxial"}


def test_what_was_tried_and_what_was_asked_about() -> None:
    deep = making.unit("deep", also=["the deep one"])
    cone = making.record("speakers", "cone", CONE | {"mounting_depth": "63 ± 1 mm caliper"})
    questions = (
        asked("q1", place=making.HOLE, what="deep", times=3),
        asked("q2", what="cone"),
        asked("q3", what="a thing nobody knows"),
        asked("q4", place="boot", what="deep"),
        asked("q5", vehicle="another"),
        asked("q6"),
    )
    book = making.book(deep, cone, making.tried("n", what="the deep one"), *questions)
    found = things_at(book, making.CAR, making.HOLE)
    assert found.sizes.keys() == {"deep", "cone", "a thing nobody knows"}
    assert found.asked == {"deep", "cone", "a thing nobody knows"}
    assert found.times == 6
    assert found.sizes["cone"]["depth"].low == 62 * MM
    assert found.sizes["deep"]["depth"].high == 111 * MM
    assert found.sizes["a thing nobody knows"] == {}
    assert things_at(book, making.CAR, "").times == 7


def test_a_thing_only_asked_about_has_its_records_sizes() -> None:
    book = making.book(making.unit("deep"), asked("q", what="deep"))
    assert things_at(book, making.CAR, making.HOLE).sizes["deep"]["depth"].low == 109 * MM
