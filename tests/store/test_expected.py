"""The schema says which fields and words a place takes, and what it is for."""

from typing import Any

import pytest

from bezelbook.store.expected import Expected
from bezelbook.store.place import Path
from bezelbook.store.schema_files import file_schema
from tests.store.toys import BOX, LOG


def box(**data: object) -> Expected:
    return Expected(file_schema(BOX), data)


def log(**data: object) -> Expected:
    return Expected(file_schema(LOG), data)


def test_fields_are_those_of_the_mapping_at_the_place() -> None:
    assert "height" in box().fields(())
    assert "id" not in box().fields(())
    assert box(screws=[{}]).fields(("screws", 0)) == ("thread", "length")


def test_the_form_in_the_data_decides_which_fields_there_are() -> None:
    assert log(form="tried").fields(()) == ("form", "what", "tried")
    assert log(form="seen").fields(()) == ("form", "what", "day", "at")


@pytest.mark.parametrize("data", [{}, {"form": "other"}])
def test_without_a_known_form_all_fields_are_possible(data: dict[str, Any]) -> None:
    assert set(log(**data).fields(())) == {"form", "what", "tried", "day", "at"}


@pytest.mark.parametrize(
    ("path", "words"),
    [
        (("verdict",), ("goes in", "goes in if", "does not", "not tried")),
        (("depth",), ("not looked",)),
        (("sides",), ("all",)),
        (("sides", 0), ("left", "right", "centre")),
        (("name",), ()),
        (("nothing", "here"), ()),
        (("splits", "hand"), ()),
        (("splits", 5), ()),
        (("screws", 0, "thread"), ()),
    ],
)
def test_words_are_those_that_may_stand_there(path: Path, words: tuple[str, ...]) -> None:
    assert box(sides=["left"], splits={"hand": "left"}).words(path) == words


def test_forms_are_words_of_their_field() -> None:
    assert log().words(("form",)) == ("tried", "seen")


@pytest.mark.parametrize(
    ("path", "purpose"),
    [
        (("name",), "What people call it"),
        (("screws", 0, "thread"), "Thread, such as M5"),
        (("colour",), ""),
        (("nothing",), ""),
        (("screws", 0), ""),
    ],
)
def test_the_purpose_is_the_field_s_description(path: Path, purpose: str) -> None:
    assert box(screws=[{}]).purpose(path) == purpose
