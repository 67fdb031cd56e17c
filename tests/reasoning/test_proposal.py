"""A proposal is a value that says what it turns on."""

from typing import get_args

from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import AXES, Axis


def test_a_proposal_is_a_value_with_one_of_the_known_axes() -> None:
    assert Proposal("mount", "the mount: nobody said") == Proposal("mount", "the mount: nobody said")
    assert get_args(Axis) == AXES
    assert "mount" in AXES
