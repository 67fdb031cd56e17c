"""Where in an opening the middle of a body sits: as far from the middle of the opening as its play allows."""

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.screens.between import FAR, Between
from bezelbook.reasoning.screens.controls import Hole
from bezelbook.reasoning.screens.outline import Outline
from bezelbook.values.span import Span
from bezelbook.values.words import NINTHS

# The thirds of the opening that a ninth lies in, counted up and to the right from the middle.
ROWS = {ninth: 1 - index // 3 for index, ninth in enumerate(NINTHS)}
COLUMNS = {ninth: index % 3 - 1 for index, ninth in enumerate(NINTHS)}


@dataclass(frozen=True, slots=True)
class Seat:
    """How far right of the middle of the opening the middle of a body is, and how far above it, in nanometres."""

    aside: Between
    height: Between


def seat_of(outline: Outline, hole: Hole, stack: Stack) -> Seat:
    """Where a body may sit with these mounts.

    It stays inside the opening; and where a mount says which ninths lie behind the hole it presents, the middle of that
    hole is in one of the thirds that those make up, and the body is inside that hole.
    """
    return Seat(
        _along(hole.width, outline.body_width, stack, "width", [COLUMNS[ninth] for ninth in stack.ninths]),
        _along(hole.height, outline.body_height, stack, "height", [ROWS[ninth] for ninth in stack.ninths]),
    )


def _along(opening: Between, body: Between, stack: Stack, size: str, thirds: Iterable[int]) -> Between:
    play = max(Fraction(0), opening.high - body.low) / 2
    found = Between(-play, play)
    if size not in stack.holes:
        return found
    of, within = max(thirds), min(thirds)
    return _inside(found, opening, _slack(stack.holes[size][1], body), (within, of))


def _slack(hole: Span, body: Between) -> Fraction:
    """How far the middle of a body may be from the middle of the hole that holds it."""
    return FAR if hole.high is None else max(Fraction(0), hole.high - body.low) / 2


def _inside(found: Between, opening: Between, slack: Fraction, thirds: tuple[int, int]) -> Between:
    """What is left of a play where the middle of the hole lies in these thirds of the opening."""
    least, most = thirds
    low = _edge(2 * least - 1, opening, upper=False) - slack
    high = _edge(2 * most + 1, opening, upper=True) + slack
    shared = Between(max(found.low, low), min(found.high, high))
    return shared if shared.low <= shared.high else found


def _edge(sixths: int, opening: Between, *, upper: bool) -> Fraction:
    """The upper or lower bound of so many sixths of an opening."""
    ends = (opening.low * sixths / 6, opening.high * sixths / 6)
    return max(ends) if upper else min(ends)
