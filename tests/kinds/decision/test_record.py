from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.decision.record import Decision, ReadAs
from bezelbook.kinds.note.state import State

LEAST = {
    "id": "which-kit",
    "question": "depth-ladder-reversed/compact-hatch-2/dash-centre/late/depth",
    "decided": "both true",
    "reason": "Two kits.",
}


def decision(**fields: Any) -> Decision:
    return Decision.model_validate({**LEAST, **fields})


def test_a_question_what_was_decided_and_why_are_enough() -> None:
    made = decision()
    assert (made.notes, made.read_as, made.struck, made.look, made.author, made.date) == (
        (),
        (),
        (),
        None,
        None,
        None,
    )


@pytest.mark.parametrize("missing", ["question", "decided", "reason"])
def test_none_of_them_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Decision.model_validate({field: value for field, value in LEAST.items() if field != missing})


def test_whatever_a_note_may_leave_blank_about_its_car_a_decision_may_fill() -> None:
    blanks = set(State.model_fields) - {"vehicle", "place"}
    assert blanks < set(ReadAs.model_fields)


def test_a_note_is_read_as_something_and_another_is_struck_with_the_reason() -> None:
    made = decision(
        read_as=[{"note": "a", "mounts": ["proud-kit"], "datum": "sub-dash face"}],
        struck=[{"note": "b", "because": "Eyeballed only."}],
    )
    assert (made.read_as[0].mounts, made.read_as[0].loom) == (("proud-kit",), None)
    assert made.struck[0].because == "Eyeballed only."


def test_a_look_has_something_to_look_at() -> None:
    assert decision(decided="go and look", look={"what": "Which kit?", "who": "rk"}).look is not None
    with pytest.raises(ValidationError, match="what"):
        decision(look={"who": "rk"})


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("decided", "approved"),
        ("decided", "newest wins"),
        ("notes", ["A note"]),
        ("notes", [{"said": "170 does not."}]),
        ("differs", ["it depends"]),
        ("read_as", [{"mounts": ["proud-kit"]}]),
        ("read_as", [{"note": "a", "verdict": "goes in"}]),
        ("read_as", [{"note": "a", "unit": "cm"}]),
        ("struck", [{"note": "a"}]),
        ("reason", ""),
        ("author", "A. Body"),
        ("date", "27.4.2026"),
        ("look", {"what": "x", "takes": 10}),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        decision(**{field: wrong})
