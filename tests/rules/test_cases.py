"""Every rule speaks up in the cases where it must, says what they say it finds, and is silent in all others."""

from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

import pytest

from bezelbook.checking import check, rules
from bezelbook.finding import Finding
from bezelbook.kinds import KINDS
from bezelbook.store.rule_cases import rule_cases
from bezelbook.store.yaml_text import read_yaml
from bezelbook.values.words import WEIGHTS
from tests.rules.case_books import book_of, records_of

HERE = Path(__file__).parent
Case = Mapping[str, Any]
FOLDERS = {kind.name: kind.folder for kind in KINDS.values()}
NAMES = tuple(rule.name for rule in rules())


def more_cases(rule: str) -> list[Case]:
    """Near misses and odd ways of speaking up that the rule's own page can do without."""
    path = HERE / f"{rule.replace('-', '_')}.more.yaml"
    if not path.is_file():
        return []
    whole: Any = read_yaml(path.read_bytes())
    assert whole.faults == ()
    return list(whole.value["cases"])


def every_case() -> Iterator[tuple[str, Case]]:
    for rule in NAMES:
        yield from ((rule, case) for case in (*rule_cases(rule), *more_cases(rule)))


CASES = tuple(every_case())
by_case = pytest.mark.parametrize(("rule", "case"), CASES, ids=lambda one: one if isinstance(one, str) else one["name"])


def found(rule: str, case: Case) -> list[Finding]:
    return [finding for finding in check(book_of(case)).findings if finding.rule == rule]


@by_case
def test_a_rule_says_in_a_case_what_the_case_says_it_finds(rule: str, case: Case) -> None:
    findings = found(rule, case)
    expected = case.get("finds", [])
    assert bool(expected) == (case["expect"] == "fires")
    assert [[quote.id for quote in finding.quotes] for finding in findings] == [one["quotes"] for one in expected]
    for finding, one in zip(findings, expected, strict=True):
        proposed = [proposal.words for proposal in finding.proposals]
        assert one.get("proposes", proposed[0]) in proposed
        assert one.get("says", finding.says) == finding.says


@by_case
def test_what_a_rule_finds_can_be_settled_by_a_team(rule: str, case: Case) -> None:
    book = book_of(case)
    findings = found(rule, case)
    assert len({finding.key for finding in findings}) == len(findings)
    for finding in findings:
        assert finding.key.startswith(f"{rule}/")
        assert finding.weight in WEIGHTS
        assert finding.question.endswith("?")
        assert len(finding.answers) > 1
        assert all((finding.says, finding.difference, finding.loss.words, *finding.proposals))
        assert all(quote.words and quote.id in book.records[quote.kind] for quote in finding.quotes)


@by_case
def test_a_quote_points_at_a_field_that_the_note_has(rule: str, case: Case) -> None:
    for finding in found(rule, case):
        for quote in finding.quotes:
            value: Any = case["book"][FOLDERS[quote.kind]][quote.id]
            for step in quote.path:
                value = value[step]
            assert value is not None


@by_case
def test_the_order_of_the_files_makes_no_difference(rule: str, case: Case) -> None:
    turned = {folder: dict(reversed(files.items())) for folder, files in reversed(case["book"].items())}
    assert found(rule, {"book": turned}) == found(rule, case)


@pytest.mark.parametrize("rule", NAMES)
def test_no_case_is_told_twice(rule: str) -> None:
    books = [case["book"] for one, case in CASES if one == rule]
    assert all(book not in books[:at] for at, book in enumerate(books))


def test_a_rule_is_heavier_where_both_notes_are_strong() -> None:
    weights = {case["name"]: found(rule, case)[0].weight for rule, case in CASES if case["expect"] == "fires"}
    assert weights["fitted deeper with the very same kit"] == "stop"
    assert weights["told that a deeper one goes in, nothing said of the mount"] == "look first"
    assert weights["told that the shallower one does not, and the deeper one is in"] == "look first"


def test_every_case_holds_only_records_that_load() -> None:
    assert all(records_of(case["book"]) for _, case in CASES)
