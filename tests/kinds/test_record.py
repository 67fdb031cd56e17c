from typing import Annotated, Any

import pytest
from pydantic import Field, ValidationError

from bezelbook.kinds.record import AsWhole, Many, Name, Named, Part, Record, Text, kind_of, names
from bezelbook.kinds.shop.record import Shop


class Box(Part):
    count: Annotated[int, Field(ge=-9, le=9999), AsWhole] = 0
    names: Many[Name] = ()
    about: Text | None = None


@pytest.mark.parametrize(("written", "meant"), [(1, 1), (1.0, 1), (-2.0, -2), (1e3, 1000)])
def test_a_number_without_a_fraction_is_whole(written: float, meant: int) -> None:
    count = Box.model_validate({"count": written}).count
    assert count == meant
    assert type(count) is int


@pytest.mark.parametrize("written", [1.5, "1", True, None, float("inf"), float("nan")])
def test_nothing_else_is_whole(written: Any) -> None:
    with pytest.raises(ValidationError):
        Box.model_validate({"count": written})


def test_a_list_is_read_as_a_tuple() -> None:
    assert Box.model_validate({"names": ["a", "b"]}).names == ("a", "b")


@pytest.mark.parametrize("written", ["ab", {"a": 1}, None, [1], [""], ["x" * 121], [None]])
def test_nothing_else_is_read_as_a_list_of_names(written: Any) -> None:
    with pytest.raises(ValidationError):
        Box.model_validate({"names": written})


@pytest.mark.parametrize("written", ["x", "x" * 2000, " "])
def test_a_text_has_something_in_it(written: str) -> None:
    assert Box.model_validate({"about": written}).about == written


@pytest.mark.parametrize("written", ["", "x" * 2001, 1])
def test_and_an_end(written: object) -> None:
    with pytest.raises(ValidationError):
        Box.model_validate({"about": written})


def test_a_field_that_nobody_defined_is_refused() -> None:
    with pytest.raises(ValidationError, match="extra"):
        Box.model_validate({"stray": 1})


def test_a_record_does_not_change() -> None:
    record = Record(id="some-file")
    with pytest.raises(ValidationError, match="frozen"):
        record.id = "another"  # type: ignore[misc]


@pytest.mark.parametrize("name", ["Some-File", "some file", "con", "", "x" * 65, "some_file"])
def test_a_record_is_named_by_lower_case_words(name: str) -> None:
    with pytest.raises(ValidationError):
        Record(id=name)


def test_what_people_call_by_name_has_one_name_and_may_have_others() -> None:
    assert Named(id="some-file", name="Short double").also == ()
    with pytest.raises(ValidationError, match="name"):
        Named.model_validate({"id": "some-file"})


def test_a_field_says_which_kinds_it_names_and_whether_words_will_do() -> None:
    assert names("mount") == {"x-names": ["mount"]}
    assert names("mount", "speaker", in_words=True) == {"x-names": ["mount", "speaker"], "x-in-words": True}


def test_a_kind_is_called_as_the_folder_of_its_model() -> None:
    assert kind_of(Shop) == "shop"
