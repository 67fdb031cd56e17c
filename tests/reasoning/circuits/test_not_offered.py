from typing import Any

import pytest

from bezelbook.reasoning.circuits.not_offered import not_offered
from tests.reasoning.circuits.a_car import plug_in, tee


def why(**content: Any) -> str:
    return not_offered(plug_in(**content))


def test_what_a_chain_may_have_needs_no_word() -> None:
    assert (why(), not_offered(tee()), why(adapter_kind="aerial", ends={})) == ("", "", "")


@pytest.mark.parametrize("kind", ["speaker lead", "load resistor lead", "chime speaker", "line converter"])
def test_what_is_offered_elsewhere_says_where(kind: str) -> None:
    assert why(adapter_kind=kind)


def test_what_gives_nothing_to_go_by_says_what_to_write() -> None:
    assert "written its ends" in why(ends={})
    assert "none of its ends" in why(ends={"a": {"ends_in": "bare leads"}, "b": {"connector": "square"}})
    assert "becomes of any circuit" in not_offered(plug_in(circuits={}))
