"""Two notes are of one build where what each says leaves only that one, and may be where it leaves one in common."""

import pytest

from bezelbook.knowledge_base import knowledge_base
from bezelbook.reasoning.circuits.cars import cars_of
from bezelbook.reasoning.circuits.one_car import must_be_one, shared
from tests.rules.case_books import records_of

VEHICLE = {
    "name": "compact hatch 2",
    "vehicle_class": "compact hatch",
    "generation": 2,
    "model_years": 5,
    "splits": {"build": {"values": {"early": {}, "late": {}}}},
    "places": {"dash": {"kind": "plain opening", "side": "centre"}},
}


@pytest.mark.parametrize(
    ("ours", "theirs", "may", "must"),
    [
        ("early", "early", ["early"], "must be one"),
        ("early", "late", [], ""),
        ("early", None, ["early"], ""),
        (None, None, ["early", "late"], ""),
    ],
)
def test_blank_build_may_be_either(ours: str | None, theirs: str | None, may: list[str], must: str) -> None:
    notes = {
        name: {"form": "seen", "vehicle": "hatch", "place": "dash", "splits": {"build": build} if build else {}}
        for name, build in (("a", ours), ("b", theirs))
    }
    book = knowledge_base(records_of({"vehicles": {"hatch": VEHICLE}, "notes": notes}))
    cars = cars_of(book, book.vehicles["hatch"], "dash")
    a, b = book.notes["a"], book.notes["b"]
    assert [dict(car.build)["build"] for car in shared(cars, a, b, "plug")] == may
    assert must_be_one(cars, a, b, "plug") is bool(must)
