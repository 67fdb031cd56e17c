from typing import Any

import pytest

from bezelbook.reasoning.wiring_asked.question import WiringQuestion
from bezelbook.reasoning.words import read_words
from tests.reasoning.circuits.a_car import CAR, DASH, DOOR, book, seen
from tests.reasoning.making import record

DISPLAY = record("head_units", "face", {"name": "Thin face", "size_class": "two-piece display", "goes_with": ["brick"]})
BOX = record("head_units", "brick", {"name": "Brick", "size_class": "two-piece box"})
RADIO = record("head_units", "plain-radio", {"name": "Plain radio", "size_class": "double", "body_depth": "100 mm"})


def asked(words: str) -> Any:
    return read_words(book(seen("one"), DISPLAY, BOX, RADIO), f"small van {words}").read


@pytest.mark.parametrize(
    ("words", "jobs"),
    [
        ("which harness", ("replace the radio",)),
        ("late adapter for plain radio", ("replace the radio",)),
        ("which harness late keep the radio", ("keep it and amplify", "add a sub")),
        ("keep the factory radio and add a sub", ("add a sub",)),
        ("keep the radio, amp on the fronts", ("keep it and amplify",)),
        ("amplify the fronts and add a sub", ("keep it and amplify", "add a sub")),
        ("antenna lead", ("aerial",)),
        ("aerial lead", ("aerial",)),
        ("speaker lead", ("speaker lead",)),
        ("which harness for the speakers", ("speaker lead",)),
        ("keep the radio with an amplifier", ("keep it and amplify",)),
        ("amplify the speakers", ("keep it and amplify",)),
        ("speaker leads to a sub", ("add a sub",)),
        ("speaker harness with the radio kept", ("replace the radio",)),
        ("front door left wiring", ("speaker lead",)),
        ("thin face wiring", ("two-piece radio",)),
        ("two piece radio wiring", ("two-piece radio",)),
        ("which plug has it", ("replace the radio",)),
    ],
)
def test_words_that_ask_for_wiring_name_a_job(words: str, jobs: tuple[str, ...]) -> None:
    found = asked(words)
    assert isinstance(found, WiringQuestion)
    assert found.jobs == jobs


@pytest.mark.parametrize("words", ["165 deep", "plain radio", "sub dash 165 mm", "165 deep with the lead aside"])
def test_words_that_ask_whether_a_thing_goes_in_do_not(words: str) -> None:
    assert not isinstance(asked(words), WiringQuestion)


def test_the_car_is_as_far_known_as_the_words_say() -> None:
    found = asked("late year 3 harness for plain radio")
    assert (found.vehicle, found.places, dict(found.splits), found.year, found.unit) == (
        CAR,
        (DASH,),
        {"build": "late"},
        3,
        "plain-radio",
    )
    assert asked("front door left speaker lead").places == (DOOR,)
    assert asked("speaker lead").places == (DOOR,)
    assert asked("plain radio or brick harness").unit is None


def test_no_vehicle_asks_for_one() -> None:
    assert read_words(book(), "which harness").read.ask == "Which vehicle?"  # type: ignore[union-attr]
