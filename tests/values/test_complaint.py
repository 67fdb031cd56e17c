"""A complaint says what is wrong and what would mend it, in sentences."""

import pytest
from pydantic import ValidationError
from pydantic_core import PydanticCustomError

from bezelbook.values.complaint import BareNumber, Wrong, checked, field_error, sentences


def test_both_parts_become_sentences() -> None:
    assert str(Wrong("this is wrong", "Mend it")) == "this is wrong. Mend it."


def test_a_question_keeps_its_mark() -> None:
    assert sentences("this is wrong", "Did you mean that?") == "this is wrong. Did you mean that?"


def test_a_bare_number_keeps_the_number() -> None:
    wrong = BareNumber("165", "Write 165 mm or 165 in")
    assert (wrong.number, str(wrong)) == ("165", "165 is a bare number. Write 165 mm or 165 in.")


def test_a_field_error_carries_both_parts() -> None:
    error = field_error(Wrong("what", "mend"))
    assert (error.type, error.context) == ("bezel", {"what": "what", "mend": "mend"})


def test_a_bare_number_carries_the_number_too() -> None:
    error = field_error(BareNumber("165", "mend"))
    assert error.type == "bare_number"
    assert error.context == {"what": "165 is a bare number", "mend": "mend", "number": "165"}


def test_a_check_lets_sound_text_through_and_refuses_the_rest() -> None:
    check = checked(lambda text: Wrong("too short", "Say more") if len(text) < 3 else None)
    assert check("long enough") == "long enough"
    with pytest.raises(PydanticCustomError, match=r"too short\. Say more\."):
        check("no")


def test_a_complaint_is_a_value_error_as_every_caller_expects() -> None:
    assert issubclass(Wrong, ValueError)
    assert not issubclass(Wrong, ValidationError)
