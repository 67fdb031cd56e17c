"""Decisions are weighed against the book as written, and what the book says once they act is what is shown."""

from collections.abc import Mapping
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bezelbook.checking.settling import Checked, check
from bezelbook.store.rule_cases import rule_cases
from tests.rules.case_books import book_of

LADDER = "depth-ladder-reversed"
Files = Mapping[str, Mapping[str, Any]]


@pytest.fixture
def clash() -> Files:
    """A case in which it goes in although something shallower did not: with the very same kit, in words that say so."""
    named = {case["name"]: case["book"] for case in rule_cases(LADDER)}
    return dict(named["told that a deeper one goes in, nothing said of the mount"])


def checked(files: Files, **decisions: Mapping[str, Any]) -> Checked:
    return check(book_of({"book": {**files, "decisions": decisions}}))


def key_of(files: Files) -> str:
    [key] = [finding.key for finding in checked(files).findings if finding.rule == LADDER]
    return key


def ladders(of: Checked) -> list[tuple[str, ...]]:
    return [finding.notes for finding in of.findings if finding.rule == LADDER]


def test_a_decision_that_explains_the_clash_does_away_with_it(clash: Files) -> None:
    both = {"question": key_of(clash), "decided": "both true", "reason": "it was the proud one"}
    proud = {**clash, "mounts": {**clash["mounts"], "proud": {"name": "proud", "mount_kind": "kit", "proud": "30 mm"}}}
    done = checked(proud, d={**both, "read_as": [{"note": "they-say", "mounts": ["proud"]}]})
    assert ladders(done) == []
    assert done.book.notes["they-say"].mounts == ("proud",)  # type: ignore[union-attr]


def test_a_decision_that_strikes_the_loser_keeps_it_in_the_book(clash: Files) -> None:
    one = {"question": key_of(clash), "decided": "one stands", "reason": "told only"}
    done = checked(clash, d={**one, "struck": [{"note": "they-say", "because": "told only"}]})
    assert ladders(done) == []
    assert list(done.book.struck) == ["they-say"]


def test_no_problem_takes_the_question_off_the_list_and_changes_nothing(clash: Files) -> None:
    done = checked(clash, d={"question": key_of(clash), "decided": "no problem", "reason": "we know why"})
    assert ladders(done) == []
    assert done.book.notes == checked(clash).book.notes


def test_what_waits_for_a_look_stays_on_the_list(clash: Files) -> None:
    look = {"what": "offer it up", "who": "rk"}
    done = checked(clash, d={"question": key_of(clash), "decided": "go and look", "reason": "?", "look": look})
    assert ladders(done) == [("they-say", "short-of-room")]


def test_a_decision_about_another_question_does_nothing_and_breaks_nothing(clash: Files) -> None:
    strike = {"decided": "one stands", "reason": "r", "struck": [{"note": "they-say", "because": "b"}]}
    done = checked(clash, d={"question": "no such question", **strike})
    assert ladders(done) == [("they-say", "short-of-room")]
    assert done.book.struck == {}


def test_a_decision_does_nothing_once_a_note_that_it_weighed_says_something_else(clash: Files) -> None:
    strike = {"decided": "one stands", "reason": "r", "struck": [{"note": "they-say", "because": "b"}]}
    weighed = [{"note": "they-say", "said": "deeper one: does not"}]
    done = checked(clash, d={"question": key_of(clash), **strike, "notes": weighed})
    assert done.book.struck == {}
    again = [finding for finding in done.findings if finding.rule == "settled-question-open-again"]
    assert [finding.notes for finding in again] == [("they-say", "short-of-room")]
    assert ladders(done) == [], "it is told once, with what had been settled"


MOUNTS = (["flush-kit"], ["proud-kit"], "none", None)
decided_words = st.sampled_from(("both true", "one stands", "go and look", "same job twice", "no problem"))


@st.composite
def decisions(draw: st.DrawFn) -> dict[str, Any]:
    """Any decision about the ladder, sensible or not."""
    made: dict[str, Any] = {"question": draw(st.sampled_from((KEY, KEY, "another"))), "reason": "r"}
    made |= {"decided": draw(decided_words), "notes": ["they-say", "gone"]}
    mount = draw(st.sampled_from(MOUNTS))
    if mount:
        made["read_as"] = [{"note": draw(st.sampled_from(("they-say", "gone"))), "mounts": mount}]
    if draw(st.booleans()):
        made["struck"] = [{"note": draw(st.sampled_from(("they-say", "short-of-room", "gone"))), "because": "b"}]
    return made


BOOK = dict(next(case for case in rule_cases(LADDER) if case["expect"] == "fires")["book"])
KEY = key_of(BOOK)


@settings(max_examples=60)
@given(st.lists(decisions(), max_size=3), st.lists(decisions(), max_size=3))
def test_checking_after_edits_of_decisions_is_checking_everything(before: list[Any], after: list[Any]) -> None:
    def book(of: list[Any]) -> Any:
        return book_of({"book": {**BOOK, "decisions": {f"d-{at}": one for at, one in enumerate(of)}}})

    kept = check(book(before)).kept
    following, whole = check(book(after), kept), check(book(after))
    assert following == whole
    assert list(following.kept) == list(whole.kept)


@given(st.lists(decisions(), max_size=3))
def test_no_decision_loses_a_note(made: list[Any]) -> None:
    of = checked(BOOK, **{f"d{at}": one for at, one in enumerate(made)}).book
    assert sorted([*of.notes, *of.struck]) == sorted(BOOK["notes"])
