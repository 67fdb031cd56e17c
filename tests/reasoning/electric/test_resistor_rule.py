from typing import Any

import pytest

from bezelbook.kinds.note.record import After
from bezelbook.kinds.record import Record
from bezelbook.reasoning.electric.resistor_rule import TEST, ResistorRule, resistor_rules
from tests.reasoning import making
from tests.reasoning.making import CAR, split

AUDIO = split("base", "upgraded", differs_in="audio")
UPGRADED = {"sound": "upgraded"}


def after(named: str, *resistors: dict[str, Any], **content: Any) -> After:
    said = {"form": "after", "vehicle": CAR, "place": "door", "resistors": list(resistors), "date": "2026-01-02"}
    made: After = making.record("notes", named, said | {"author": named} | content)
    return made


def resistor(value: str, with_it: str | None = None, without: str | None = None) -> dict[str, Any]:
    said = {"value": value, "with_it": with_it, "without_it": without}
    return {key: value for key, value in said.items() if value is not None}


def rules(*notes: Record) -> dict[str, ResistorRule]:
    car = making.vehicle(splits={"sound": AUDIO})
    return {dict(rule.package)["sound"]: rule for rule in resistor_rules(making.book(car, *notes), car)}


NEEDS = resistor("20 ohm", "works", "muted")
NEEDS_NOT = resistor("47 ohm", "works", "works")


# Trade 13: resistors on the fronts only if the package is upgraded, unknown else.
def test_what_is_proven_on_one_package_says_nothing_of_another() -> None:
    found = rules(after("a", NEEDS, splits=UPGRADED))
    assert (found["upgraded"].says, found["upgraded"].until_settled) == ("needs it", "")
    assert (found["base"].says, found["base"].until_settled) == ("unknown", "")
    assert [proof.resistor.value.typed for proof in found["upgraded"].proven] == ["20 ohm"]
    assert found["upgraded"].witnesses == 1
    assert found["upgraded"].missing == ()
    assert found["base"].says == "unknown"
    assert found["base"].proven == ()
    assert found["base"].missing == (TEST,)


def test_a_note_without_a_package_is_quoted_beside_every_one_and_proves_nothing() -> None:
    for rule in rules(after("a", NEEDS)).values():
        assert rule.says == "unknown"
        assert [proof.shows for proof in rule.beside] == ["which package it was is not looked"]


@pytest.mark.parametrize("fails", ["muted", "hiss", "shuts off", "Muted "])
def test_with_and_without_together_prove_it(fails: str) -> None:
    assert rules(after("a", resistor("20 ohm", "Works", fails), splits=UPGRADED))["upgraded"].says == "needs it"


@pytest.mark.parametrize(
    ("tried", "shows"),
    [
        (resistor("20 ohm", "works"), "it worked with it, and nobody tried without"),
        (resistor("20 ohm", "works", "not tried"), "it worked with it, and nobody tried without"),
        (resistor("20 ohm", "works", "crackles"), "it worked with it, and nobody tried without"),
        (resistor("20 ohm", "muted", "muted"), "it did not work with this one"),
        (resistor("20 ohm"), "nobody says whether it worked"),
        (resistor("20 ohm", "hums", "muted"), "nobody says whether it worked"),
    ],
)
def test_one_half_of_a_trial_proves_nothing(tried: dict[str, Any], shows: str) -> None:
    rule = rules(after("a", tried, splits=UPGRADED))["upgraded"]
    assert rule.says == "unknown"
    assert [proof.shows for proof in rule.beside] == [shows]
    assert rule.proven == ()


def test_what_works_without_needs_none() -> None:
    rule = rules(after("a", NEEDS_NOT, splits=UPGRADED))["upgraded"]
    assert rule.says == "not needed"
    assert rule.until_settled == ""
    assert [proof.note.id for proof in rule.against] == ["a"]
    assert rule.proven == ()


def test_two_that_cannot_both_be_true_are_argued_over_and_until_then_it_needs_it() -> None:
    rule = rules(after("a", NEEDS, splits=UPGRADED), after("b", NEEDS_NOT, splits=UPGRADED))["upgraded"]
    assert (rule.says, rule.until_settled) == ("argued over", "needs it")
    assert rule.witnesses == 2
    assert ([proof.note.id for proof in rule.proven], [proof.note.id for proof in rule.against]) == (["a"], ["b"])
    assert rule.beside == ()


def test_a_year_tells_the_package_where_only_one_lists_it() -> None:
    values = {"base": {"years": [1, 2]}, "upgraded": {"years": [3, 4]}}
    car = making.vehicle(splits={"sound": {"values": values, "differs_in": "audio"}})
    found = resistor_rules(making.book(car, after("a", NEEDS, year=3)), car)
    assert [(rule.package, rule.says) for rule in found] == [
        ((("sound", "base"),), "unknown"),
        ((("sound", "upgraded"),), "needs it"),
    ]


# Trade C40: two values that both worked stand beside each other.
def test_every_proven_value_is_told() -> None:
    rule = rules(after("a", NEEDS, resistor("47 ohm", "works", "muted"), splits=UPGRADED))["upgraded"]
    assert [proof.resistor.value.typed for proof in rule.proven] == ["20 ohm", "47 ohm"]


def test_a_copied_job_is_one_witness() -> None:
    same = {"splits": UPGRADED, "job": "jan-02-bay-1"}
    rule = rules(after("a", NEEDS, **same), after("b", NEEDS, **same))["upgraded"]
    assert rule.witnesses == 1


def test_a_note_that_was_replaced_or_made_on_another_car_says_nothing() -> None:
    found = rules(after("a", NEEDS, splits=UPGRADED), after("b", splits=UPGRADED, replaces="a"))
    assert found["upgraded"].says == "unknown"
    elsewhere = rules(after("a", NEEDS, splits=UPGRADED, vehicle="another"))
    assert elsewhere["upgraded"].says == "unknown"
