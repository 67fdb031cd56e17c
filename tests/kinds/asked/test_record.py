from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.asked.record import Asked

LEAST = {"id": "van-rear-doors", "words": "van2 rear doors?"}


def asked(**fields: Any) -> Asked:
    return Asked.model_validate({**LEAST, **fields})


def test_words_are_enough_and_were_asked_once() -> None:
    question = asked()
    assert (question.times, question.last_asked, question.vehicle, question.what) == (1, None, None, None)


def test_nothing_is_no_question() -> None:
    with pytest.raises(ValidationError, match="words"):
        Asked.model_validate({"id": "some-file"})


def test_words_stay_as_they_were_typed() -> None:
    assert asked(words="  VAN2 6.5 in??  ").words == "  VAN2 6.5 in??  "


def test_what_was_understood_of_it_may_be_words_or_a_record() -> None:
    assert asked(vehicle="cargo-van-2", what="six and a half coaxial").what == "six and a half coaxial"


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("words", ""),
        ("times", 0),
        ("times", 1.5),
        ("last_asked", "yesterday"),
        ("vehicle", "the van"),
        ("place", "Rear door"),
        ("year", 2021),
        ("splits", {"heater": 1}),
        ("customer", "somebody"),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        asked(**{field: wrong})
