"""Resistors are compared between jobs whose cars may be of one build, on leads that may be the same."""

from typing import Any

import pytest

from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.circuits.resistors_tried import resistors_tried, tried_on_one_build
from tests.reasoning.circuits.test_one_car import VEHICLE
from tests.rules.case_books import records_of

PLACES = {"places": {"dash": VEHICLE["places"]["dash"], "deck": VEHICLE["places"]["dash"]}}  # type: ignore[index]


def _book(*after: dict[str, Any], **vehicle: Any) -> KnowledgeBase:
    notes = {f"n{i}": {"form": "after", "vehicle": "hatch", "place": "dash", **one} for i, one in enumerate(after)}
    return knowledge_base(records_of({"vehicles": {"hatch": {**VEHICLE, **PLACES, **vehicle}}, "notes": notes}))


def _with(*across: str) -> dict[str, Any]:
    return {"resistors": [{"value": "20 ohm", "across": list(across)}]}


@pytest.mark.parametrize(
    ("one", "other", "compared"),
    [
        (_with(), _with(), 1),
        (_with("left front +"), _with("left front +", "left front -"), 1),
        (_with("left front +"), _with("left rear +"), 0),
        (_with("left front +"), _with(), 1),
        (_with(), {**_with(), "place": "deck"}, 0),
        ({**_with(), "splits": {"build": "early"}}, {**_with(), "splits": {"build": "late"}}, 0),
        ({"resistors": [*_with()["resistors"], *_with()["resistors"]]}, {}, 0),
    ],
)
def test_only_what_may_be_one_build_is_compared(one: dict[str, Any], other: dict[str, Any], compared: int) -> None:
    assert len(list(tried_on_one_build(_book(one, other), "hatch"))) == compared


def test_a_job_that_came_back_counts_for_nothing() -> None:
    assert resistors_tried(_book({**_with(), "comeback": "muted again"}), "hatch") == []


@pytest.mark.parametrize(
    ("bears_on", "compared"),
    [
        ({"subjects": ["amplifier"]}, 0),
        ({"subjects": ["circuits"]}, 0),
        ({"subjects": ["room"]}, 1),
        ({"places": ["dash"]}, 0),
        ({"places": ["deck"]}, 1),
    ],
)
def test_builds_that_differ_in_the_amplifier_or_the_circuits_of_the_place_are_kept_apart(
    bears_on: dict[str, Any], compared: int
) -> None:
    splits = {"build": {"values": {"early": {}, "late": {}}, "bears_on": bears_on}}
    notes = ({**_with(), "splits": {"build": "early"}}, {**_with(), "splits": {"build": "late"}})
    assert len(list(tried_on_one_build(_book(*notes, splits=splits), "hatch"))) == compared


def test_a_job_elsewhere_hides_none_of_the_others() -> None:
    book = _book({**_with(), "place": "deck"}, _with(), _with())
    assert [(one.note.id, other.note.id) for one, other in tried_on_one_build(book, "hatch")] == [("n1", "n2")]
