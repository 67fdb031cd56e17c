"""What a rule says outlives the notes that raised it, and is a value that can be kept and compared."""

from dataclasses import FrozenInstanceError, asdict, fields, replace
from typing import Any

import pytest

from bezelbook.checking import check, rules
from bezelbook.finding import Finding, NoteScope, PlaceScope, Quote
from bezelbook.store.rule_cases import rule_cases
from tests.rules.case_books import book_of

# What the design asks of a finding.
PROMISED = {
    *("rule", "key", "weight", "says", "quotes", "difference", "proposals", "loss", "question", "answers"),
    *("vehicle", "place"),
}


def ladder(book: dict[str, Any]) -> Finding:
    [found] = [one for one in check(book_of({"book": book})).findings if one.rule == "depth-ladder-reversed"]
    return found


@pytest.fixture
def book() -> dict[str, Any]:
    return dict(next(case for case in rule_cases("depth-ladder-reversed") if case["expect"] == "fires")["book"])


def test_a_finding_says_all_that_a_team_needs_to_settle_it(book: dict[str, Any]) -> None:
    assert {field.name for field in fields(Finding)} == PROMISED
    assert all(asdict(ladder(book)).values())


def test_the_key_outlives_the_notes(book: dict[str, Any]) -> None:
    renamed = {f"other-{name}": said for name, said in book["notes"].items()}
    before, after = ladder(book), ladder({**book, "notes": renamed})
    assert before.key == after.key
    assert list(after.notes) == [f"other-{note}" for note in before.notes]


def test_another_place_or_state_has_another_key(book: dict[str, Any]) -> None:
    elsewhere = {name: {**said, "place": "glovebox"} for name, said in book["notes"].items()}
    early = {
        name: {**said, "splits": {"build": "early"}} if "splits" in said else said
        for name, said in book["notes"].items()
    }
    keys = {ladder(book).key, ladder({**book, "notes": elsewhere}).key, ladder({**book, "notes": early}).key}
    assert len(keys) == 3


def test_a_finding_and_a_quote_are_values(book: dict[str, Any]) -> None:
    found = ladder(book)
    assert found == ladder(book)
    assert hash(found) == hash(ladder(book))
    with pytest.raises(FrozenInstanceError):
        found.says = "something else"  # type: ignore[misc]
    assert Quote("n", "w") == Quote("n", "w", ())


def test_every_rule_has_a_scope_and_says_what_sort_of_fault_it_finds() -> None:
    assert {rule.scope for rule in rules()} >= {NoteScope, PlaceScope}
    assert {rule.sort for rule in rules()} >= {"conflict", "slip"}


def test_what_a_finding_quotes_of_parts_is_no_note(book: dict[str, Any]) -> None:
    found = replace(ladder(book), quotes=(Quote("a", "w"), Quote("b", "w", kind="mount")))
    assert found.notes == ("a",)
