"""An explanation is a proposal with its weight, and can be printed on one line."""

from fractions import Fraction

from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.proposal import Proposal


def test_it_is_a_proposal_and_a_line() -> None:
    one = Explanation("loom", "the loom: a does not say where it went", Fraction(3, 16), ("ab always says otherwise",))
    assert one.proposal == Proposal("loom", "the loom: a does not say where it went")
    assert one.line == "3/16 loom: the loom: a does not say where it went (ab always says otherwise)"
