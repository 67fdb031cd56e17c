"""Every fault that a shop meets in its notes has a rule, is covered by one, or has a reason why no record shows it."""

from pathlib import Path
from typing import Any

import pytest

from bezelbook.checking import rules
from bezelbook.store.yaml_text import read_yaml

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
