"""Whether a module's output carries what hangs on it, or wants a relay."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from bezelbook.kinds.module.record import Output
from bezelbook.reasoning.electric.amounts import amount
from bezelbook.values.decimals import decimals


@dataclass(frozen=True, slots=True)
class Limit:
    """Whether an output may feed something directly, why, and where to look when nobody knows."""

    says: Literal["fine", "wants a relay", "unknown"]
    why: str
    look: str = ""


def limit(output: Output, draws: Fraction | None) -> Limit:
    """Whether an output carries a draw in A, None when nobody knows it."""
    if output.most is None:
        look = "its sheet, or its label; often it is no more than 0.5 to 2 A, so put a relay in until then"
        return Limit("unknown", "the most it gives is not looked", look)
    most = f"it gives up to {decimals(amount(output.most), 3)} A"
    if draws is None:
        return Limit("unknown", f"{most}; what is to hang on it is not known", "ammeter in the lead, 2 min")
    if draws <= amount(output.most):
        return Limit("fine", most)
    return Limit("wants a relay", f"{most}, and {decimals(draws, 3)} A hang on it")
