"""An answer as lines: nothing that matters is left out, and a condition ends the sentence it belongs to."""

from collections.abc import Mapping
from typing import Any

from bezelbook.cli.answer_text import answer_lines, choice_lines
from bezelbook.pipeline import Choice

NOTE = {"note": "n", "author": None, "date": None, "sure": "fitted", "words": "it went", "why": "carries the answer"}
PLAIN: Mapping[str, Any] = {
    "verdict": "goes in",
    "until_settled": None,
    "for": {"words": "a box in the dash"},
    "number": None,
    "sure": None,
    "witnesses": 0,
    "notes": [],
    "argued": [],
    "unknown": [],
    "needs": [],
    "instead": [],
}


def lines(**changes: Any) -> list[str]:
    return list(answer_lines({**PLAIN, **changes}))


def test_the_shortest_answer_says_the_verdict_for_what_and_that_nothing_is_unknown() -> None:
    assert lines() == ["GOES IN", "a box in the dash", "nothing unknown"]


def test_a_full_answer_has_its_parts_in_the_order_of_the_counter() -> None:
    assert lines(
        verdict="argued over",
        until_settled="does not",
        number={"words": "depth: it asks 165 mm"},
        sure="fitted",
        witnesses=2,
        argued=[{**NOTE, "note": "a"}],
        unknown=[{"what": "the build", "look": "the vents", "changes": "late: goes in"}],
        needs=["flush kit"],
        notes=[NOTE],
    ) == [
        "ARGUED OVER",
        "until settled: does not",
        "a box in the dash",
        "depth: it asks 165 mm",
        "fitted, 2 independent jobs",
        "argued over: a: it went",
        "not known: the build (look: the vents; changes late: goes in)",
        "needs: flush kit",
        "note n, carries the answer: it went",
    ]


def test_each_offer_is_one_line_with_how_sure_what_it_takes_and_what_is_to_buy() -> None:
    offer = {
        "kind": "another mount",
        "words": "with proud kit",
        "verdict": "goes in if",
        "condition": "the build is late",
        "sure": "fitted",
        "witnesses": 1,
        "needs": ["proud kit", "a lead"],
        "to_buy": ["proud kit"],
    }
    bare = {**offer, "verdict": "goes in", "condition": "", "sure": None, "needs": [], "to_buy": []}
    assert lines(instead=[offer, bare])[-2:] == [
        (
            "instead, another mount: with proud kit: goes in if the build is late; fitted, 1 independent job; "
            "needs proud kit; a lead; to buy: proud kit"
        ),
        "instead, another mount: with proud kit: goes in; nothing to buy",
    ]


def test_the_first_condition_ends_the_sentence_and_the_others_are_needs() -> None:
    said = lines(verdict="goes in if", needs=["the build is late", "this may be cut: lip"])
    assert said[0] == "GOES IN IF the build is late"
    assert said[-1] == "needs: this may be cut: lip"


def test_what_is_worked_out_without_a_fitting_counts_no_jobs() -> None:
    assert "worked out" in lines(sure="worked out")
    assert "fitted, 1 independent job" in lines(sure="fitted", witnesses=1)


def test_an_answer_is_not_changed_by_being_told() -> None:
    needs = ["the build is late"]
    list(answer_lines({**PLAIN, "verdict": "goes in if", "needs": needs}))
    assert needs == ["the build is late"]


def test_a_choice_is_told_with_its_options_by_name() -> None:
    choice = Choice("Which place?", (("radio hole", "dash"), ("roof slot", "pod")))
    assert list(choice_lines(choice)) == ["Which place?", "  radio hole", "  roof slot"]
