"""How far off the dash a screen must stand so that it touches nothing that it covers."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from bezelbook.reasoning.screens.controls import Near
from bezelbook.reasoning.screens.outline import Outline

Touch = Literal["clears", "clears from", "touches", "not looked"]


@dataclass(frozen=True, slots=True)
class Touching:
    """Whether what stands out behind a screen touches it; `clear_from` is an offset that is certainly enough.

    It is in nanometres, and None where nobody measured how far the control stands out.
    """

    touch: Touch
    clear_from: Fraction | None = None


def touching(outline: Outline, control: Near) -> Touching:
    """Whether a control that lies behind a screen touches it, over every offset that the screen can take.

    An offset is to the middle of the back of the screen; where it leans, an edge may come nearer by its dip.
    """
    out = control.stands_out
    enough = out.high + outline.dip
    clear_from = enough if out.bounded else None
    if enough <= outline.nearest.low:
        return Touching("clears", clear_from)
    if enough <= outline.furthest.low:
        return Touching("clears from", clear_from)
    return Touching("touches" if out.low - outline.dip > outline.furthest.high else "not looked", clear_from)
