from typing import Any

import pytest

from bezelbook.reasoning.circuits.not_offered import not_offered
from tests.reasoning.circuits.a_car import plug_in, tee


def why(**content: Any) -> str:
    return not_offered(plug_in(**content))


def test_what_a_chain_may_have_needs_no_word() -> None:
    assert (why(), not_offered(tee()), why(adapter_kind="aerial", ends={})) == ("", "", "")


@pytest.mark.parametrize(
    ("kind", "where"),
    [
        ("speaker lead", "it is offered at a speaker's place"),
        ("load resistor lead", "it is asked for by the test with and without a load"),
        ("chime speaker", "it is joined to the module that makes the chimes"),
        ("line converter", "it is joined by hand behind a T, for an amplifier that has no input for speaker leads"),
    ],
)
def test_what_is_offered_elsewhere_says_where(kind: str, where: str) -> None:
    assert why(adapter_kind=kind) == where


def test_what_gives_nothing_to_go_by_says_what_to_write() -> None:
    assert why(ends={}) == "nobody has written its ends: which plug is on each, and which half"
    assert why(ends={"a": {"ends_in": "bare leads"}, "b": {"connector": "square"}}) == (
        "none of its ends names a plug of the book and which half of it that is"
    )
    assert not_offered(plug_in(circuits={})) == "nobody has written what becomes of any circuit in it"
