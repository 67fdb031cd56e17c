"""Every fault that a shop meets in its notes has a rule, is covered by one, or has a reason why no record shows it."""

from pathlib import Path
from typing import Any

import pytest

from bezelbook.checking import check, rules
from bezelbook.store.rule_cases import rule_cases
from bezelbook.store.yaml_text import read_yaml
from tests.rules.case_books import book_of

HERE = Path(__file__).parent / "faults"
NAMES = {rule.name for rule in rules()}
HOW = {"rule", "covered_by", "cannot"}


def faults() -> list[dict[str, Any]]:
    """Every row of every table (common practice, no source)."""
    found: list[dict[str, Any]] = []
    for path in sorted(HERE.glob("*.yaml")):
        whole: Any = read_yaml(path.read_bytes())
        assert whole.faults == (), path
        found += whole.value
    return found


@pytest.mark.parametrize("fault", faults(), ids=lambda fault: str(fault["fault"]))
def test_a_fault_has_a_rule_or_a_reason(fault: dict[str, Any]) -> None:
    assert len(HOW & fault.keys()) == 1
    assert fault.keys() <= {"fault", "row", *HOW}
    assert {fault[how] for how in ("rule", "covered_by") if how in fault} <= NAMES
    assert fault["row"]


def test_every_rule_is_for_a_fault() -> None:
    told = {fault[how] for fault in faults() for how in ("rule", "covered_by") if how in fault}
    about_decisions = {rule.name for rule in rules() if rule.name.startswith("settled-")}
    assert NAMES - told - about_decisions == set()


def test_no_fault_is_told_twice() -> None:
    told = [fault["fault"] for fault in faults()]
    assert len(set(told)) == len(told)


def rows(of: str) -> list[Any]:
    whole: Any = read_yaml((Path(__file__).parent / "rows.yaml").read_bytes())
    assert whole.faults == ()
    found: list[Any] = whole.value[of]
    return found


def test_every_row_of_the_trade_stands_in_a_table() -> None:
    named = [name for of in ("conflicts", "gaps") for row in rows(of) for name in row] + rows("beside")
    assert (len(rows("conflicts")), len(rows("gaps"))) == (60, 40)
    assert all(rows("conflicts") + rows("gaps"))
    assert len(set(named)) == len(named)
    assert set(named) == {fault["fault"] for fault in faults()}


def test_what_nobody_looked_at_is_told_by_a_rule_for_a_gap() -> None:
    told = {fault["fault"]: str(fault.get("rule") or fault.get("covered_by")) for fault in faults()}
    sort: dict[str, str] = {rule.name: rule.sort for rule in rules()}
    assert {sort[told[name]] for row in rows("gaps") for name in row} == {"gap"}


@pytest.mark.parametrize("one", rows("no_fault"), ids=lambda one: str(one["what"]))
def test_what_only_looks_like_a_conflict_is_told_by_no_rule(one: dict[str, str]) -> None:
    sort = {rule.name: rule.sort for rule in rules()}
    case = next(case for case in rule_cases(one["rule"]) if case["name"] == one["case"])
    assert case["expect"] == "silent"
    assert [found.rule for found in check(book_of(case)).findings if sort[found.rule] == "conflict"] == []
