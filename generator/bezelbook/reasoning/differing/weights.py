"""Every number by which an explanation is weighed, with the reason beside it."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from bezelbook.values.words import Axis

MM = 1_000_000


@dataclass(frozen=True, slots=True)
class Weight:
    """A share between 0 and 1 (or a factor), and why it is that and no other."""

    share: Fraction
    because: str


# All of it is common practice, no source, where no other reason is given: how often a shop finds that it was this.
WEIGHTS: Mapping[str, Weight] = MappingProxyType(
    {
        # How far a word in a note can be relied on, and a blank that stands for the usual way.
        "said wrongly": Weight(Fraction(1, 20), "one word in twenty that is written down is not what was there"),
        "usual and not said": Weight(Fraction(1, 2), "who measures leaves out what he had in his hands, often enough"),
        "usual and hardly otherwise": Weight(Fraction(1, 4), "it names the bare face: half of the others name another"),
        "given away": Weight(Fraction(9, 10), "it names a part of the thing that it leaves out"),
        "unlike its author": Weight(Fraction(5, 4), "who always says it and this time did not was interrupted"),
        # What is left once one thing is taken otherwise.
        "still at odds": Weight(Fraction(1, 8), "all others agree without it: then it is more than that one thing"),
        "others at odds": Weight(Fraction(1, 2), "something else is wrong here too, and may be wrong with these"),
        # Sorts of car.
        "splits matter": Weight(Fraction(1, 4), "two sorts differ at a place one time in two, this way round in two"),
        "bears elsewhere": Weight(Fraction(1, 3), "what a split bears on is written from the first places looked at"),
        "sound and room": Weight(Fraction(1, 4), "which sound a car has seldom changes its room"),
        "far apart": Weight(Fraction(1, 10), "two sorts of car are seldom so far apart"),
        "new split": Weight(Fraction(1, 4), "what survives every blank is most often a change that nobody wrote"),
        "one will do": Weight(Fraction(1, 8), "cars that differ in a way that is known seldom need another one"),
        "new split, two years": Weight(Fraction(1, 4), "cars of two years: makers change cars between years"),
        "new split, one year": Weight(Fraction(1, 20), "cars of one year: few changes fall within a year"),
        "new split, a year unsaid": Weight(Fraction(1, 16), "of one car nobody knows the year"),
        "new split, no year": Weight(Fraction(1, 32), "of neither car anybody knows the year"),
        "new package": Weight(Fraction(1, 6), "amplifiers and circuits go with a package more often than not"),
        "new body": Weight(Fraction(1, 8), "what is behind the front seats goes with the body"),
        # What holds a thing out or frames it.
        "perhaps": Weight(Fraction(1, 2), "nobody can tell"),
        "a stranger's reach": Weight(Fraction(3, 4), "a kit nobody measured may well hold it out as far as it usual"),
        "beyond its reach": Weight(Fraction(1, 4), "and seldom further"),
        # How it was read.
        "two faces": Weight(Fraction(4, 5), "two faces are named: from what is the first reason for false conflict"),
        "another face": Weight(Fraction(1, 20), "a face is a word too, and one in twenty is not what was there"),
        "a face unsaid": Weight(Fraction(1, 2), "one face is not named"),
        "a kit's depth": Weight(Fraction(9, 10), "the difference is just what a kit is deep"),
        "beyond two faces": Weight(Fraction(1, 8), "faces do not lie so far apart: of what it was"),
        "a rough tool": Weight(Fraction(2, 5), "as far out as such a tool may be"),
        "a tool trusted": Weight(Fraction(1, 40), "its ± is two standard deviations and was already counted"),
        "beyond a tool": Weight(Fraction(1, 20), "further out than such a tool ever is"),
        "mirror image": Weight(Fraction(9, 10), "one list is the other seen from behind"),
        "a view unsaid": Weight(Fraction(1, 3), "nobody said from which side"),
        # What else it may be.
        "other side spoken of": Weight(Fraction(1, 2), "a note speaks of a driver or of the other side"),
        "the other side": Weight(Fraction(1, 100), "who kneels in a car knows left from right nearly always"),
        "a weak note": Weight(Fraction(1, 4), "what was only told is wrong one time in four"),
        "arithmetic agrees": Weight(Fraction(9, 10), "one factor makes the two numbers the same"),
        "spacing agrees": Weight(Fraction(4, 5), "one spacing makes the two circles the same"),
        "a name agrees": Weight(Fraction(3, 5), "the number is just what a speaker is sold as"),
        "roomy enough": Weight(Fraction(2, 5), "a factor makes it roomy enough, which many numbers would"),
    }
)


def weighs(name: str) -> Fraction:
    """The share under this name."""
    return WEIGHTS[name].share


@dataclass(frozen=True, slots=True)
class Moves:
    """A circumstance: its roomier way and the other, of which sizes, how much it gives as a rule and at most, in nm."""

    ways: tuple[str, str]
    sizes: frozenset[str]
    usual: int
    most: int


DEPTH, HOLE = frozenset({"depth"}), frozenset({"hole"})
CUT_SIZES = frozenset({"depth", "width", "height", "nose width", "nose height", "hole", "front"})
# How much room each gives: common practice, no source.
MOVES: Mapping[Axis, Moves] = MappingProxyType(
    {
        "loom": Moves(("aside", "behind"), DEPTH, 10 * MM, 40 * MM),
        "plugs": Moves(("off", "on"), DEPTH, 30 * MM, 50 * MM),
        "tabs": Moves(("out", "in"), HOLE, 15 * MM, 25 * MM),
        "glass": Moves(("up", "down"), DEPTH, 15 * MM, 40 * MM),
        "cut": Moves(("something", "nothing"), CUT_SIZES, 20 * MM, 100 * MM),
    }
)
# How likely a circumstance gives more than the most that it is known to give.
BEYOND_USUAL = Fraction(1, 10)
# Beyond this two sorts of car are seldom apart, a kit seldom stands out, faces of one dash do not lie apart.
CARS_APART, STANDS_OUT, FACES_APART = 50 * MM, 25 * MM, 45 * MM
# How far a tool may be out beyond what it is trusted to; nothing for one that is exact where it is used.
ROUGH: Mapping[str | None, int] = MappingProxyType({"eye": 20 * MM, "tape": 6 * MM, "wire": 8 * MM, None: 8 * MM})
