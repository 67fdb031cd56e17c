from typing import Annotated, Any, Literal

import pytest
from pydantic import Field, TypeAdapter, ValidationError

from bezelbook.kinds.pieces import Circumstances, Filter, HolePattern, InAWord, MadeFor, Screws
from bezelbook.kinds.record import Part
from bezelbook.values.ident import ID_PATTERN


class Way(Part):
    does: Literal["passes", "tapped"] = Field(description="What it does.")
    lead: str | None = Field(default=None, description="Its lead.")


WAYS: TypeAdapter[Way] = TypeAdapter(Annotated[Way, InAWord("does")])


@pytest.mark.parametrize("word", ["passes", "tapped"])
def test_a_piece_of_one_word_may_be_written_as_that_word(word: str) -> None:
    assert WAYS.validate_python(word) == WAYS.validate_python({"does": word})


def test_a_piece_with_more_to_say_has_its_fields() -> None:
    assert WAYS.validate_python({"does": "tapped", "lead": "white"}).lead == "white"


@pytest.mark.parametrize("written", ["pass", "", None, 1, True, [], ["passes"], {}, {"lead": "white"}])
def test_nothing_else_is_such_a_piece(written: object) -> None:
    with pytest.raises(ValidationError):
        WAYS.validate_python(written)


def test_a_wrong_word_is_complained_about_as_the_word_it_stands_for() -> None:
    with pytest.raises(ValidationError) as caught:
        WAYS.validate_python("pass")
    assert [(error["loc"], error["type"]) for error in caught.value.errors()] == [(("does",), "literal_error")]


def test_an_editor_offers_the_words_and_the_fields() -> None:
    words, fields = WAYS.json_schema()["anyOf"]
    assert words == {"type": "string", "enum": ["passes", "tapped"]}
    assert fields == {"$ref": "#/$defs/Way"}


def test_a_word_is_held_to_what_its_field_is_held_to() -> None:
    made: TypeAdapter[MadeFor] = TypeAdapter(Annotated[MadeFor, InAWord("vehicle")])
    assert made.validate_python("compact-hatch-2").vehicle == "compact-hatch-2"
    word, _ = made.json_schema()["anyOf"]
    assert word == {"type": "string", "pattern": ID_PATTERN}
    with pytest.raises(ValidationError, match="vehicle"):
        made.validate_python("The hatch")


def test_a_thing_may_be_made_for_a_whole_vehicle() -> None:
    made = MadeFor.model_validate({"vehicle": "compact-hatch-2"})
    assert (made.place, made.splits) == (None, {})


@pytest.mark.parametrize("piece", [HolePattern, Filter, Circumstances])
def test_a_piece_may_say_nothing_yet(piece: type[Part]) -> None:
    assert not any(piece().model_dump().values())


@pytest.mark.parametrize(
    ("piece", "wrong"),
    [
        (MadeFor, {"vehicle": "The hatch"}),
        (MadeFor, {"place": "dash-centre"}),
        (HolePattern, {"count": -1}),
        (HolePattern, {"circle": 156}),
        (HolePattern, {"first": "13 o'clock"}),
        (Filter, {"order": 9}),
        (Filter, {"order": 1.5}),
        (Filter, {"lets_through": "highs"}),
        (Screws, {"length": "12 mm"}),
        (Screws, {"thread": "M5", "length": 12}),
        (Circumstances, {"mounts": "flush-kit"}),
    ],
)
def test_a_piece_says_which_value_it_does_not_take(piece: type[Part], wrong: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        piece.model_validate(wrong)


def test_a_whole_number_may_be_written_with_a_point() -> None:
    assert Filter.model_validate({"order": 2.0}).order == 2
