"""Whether a screen over one opening leaves its controls usable: however it is set, set one way, or not at all."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import product
from typing import Literal

from bezelbook.reasoning.screens.controls import Near
from bezelbook.reasoning.screens.cover import FINGER, Outlined, Over
from bezelbook.reasoning.screens.heights import Window, left_free
from bezelbook.reasoning.screens.outline import Outline
from bezelbook.reasoning.screens.seat import Seat

Verdict = Literal["usable", "usable if set", "covers", "too close", "not looked"]


@dataclass(frozen=True, slots=True)
class Usable:
    """What is known of a screen over one opening of one build, heights in nanometres from the middle of the opening.

    `best` is the height that leaves most, `lean` the lean in millidegrees that it is for (None: nobody looked).
    `free` are the heights that leave every control free for certain, `reach` are those that its middle can have with
    the body in the middle of its play. `overs` are the controls as they lie to it.
    """

    verdict: Verdict
    best: Fraction
    lean: int | None
    free: tuple[Window, ...]
    reach: Window
    overs: tuple[Over, ...] = field(default=())

    @property
    def worst(self) -> Over:
        """The control that is worst off at the best height."""
        return max(self.overs, key=lambda over: over.by(self.best).high)

    @property
    def crowded(self) -> tuple[Over, ...]:
        """The controls that are free at the best height, though a finger may not have its room there."""
        return tuple(over for over in self.overs if -FINGER < over.by(self.best).high <= 0)


def usable(outline: Outline, seat: Seat, controls: Sequence[Near]) -> Usable:
    """What is known of a screen over these controls, over every offset, height and lean that it can take."""
    flat = _at(outline, seat, controls, outline.flattest)
    steep = _at(outline, seat, controls, outline.steepest)
    if not controls:
        return _made("not looked", flat, outline, seat)
    every = _every_height(outline, seat)
    if left_free(every, (over.perhaps for over in flat.overs)) == (every,):
        return _made("usable", flat, outline, seat)
    for one in (flat, steep):
        if _for_every_seat(one, outline, seat):
            return _made("usable if set", one, outline, seat)
    if not left_free(every, (over.surely for over in steep.overs)):
        return _made("covers", steep, outline, seat)
    return _made("too close", steep, outline, seat)


@dataclass(frozen=True, slots=True)
class _Leaning:
    lean: int | None
    overs: tuple[Over, ...]
    free: tuple[Window, ...]


def _at(outline: Outline, seat: Seat, controls: Sequence[Near], lean: int | None) -> _Leaning:
    screen = Outlined(outline.half_width, outline.half_height(lean), seat.aside)
    overs = tuple(Over(control, screen) for control in controls)
    return _Leaning(lean, overs, left_free(_sure_height(outline, seat), (over.perhaps for over in overs)))


def _every_height(outline: Outline, seat: Seat) -> Window:
    """Every height that the middle of the screen may have."""
    return Window(seat.height.low - outline.down_most, seat.height.high + outline.up_most)


def _sure_height(outline: Outline, seat: Seat) -> Window:
    """The heights that its middle can be set to in some seat, as far as somebody measured how it is set."""
    return Window(seat.height.low - outline.down, seat.height.high + outline.up)


def _for_every_seat(one: _Leaning, outline: Outline, seat: Seat) -> bool:
    """Whether, wherever the body sits, the middle of the screen can be set to a height that leaves all free."""
    reached = seat.height.low
    for window in one.free:
        if window.low - outline.up > reached:
            return False
        reached = max(reached, window.high + outline.down)
        if reached >= seat.height.high:
            return True
    return False


def _made(verdict: Verdict, one: _Leaning, outline: Outline, seat: Seat) -> Usable:
    middle = seat.height.middle
    reach = Window(middle - outline.down, middle + outline.up)
    return Usable(verdict, _best(one.overs, reach, middle), one.lean, one.free, reach, one.overs)


def _best(overs: Sequence[Over], reach: Window, middle: Fraction) -> Fraction:
    """The height at which the worst control is best off, then the next worst, and of several such the nearest.

    How far a control is reached over rises and falls evenly with the height, so that the best is at an end of the
    reach, where some control gets all the room that counts, or half way between one below and one above.
    """
    heights = [
        height for height in {reach.low, reach.high, middle, *_turns(overs)} if reach.low <= height <= reach.high
    ]
    return min(sorted(heights), key=lambda height: (_off(overs, height), abs(height - middle)))


def _turns(overs: Sequence[Over]) -> Iterator[Fraction]:
    rising = [over.control.bottom.low - over.screen.half_height.high for over in overs]
    falling = [over.control.top.high + over.screen.half_height.high for over in overs]
    for gap in (Fraction(0), FINGER):
        yield from (height - gap for height in rising)
        yield from (height + gap for height in falling)
    yield from ((one + other) / 2 for one, other in product(rising, falling))


def _off(overs: Sequence[Over], height: Fraction) -> list[Fraction]:
    """How far each control is reached over, the worst first; room beyond a finger's counts for nothing."""
    return sorted((max(over.by(height).high, -FINGER) for over in overs), reverse=True)
