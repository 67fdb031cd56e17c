"""How far a screen reaches over a control, at every height that its middle can have."""

from dataclasses import dataclass
from fractions import Fraction

from bezelbook.reasoning.screens.between import Between
from bezelbook.reasoning.screens.controls import Near
from bezelbook.reasoning.screens.heights import Stretch

# What a finger wants beside an edge that stands off; common practice, no source.
FINGER = Fraction(10_000_000)
EMPTY = Stretch(Fraction(0), Fraction(0))


@dataclass(frozen=True, slots=True)
class Outlined:
    """A screen in one lean: half of its size as seen from the front, and how far its middle is left or right."""

    half_width: Between
    half_height: Between
    aside: Between


@dataclass(frozen=True, slots=True)
class Over:
    """One control under one lean of a screen: what holds at which heights of the screen's middle, in nanometres.

    Heights count from the middle of the opening, up positive. The model: the screen and each control are rectangles
    seen straight from the front, along the axis of the opening, with the screen level; one that leans is as wide, and
    only so high as its lean leaves of it. What lies behind the outline is covered, for the eye and for the hand,
    however far the screen stands off and whether or not it touches. From above one sees a little more over its upper
    edge and a little less under its lower one, which nobody measures.
    """

    control: Near
    screen: Outlined

    def by(self, height: Fraction) -> Between:
        """How far the screen reaches over it, the way that is shortest to move clear; below nothing it is clear."""
        half = self.screen.half_height
        under = Between(height, height).plus(half).minus(self.control.bottom)
        over = self.control.top.plus(half).minus(Between(height, height))
        return under.least(over).least(self._across)

    @property
    def _across(self) -> Between:
        """How far the two overlap from left to right."""
        half, aside = self.screen.half_width, self.screen.aside
        return aside.plus(half).minus(self.control.left).least(self.control.right.plus(half).minus(aside))

    @property
    def perhaps(self) -> Stretch:
        """The heights at which it is not certain to be clear."""
        if self._across.high <= 0:
            return EMPTY
        half = self.screen.half_height.high
        return Stretch(self.control.bottom.low - half, self.control.top.high + half)

    @property
    def surely(self) -> Stretch:
        """The heights at which it is certain to be covered; none where the note may be of another build."""
        if self._across.low <= 0 or not self.control.sure:
            return EMPTY
        half = self.screen.half_height.low
        return Stretch(self.control.bottom.high - half, self.control.top.low + half)
