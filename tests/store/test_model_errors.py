"""A refused record comes down to one mistake for each thing that a person would mend."""

from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds import Kind
from bezelbook.store.model_errors import mistakes
from bezelbook.store.schema_files import file_schema
from bezelbook.values.complaint import sentences
from tests.store.toys import BOX, LOG

SOUND = {"name": "n", "verdict": "goes in"}


def found(kind: Kind, data: dict[str, Any]) -> dict[tuple[str | int, ...], str]:
    record = {**data, "id": "x"}
    with pytest.raises(ValidationError) as caught:
        kind.reader.validate_python(record)
    made = mistakes(caught.value, record, file_schema(kind))
    assert len({(mistake.path, mistake.at_key) for mistake in made}) == len(made)
    return {mistake.path: sentences(mistake.what, mistake.mend) for mistake in made}


def test_five_mistakes_are_five() -> None:
    data = {"verdict": "goes inn", "hieght": 3, "height": 165, "count": 12}
    assert found(BOX, data) == {
        ("name",): '"name" is missing. Add it: what people call it.',
        ("verdict",): '"goes inn" is not one of goes in, goes in if, does not, not tried. Did you mean "goes in"?',
        ("hieght",): 'there is no field "hieght" here. Did you mean "height"?',
        ("height",): "height is a bare number, 165. Write 165 mm or 165 in.",
        ("count",): "count is 12. Write 9 or less.",
    }


def test_a_choice_that_fails_every_way_is_one_mistake_with_every_mend() -> None:
    assert found(BOX, {**SOUND, "depth": 6.5}) == {
        ("depth",): "depth is a bare number, 6.5. Write 6.5 mm or 6.5 in, or write not looked."
    }
    assert found(BOX, {**SOUND, "lid": "none"}) == {
        ("lid",): 'lid: "none" has no number. Write it like 165 mm or 6 1/2 in, or write not there or not looked.'
    }
    assert found(BOX, {**SOUND, "sides": 5}) == {
        ("sides",): "sides is 5, not a list. Write each entry on a line of its own below, after a hyphen, or write all."
    }


def test_the_reading_that_got_further_is_the_one_that_was_meant() -> None:
    assert found(BOX, {**SOUND, "sides": ["left", "rihgt", 5]}) == {
        ("sides", 1): '"rihgt" is not one of left, right, centre. Did you mean "right"?',
        ("sides", 2): "5 is not one of left, right, centre. Write one of these.",
    }


def test_forms_of_a_record_are_no_choice_to_complain_about() -> None:
    assert found(LOG, {"form": "seen", "at": [1, 2]}) == {
        ("what",): '"what" is missing. Add it: what was seen.',
        ("at", 0): "entry 1 of at is a bare number, 1. Write 1 mm or 1 in.",
        ("at", 1): "entry 2 of at is a bare number, 2. Write 2 mm or 2 in.",
    }
