"""How long a screw has to be: what it must bite, what lies under its head, and what it must not reach behind."""

from dataclasses import dataclass
from typing import Literal

from bezelbook.values.span import Span

MM = 1_000_000
# Common practice, no source: the least and the most that a screw should bite, in nanometres.
PLASTIC_BOSS: tuple[int, int | None] = (10 * MM, 15 * MM)
SHEET_METAL: tuple[int, int | None] = (4 * MM, None)
BITES: dict[str, tuple[int, int | None]] = {
    "plastic boss": PLASTIC_BOSS,
    "plain": SHEET_METAL,
    "clip nut": SHEET_METAL,
    "rivet nut": SHEET_METAL,
}
Word = Literal["good", "too short", "too long", "too close"]


@dataclass(frozen=True, slots=True)
class Bite:
    """How a screw of one length would sit: the nanometres it bites, as a span, and the word for it."""

    bites: Span
    word: Word


def under_the_head(*layers: Span) -> Span:
    """Everything between the head of a screw and what it bites: flange, squeezed gasket, spacer; in nanometres."""
    together = Span(0, 0)
    for layer in layers:
        together = together.plus(layer)
    return together


def bite(length: Span, layers: Span, hole: str = "plain", behind: int | None = None) -> Bite:
    """How a screw sits in a kind of hole; `behind` is how far it is to glass or wire, in nanometres.

    `bite = length - (flange + gasket squeezed + spacer)`. Its end must stop short of what is behind. Where the ± leaves
    both open it is too close to say.
    """
    bites = length.minus(layers)
    least, most = BITES[hole]
    limit = min((end for end in (most, behind) if end is not None), default=None)
    if bites.high is not None and bites.high < least:
        return Bite(bites, "too short")
    if limit is not None and bites.low is not None and bites.low > limit:
        return Bite(bites, "too long")
    surely = bites.low is not None and bites.low >= least
    stops = limit is None or (bites.high is not None and (bites.high <= limit if limit == most else bites.high < limit))
    return Bite(bites, "good" if surely and stops else "too close")


def lengths(layers: Span, hole: str, behind: int | None = None) -> tuple[int, int | None] | None:
    """The shortest and the longest screw that is good, in nanometres; the longest is None when nothing limits it.

    None where a place is not held by screws at all.
    """
    if hole not in BITES:
        return None
    least, most = BITES[hole]
    limit = min((end for end in (most, behind) if end is not None), default=None)
    shortest = least + (layers.high or 0)
    return shortest, None if limit is None else limit + (layers.low or 0)


def side_screw(length: Span, longest: int | None) -> Word:
    """Whether a screw into the side of a head unit is short enough: one that is too long meets what is inside."""
    if longest is None or length.high is None or length.low is None:
        return "too close"
    if length.high <= longest:
        return "good"
    return "too long" if length.low > longest else "too close"
