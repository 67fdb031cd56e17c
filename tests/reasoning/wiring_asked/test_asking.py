from typing import Any

import pytest

from bezelbook.reasoning.wiring_asked.asking import read_wiring_question
from bezelbook.reasoning.wiring_asked.question import WiringQuestion
from bezelbook.values.complaint import Wrong
from tests.reasoning.circuits.a_car import CAR, DASH, DOOR, book, seen
from tests.reasoning.making import record

RADIO = record("head_units", "radio", {"name": "A radio", "also": ["the usual"], "size_class": "double"})


def read(**content: Any) -> WiringQuestion:
    reading = read_wiring_question(book(seen("one"), RADIO), {"vehicle": CAR} | content)
    assert (reading.took, reading.question) == ((), None)
    return reading.read


def test_a_job_by_its_name_or_by_what_people_call_it() -> None:
    assert read(job="replace the radio") == WiringQuestion(CAR, (DASH,), ("replace the radio",))
    assert read(job="Sub only").jobs == ("add a sub",)
    assert read(job="keep  and amplify").jobs == ("keep it and amplify",)
    assert read(job="antenna").jobs == ("aerial",)


def test_speakers_are_at_the_places_for_speakers() -> None:
    assert read(job="speaker lead").places == (DOOR,)
    assert read(job="speaker lead", place=DOOR).places == (DOOR,)


def test_what_is_known_of_the_car_and_the_parts() -> None:
    found = read(job="radio", place=DASH, splits={"build": "late", "audio": "not looked"}, year=3, unit="the usual")
    assert (found.places, dict(found.splits), found.year, found.unit) == ((DASH,), {"build": "late"}, 3, "radio")


@pytest.mark.parametrize(
    ("content", "words"),
    [
        ({}, '"job" is missing'),
        ({"job": "sing"}, 'there is no job "sing"'),
        ({"job": "radio", "place": "boot"}, 'the book has no place of small-van-1 "boot"'),
        ({"job": "radio", "place": DOOR}, "front-door-left is no place for that job (door lower)"),
        ({"job": "speaker lead", "place": DASH}, "dash-centre is no place for that job (plain opening)"),
        ({"job": "radio", "unit": "gone"}, 'the book has no head unit "gone"'),
        ({"job": "amplify", "amplifier": "gone"}, 'the book has no amplifier "gone"'),
        ({"job": "radio", "what": "165 mm"}, 'there is no "what" in a question about wiring'),
        ({"job": "radio", "vehicle": "gone"}, 'the book has no vehicle "gone"'),
    ],
)
def test_what_is_not_in_the_book_is_said(content: dict[str, Any], words: str) -> None:
    with pytest.raises(Wrong) as found:
        read(**content)
    assert words in found.value.what


@pytest.mark.parametrize(
    ("content", "mend"),
    [
        ({"job": "aerials"}, 'Did you mean "aerial"?'),
        ({"job": "radio", "place": DOOR}, "Leave the place out, or name the one where it is done"),
        ({"job": "radio", "place": "dash-center"}, 'Did you mean "dash-centre"?'),
        ({"job": "radio", "unit": "radios"}, 'Did you mean "radio"?'),
        ({"job": "amplify", "amplifier": "gone"}, "There is none to name yet"),
        ({"job": "radio", "units": "radio"}, 'Did you mean "unit"?'),
    ],
)
def test_what_to_write_instead_is_said_with_it(content: dict[str, Any], mend: str) -> None:
    with pytest.raises(Wrong) as found:
        read(**content)
    assert found.value.mend == mend
