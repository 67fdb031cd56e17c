"""Every error of a model is said in shop words that a person can act on."""

from typing import Any

import pytest
from pydantic import ValidationError
from pydantic_core import ErrorDetails

from bezelbook.kinds import Kind
from bezelbook.store.expected import Expected
from bezelbook.store.located import Located, locate
from bezelbook.store.schema_files import file_schema
from bezelbook.store.wording import worded
from tests.store.toys import BOX, LOG

SOUND: dict[str, Any] = {"name": "n", "verdict": "goes in"}


_NO_FIELD = (
    'there is no field "tonnage" here. Take it out, or use one of '
    "name, verdict, height, depth, lid, sides, count, screws, splits, colour."
)


def said(kind: Kind, data: dict[str, Any]) -> str:
    record = {**data, "id": "x"}
    with pytest.raises(ValidationError) as caught:
        kind.reader.validate_python(record)
    (error,) = caught.value.errors()
    return str(worded(locate(error, record), Expected(file_schema(kind), record)))


@pytest.mark.parametrize(
    ("change", "text"),
    [
        (
            {"verdict": "goes inn"},
            '"goes inn" is not one of goes in, goes in if, does not, not tried. Did you mean "goes in"?',
        ),
        (
            {"verdict": "?"},
            '"?" is not one of goes in, goes in if, does not, not tried. Write one of these.',
        ),
        (
            {"verdict": True},
            "true is not one of goes in, goes in if, does not, not tried. Write one of these.",
        ),
        (
            {"verdict": None},
            "verdict is blank. Write goes in, goes in if, does not or not tried.",
        ),
        ({"hieght": "3 mm"}, 'there is no field "hieght" here. Did you mean "height"?'),
        ({"tonnage": 3}, _NO_FIELD),
        ({"height": 165}, "height is a bare number, 165. Write 165 mm or 165 in."),
        ({"height": "2-3 mm"}, 'height: "2-3 mm" is a range. Write 2.5 ± 0.5 mm.'),
        ({"name": 12}, 'name is 12, not text. Put it in quotes: "12".'),
        ({"name": False}, 'name is false, not text. Put it in quotes: "false".'),
        ({"name": None}, "name is blank. Fill it in, or take the line out."),
        ({"name": ["a"]}, "name is a list, not text. Write it as text on one line."),
        ({"name": {"a": 1}}, "name is a group of fields, not text. Write it as text on one line."),
        ({"name": ""}, "name is empty. Fill it in, or take the line out."),
        ({"name": "n" * 121}, "name is 121 long, and 120 is the most. Shorten it to 120."),
        (
            {"count": "three"},
            'count is "three", not a whole number. Write a whole number, without quotes, fraction or unit.',
        ),
        ({"count": 2.5}, "count is 2.5, not a whole number. Write a whole number, without quotes, fraction or unit."),
        ({"count": 0}, "count is 0. Write 1 or more."),
        ({"count": 10}, "count is 10. Write 9 or less."),
        (
            {"screws": "M5"},
            'screws is "M5", not a list. Put it in square brackets: [M5].',
        ),
        (
            {"splits": "early"},
            'splits is "early", not a group of fields. Write its fields as key: value lines below, further in.',
        ),
        (
            {"screws": [5]},
            "entry 1 of screws is 5, not a group of fields. Write its fields as key: value lines below, further in.",
        ),
        ({"screws": [{"length": "5 mm"}]}, '"thread" is missing. Add it: thread, such as M5.'),
        ({"screws": [{"length": "5 mm", "thread": "5"}]}, 'thread cannot be "5". Write thread, such as M5.'),
        (
            {"splits": {"Build": "early"}},
            '"Build" is not a name made of lower-case words (a to z, 0 to 9) joined by hyphens. Write build.',
        ),
        ({"colour": "grey"}, "colour: grey is not a colour. Say light or dark."),
        ({"colour": "none"}, "colour: value error, none of that. Compare it with an example of this kind."),
    ],
)
def test_a_box_s_mistake_is_said(change: dict[str, Any], text: str) -> None:
    assert said(BOX, {**SOUND, **change}) == text


@pytest.mark.parametrize(
    ("data", "text"),
    [
        ({}, '"form" is missing. Add it: one of tried, seen.'),
        ({"form": "tired", "what": "w"}, '"tired" is not one of tried, seen. Did you mean "tried"?'),
        ({"form": "seen"}, '"what" is missing. Add it: what was seen.'),
        (
            {"form": "seen", "what": "w", "day": "09/03/2026"},
            'day: "09/03/2026" is not a day of the calendar from 2000 to 2099. Write 2026-03-09 or 2026-09-03.',
        ),
    ],
)
def test_a_log_s_mistake_is_said(data: dict[str, Any], text: str) -> None:
    assert said(LOG, data) == text


def made_up(type_: str, value: object, context: dict[str, Any], data: dict[str, Any] | None = None) -> str:
    error = ErrorDetails(type=type_, loc=("size",), msg="Input is odd", input=value, ctx=context)
    schema: dict[str, Any] = {"properties": {"size": data or {}}}
    return str(worded(Located(error, ("size",)), Expected(schema, {})))


@pytest.mark.parametrize(
    ("type_", "value", "context", "text"),
    [
        ("literal_error", "x", {"expected": "'flush'"}, '"x" is not flush. Write flush.'),
        ("greater_than", 0, {"gt": 0}, "size is 0. Write more than 0."),
        ("less_than", 9, {"lt": 9}, "size is 9. Write less than 9."),
        ("too_short", [1], {"min_length": 2}, "size has fewer than 2. Write at least 2."),
        ("too_long", [1, 2, 3], {"max_length": 2}, "size is 3 long, and 2 is the most. Shorten it to 2."),
        ("string_pattern_mismatch", "x", {"pattern": "^M"}, 'size cannot be "x". Write it like ^M.'),
        ("string_type", "x" * 99, {}, f'size is "{"x" * 57}...", not text. Write it as text on one line.'),
        ("something_new", 5, {}, "size: input is odd. Compare it with an example of this kind."),
        ("missing", {}, {}, '"size" is missing. Add it: it is needed.'),
    ],
)
def test_errors_that_no_kind_has_yet_are_said_too(
    type_: str, value: object, context: dict[str, Any], text: str
) -> None:
    assert made_up(type_, value, context) == text


def test_an_unforeseen_error_says_what_the_field_is_for() -> None:
    said_ = made_up("something_new", 5, {}, {"description": "How big it is."})
    assert said_ == "size: input is odd. It is for this: how big it is."


def test_one_word_that_is_missing_is_named() -> None:
    assert made_up("missing", {}, {}, {"const": "flush"}) == '"size" is missing. Add it: flush.'


def test_a_long_list_of_fields_is_cut_short() -> None:
    schema: dict[str, Any] = {"properties": {f"field{n}": {} for n in range(20)}}
    error = ErrorDetails(type="extra_forbidden", loc=("zzz",), msg="", input=1)
    wrong = worded(Located(error, ("zzz",), at_key=True), Expected(schema, {}))
    assert wrong.mend.endswith("field13, field14 or others")


def test_an_error_about_the_whole_record_has_a_name_too() -> None:
    error = ErrorDetails(type="something_new", loc=(), msg="Odd", input={})
    assert str(worded(Located(error, ()), Expected({}, {}))).startswith("this record: odd. ")
