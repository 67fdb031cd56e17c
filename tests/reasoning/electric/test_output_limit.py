from fractions import Fraction

import pytest

from bezelbook.kinds.module.record import Output
from bezelbook.reasoning.electric.output_limit import Limit, limit
from bezelbook.values.quantity import read_quantity

HALF_AN_AMP = Output(most=read_quantity("500 mA", "current", plus_minus=False))


@pytest.mark.parametrize(
    ("draws", "says"),
    [(Fraction(1, 10), "fine"), (Fraction(1, 2), "fine"), (Fraction(51, 100), "wants a relay"), (None, "unknown")],
)
def test_an_output_carries_what_it_is_made_for_and_no_more(draws: Fraction | None, says: str) -> None:
    assert limit(HALF_AN_AMP, draws).says == says


def test_it_says_by_how_much() -> None:
    assert limit(HALF_AN_AMP, Fraction(10_006, 10_000)) == Limit(
        "wants a relay", "it gives up to 0.5 A, and 1.001 A hang on it"
    )
    assert limit(HALF_AN_AMP, Fraction(1, 10)) == Limit("fine", "it gives up to 0.5 A")
    assert limit(HALF_AN_AMP, None) == Limit(
        "unknown", "it gives up to 0.5 A; what is to hang on it is not known", "ammeter in the lead, 2 min"
    )
    odd = Output(most=read_quantity("0.5006 A", "current", plus_minus=False))
    assert limit(odd, Fraction(1, 10)) == Limit("fine", "it gives up to 0.501 A")


def test_a_limit_that_nobody_read_wants_a_relay_until_then() -> None:
    blank = limit(Output(), Fraction(1, 10))
    assert blank == Limit(
        "unknown",
        "the most it gives is not looked",
        "its sheet, or its label; often it is no more than 0.5 to 2 A, so put a relay in until then",
    )
