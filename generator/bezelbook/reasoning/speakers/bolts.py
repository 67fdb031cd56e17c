"""Holes on a circle or an oblong: how far apart neighbours are, which screws land in which holes, which do not."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from bezelbook.reasoning.speakers.sines import sine
from bezelbook.values.clock import minutes_of

MM = 1_000_000
# Common practice, no source: how far off a circle, or a side of an oblong, a screw still finds its hole.
OFF = 3 * MM // 2
# And how far round, in degrees.
ROUND = 4
HALF_DAY = 720  # minutes on a clock face, a whole turn


@dataclass(frozen=True, slots=True)
class Pattern:
    """Holes of a speaker, a car or a mount; lengths in nanometres, None where nobody looked.

    Either `least` and `most`, the circles through the middles of the holes that they or their slots reach, or the
    sides of an oblong, `long_way` and `short_way`. `first` is where one hole sits on the clock.
    """

    count: int | None = None
    least: int | None = None
    most: int | None = None
    long_way: int | None = None
    short_way: int | None = None
    first: str | None = None


@dataclass(frozen=True, slots=True)
class Meeting:
    """Whether one pattern meets another, why, and how many screws land where that was counted."""

    word: Literal["meets", "does not meet", "not looked"]
    why: str
    lands: int | None = None


def circle_of(spacing: int, count: int) -> tuple[int, int]:
    """The circle in nanometres on which `count` equally spaced holes are `spacing` nanometres apart: at least, at most.

    `c = D sin(180 degrees / n)`, the chord of a regular polygon; there are at least two holes.
    """
    low, high = sine(Fraction(1, count))
    return (spacing / high).__floor__(), (spacing / low).__ceil__()


def spacing_of(circle: int, count: int) -> tuple[int, int]:
    """How far apart `count` equally spaced holes are on a circle, in nanometres: at least, at most."""
    low, high = sine(Fraction(1, count))
    return (circle * low).__floor__(), (circle * high).__ceil__()


def landing(ours: int, theirs: int) -> int:
    """How many of `ours` equally spaced holes can meet one of `theirs` at once, however the ring of them is turned."""
    mine = [Fraction(hole, ours) for hole in range(ours)]
    other = [Fraction(hole, theirs) for hole in range(theirs)]
    give = Fraction(ROUND, 360)
    turns = {(there - here - give) % 1 for here in mine for there in other}
    return max(sum(any(_near(here + turn, there, give) for there in other) for here in mine) for turn in turns)


def meeting(ours: Pattern, theirs: Pattern) -> Meeting:
    """Whether a speaker's holes meet those it is to be screwed to, and if not, what is wrong."""
    if ours.long_way is not None or theirs.long_way is not None:
        return _oblong(ours, theirs)
    if ours.least is None or ours.most is None or theirs.least is None or theirs.most is None:
        return Meeting("not looked", "the bolt circle is not looked")
    if theirs.most < ours.least - OFF or theirs.least > ours.most + OFF:
        spacing = _spacing_instead((ours.least, ours.most), (theirs.least, theirs.most), theirs.count)
        return spacing or Meeting("does not meet", "the bolt circles differ")
    if ours.count is None or theirs.count is None:
        return Meeting("not looked", "the number of holes is not looked")
    lands = landing(ours.count, theirs.count)
    if lands < min(ours.count, theirs.count):
        return Meeting("does not meet", f"{ours.count} holes into {theirs.count}: {lands} of them can land", lands)
    return Meeting("meets", "the holes meet", lands)


def turned_by(ours: str | None, theirs: str | None, count: int) -> int | None:
    """How far a speaker has to be turned for its holes to meet, in degrees and the shorter way; None when not known.

    Both are places of a first hole on the clock, of `count` equally spaced holes.
    """
    if ours is None or theirs is None:
        return None
    step = Fraction(HALF_DAY, count)
    away = (minutes_of(theirs) - minutes_of(ours)) % step
    return round(min(away, step - away) / 2)


def _spacing_instead(ours: tuple[int, int], theirs: tuple[int, int], count: int | None) -> Meeting | None:
    """What was called a circle may be the way from hole to hole, which is the usual mistake."""
    if count is None or count < 3:
        return None
    low, high = circle_of(theirs[0], count)[0], circle_of(theirs[1], count)[1]
    if high < ours[0] - OFF or low > ours[1] + OFF:
        return None
    return Meeting("not looked", "what is called a bolt circle reads like the way from hole to hole")


def _oblong(ours: Pattern, theirs: Pattern) -> Meeting:
    if ours.least is not None or theirs.least is not None:
        return Meeting("does not meet", "one pattern is oblong and the other is on a circle")
    ways = ((ours.long_way, theirs.long_way), (ours.short_way, theirs.short_way))
    known = [(one, other) for one, other in ways if one is not None and other is not None]
    if any(abs(one - other) > OFF for one, other in known):
        return Meeting("does not meet", "the sides of the oblongs differ")
    if len(known) < 2:
        return Meeting("not looked", "one way of the oblong is not looked")
    return Meeting("meets", "the holes meet both ways")


def _near(one: Fraction, other: Fraction, give: Fraction) -> bool:
    """Whether two places on a turn are within `give` of a turn of one another."""
    away = (one - other) % 1
    return min(away, 1 - away) <= give
