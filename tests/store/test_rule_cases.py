"""The cases beside a rule are read as plain data."""

from bezelbook.store.rule_cases import rule_cases


def test_a_rule_s_cases_are_found_by_its_name() -> None:
    cases = rule_cases("unit-slip")
    assert cases
    assert all({"name", "expect"} <= case.keys() for case in cases)
    assert rule_cases("unit_slip") == cases
