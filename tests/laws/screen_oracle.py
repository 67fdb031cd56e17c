"""A screen over controls, tried out height by height in every world that the readings allow; whole millimetres.

It shares nothing with what it judges: a world is plain numbers, and two rectangles overlap when they share some area.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import product

Rectangle = tuple[Fraction, Fraction, Fraction, Fraction]  # left, right, bottom, top
STEP = Fraction(1, 4)


@dataclass(frozen=True)
class Read:
    """A reading with its ±, in mm."""

    middle: int
    give: int = 0

    def ends(self) -> tuple[Fraction, ...]:
        return tuple(dict.fromkeys((Fraction(self.middle - self.give), Fraction(self.middle + self.give))))


@dataclass(frozen=True)
class Ruled:
    """A control as somebody ruled it: beyond an edge, from near to far, from start to end along it."""

    edge: str
    near: Read
    far: Read
    starts: Read
    ends: Read

    def places(self, width: Fraction, height: Fraction) -> Iterator[Rectangle]:
        """Every place it may have round an opening of this size, corner by corner."""
        for near, far, start, end in product(self.near.ends(), self.far.ends(), self.starts.ends(), self.ends.ends()):
            if self.edge == "top":
                yield start - width / 2, end - width / 2, height / 2 + near, height / 2 + far
            elif self.edge == "bottom":
                yield start - width / 2, end - width / 2, -height / 2 - far, -height / 2 - near
            elif self.edge == "left":
                yield -width / 2 - far, -width / 2 - near, height / 2 - end, height / 2 - start
            else:
                yield width / 2 + near, width / 2 + far, height / 2 - end, height / 2 - start


@dataclass(frozen=True)
class ScreenWorld:
    """What was read of an opening, a body that stands in it, its screen, and the controls near."""

    width: Read
    height: Read
    body: Read
    screen_width: Read
    screen_height: Read
    down: int
    up: int
    controls: tuple[Ruled, ...]

    def worlds(self) -> Iterator["World"]:
        """Every corner of what the readings allow, and in each the body at both ends of its play."""
        for width, height, body, wide, high in product(
            self.width.ends(), self.height.ends(), self.body.ends(), self.screen_width.ends(), self.screen_height.ends()
        ):
            for places in product(*(control.places(width, height) for control in self.controls)):
                for seat in dict.fromkeys((body - height, height - body)):
                    yield World(seat / 2, wide, high, self.down, self.up, places)


@dataclass(frozen=True)
class World:
    """One car with one screen, every number known."""

    seat: Fraction
    wide: Fraction
    high: Fraction
    down: int
    up: int
    places: tuple[Rectangle, ...]

    def settings(self) -> list[Fraction]:
        """The heights of the screen's middle, from the lowest to the highest in steps."""
        steps = (self.down + self.up) / STEP
        return [self.seat - self.down + STEP * number for number in range(int(steps) + 1)]

    def covers(self, at: Fraction) -> bool:
        """Whether the screen with its middle there shares some area with a control."""
        screen = (-self.wide / 2, self.wide / 2, at - self.high / 2, at + self.high / 2)
        return any(_share(screen, place) for place in self.places)


def _share(one: Rectangle, other: Rectangle) -> bool:
    across = min(one[1], other[1]) > max(one[0], other[0])
    return across and min(one[3], other[3]) > max(one[2], other[2])
