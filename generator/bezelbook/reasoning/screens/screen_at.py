"""A screen at one opening of one build in certain mounts: what it leaves usable, and what nobody looked at."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.screens.between import Between
from bezelbook.reasoning.screens.controls import Hole, Near, controls_at
from bezelbook.reasoning.screens.offset import touching
from bezelbook.reasoning.screens.outline import Outline, outline_of
from bezelbook.reasoning.screens.seat import Seat, seat_of
from bezelbook.reasoning.screens.usable import Usable, Verdict, usable
from bezelbook.reasoning.unknowns import Missing
from bezelbook.values.words import EDGES, Edge

ACROSS = ("left", "right")
# A body that may sit this much higher or lower, in nanometres, is worth a look at its kit.
WIDE_PLAY = 10_000_000


@dataclass(frozen=True, slots=True)
class Lying:
    """How a screen that was measured lies over an opening: both of them, where the body sits, and what it leaves."""

    outline: Outline
    hole: Hole
    seat: Seat
    usable: Usable


@dataclass(frozen=True, slots=True)
class ScreenAt:
    """A screen at one opening; `lying` is None where nobody measured its outline."""

    build: Build
    verdict: Verdict
    missing: tuple[Missing, ...]
    lying: Lying | None


def screen_at(place: Place, unit: HeadUnit, build: Build, stack: Stack, hole: Hole) -> ScreenAt:
    """What is known of a unit's screen over an opening of one build, `hole` being its size, in these mounts."""
    outline = outline_of(place.frame.book, unit)
    if outline is None:
        what = f"the outline of the screen of {unit.name}"
        return ScreenAt(build, "not looked", (Missing(what, "caliper, 2 min on the bench", "what it covers"),), None)
    controls = controls_at(place, build, hole)
    seat = seat_of(outline, hole, stack)
    lying = Lying(outline, hole, seat, usable(outline, seat, controls))
    verdict = lying.usable.verdict
    unplaced = verdict == "too close" and not all(_near_side(control).bounded for control in controls)
    return ScreenAt(build, "not looked" if unplaced else verdict, tuple(_missing(lying)), lying)


def overhung(lying: Lying) -> tuple[Edge, ...]:
    """The edges of the opening that the screen may reach past in some setting."""
    outline, hole, seat = lying.outline, lying.hole, lying.seat
    half_height = outline.half_height(outline.flattest).high
    reaches = {
        "top": seat.height.high + outline.up + half_height - hole.height.low / 2,
        "bottom": half_height + outline.down - seat.height.low - hole.height.low / 2,
        "left": outline.half_width.high - seat.aside.low - hole.width.low / 2,
        "right": outline.half_width.high + seat.aside.high - hole.width.low / 2,
    }
    return tuple(edge for edge in EDGES if reaches[edge] > 0)


def _near_side(control: Near) -> Between:
    sides = {"top": control.bottom, "bottom": control.top, "left": control.right, "right": control.left}
    return sides[control.edge]


def _missing(lying: Lying) -> Iterator[Missing]:
    outline, controls = lying.outline, [over.control for over in lying.usable.overs]
    covers = f"what the screen of {outline.name} covers"
    seen = {control.edge for control in controls}
    unseen = [edge for edge in overhung(lying) if edge not in seen]
    if unseen:
        what = f"controls beyond the {', '.join(unseen)} of the opening: none measured"
        yield Missing(what, "tape from the edge of the opening, 5 min", covers)
    if controls:
        yield from _sizes(lying.hole, seen, covers)
        yield from (Missing(blank, "caliper, 3 min on the bench", covers) for blank in outline.blanks)
        if lying.hole.height.bounded and lying.seat.height.high - lying.seat.height.low > WIDE_PLAY:
            yield Missing("how high in the opening the body sits", "hold it in the kit and rule it, 2 min", covers)
    yield from _sides(lying, covers)


def _sizes(hole: Hole, seen: set[Edge], covers: str) -> Iterator[Missing]:
    if not hole.height.bounded and seen - {*ACROSS}:
        yield Missing("the height of the opening", "caliper at three points, 2 min", covers)
    if not hole.width.bounded and seen & {*ACROSS}:
        yield Missing("the width of the opening", "caliper at three points, 2 min", covers)


def _sides(lying: Lying, covers: str) -> Iterator[Missing]:
    """What is not known of the controls that are not free for certain at the best setting."""
    for over in lying.usable.overs:
        control = over.control
        if over.by(lying.usable.best).high <= 0:
            continue
        if not control.outlined:
            what = f"where the {control.what} starts and ends"
            yield Missing(what, "tape from the edge of the opening, 3 min", covers)
        if touching(lying.outline, control).touch == "not looked":
            what = f"how far the {control.what} stands out, against the offset of the screen"
            yield Missing(what, "rule it, 2 min", "whether the screen touches it")
