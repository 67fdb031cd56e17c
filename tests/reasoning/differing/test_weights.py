"""Every weight is a share with its reason beside it, and every circumstance gives more the one way than the other."""

from fractions import Fraction

from bezelbook.reasoning.differing.weights import MOVES, WEIGHTS, weighs


def test_each_weight_has_a_reason() -> None:
    assert all(one.because and one.share > 0 for one in WEIGHTS.values())
    assert all(one.share <= 1 for name, one in WEIGHTS.items() if name != "unlike its author")
    assert weighs("perhaps") == Fraction(1, 2)


def test_a_circumstance_gives_more_at_most_than_as_a_rule() -> None:
    assert all(moves.most > moves.usual > 0 and len(set(moves.ways)) == 2 for moves in MOVES.values())
