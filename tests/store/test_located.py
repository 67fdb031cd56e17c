"""The model's way to an error becomes the way through the record's own keys."""

from typing import Any

import pytest
from pydantic import TypeAdapter, ValidationError
from pydantic_core import ErrorDetails

from bezelbook.kinds import Kind
from bezelbook.store.located import Located, locate
from tests.store.toys import BOX, LOG


def located(kind: Kind, data: dict[str, Any]) -> list[Located]:
    return errors(kind.reader, data)


def errors(reader: TypeAdapter[Any], data: object) -> list[Located]:
    with pytest.raises(ValidationError) as caught:
        reader.validate_python(data)
    return [locate(error, data) for error in caught.value.errors()]


def test_a_value_is_found_below_its_keys() -> None:
    data = {"id": "x", "name": "n", "verdict": "goes in", "screws": [{"thread": "M5", "length": 5}]}
    (found,) = located(BOX, data)
    assert (found.path, found.at_key, found.fork) == (("screws", 0, "length"), False, None)


def test_a_missing_field_is_found_where_it_should_be() -> None:
    (found,) = located(BOX, {"id": "x", "name": "n", "verdict": "goes in", "screws": [{"thread": "M5"}]})
    assert (found.path, found.at_key) == (("screws", 0, "length"), True)


def test_an_unknown_field_is_wrong_at_its_key() -> None:
    (found,) = located(BOX, {"id": "x", "name": "n", "verdict": "goes in", "hieght": "1 mm"})
    assert (found.path, found.at_key) == (("hieght",), True)


def test_a_wrong_key_is_told_from_its_value() -> None:
    data = {"id": "x", "name": "n", "verdict": "goes in", "splits": {"Build": "early", "hand": "Left"}}
    key, value = located(BOX, data)
    assert (key.path, key.at_key) == (("splits", "Build"), True)
    assert (value.path, value.at_key) == (("splits", "hand"), False)


def test_the_name_of_a_form_is_no_key() -> None:
    (found,) = located(LOG, {"id": "x", "form": "seen", "what": "w", "at": ["5 mm", 6]})
    assert found.path == ("at", 1)
    assert found.fork == ((), "seen")


def test_a_form_that_is_called_like_a_field_is_told_from_it() -> None:
    data = {"id": "x", "form": "tried", "what": "", "tried": ""}
    assert [found.path for found in located(LOG, data)] == [("what",), ("tried",)]
    missing, present = located(LOG, {"id": "x", "form": "tried", "tried": 5})
    assert (missing.path, present.path) == (("what",), ("tried",))


@pytest.mark.parametrize("form", ["tired", 5, None, ["tried"]])
def test_a_wrong_form_is_found_at_the_field_that_says_it(form: object) -> None:
    (found,) = located(LOG, {"id": "x", "form": form})
    assert (found.path, found.at_key) == (("form",), False)


def test_a_form_that_is_missing_is_found_where_it_should_be() -> None:
    (found,) = located(LOG, {"id": "x"})
    assert (found.path, found.error["type"]) == (("form",), "union_tag_not_found")


def test_each_reading_of_a_choice_forks_at_the_same_place() -> None:
    data = {"id": "x", "name": "n", "verdict": "goes in", "sides": ["left", "rihgt"]}
    word, entry = located(BOX, data)
    assert (word.path, entry.path) == (("sides",), ("sides", 1))
    assert word.fork
    assert entry.fork
    assert word.fork[0] == entry.fork[0] == ("sides",)
    assert word.fork[1] != entry.fork[1]


def test_an_error_that_leads_nowhere_is_about_the_whole() -> None:
    error = ErrorDetails(type="odd", loc=("a", 3), msg="odd", input=None)
    assert locate(error, {"a": [1]}).path == ()
    assert locate(error, {"a": 5}).path == ()
