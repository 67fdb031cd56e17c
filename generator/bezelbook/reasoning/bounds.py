"""Bounds on differences with either/or: whether any numbers satisfy them all, and how low each can go."""

# Every constraint is either a rise (one number is at least another plus a constant) or an either (at least one of
# several numbers lies below another plus a constant). Such a set, once its choices are made, is closed under taking the
# smaller of two solutions, so it has a least solution, found by raising everything only as far as it must go. That is
# the longest-path form of a system of difference constraints (Bellman 1958; Cormen et al., "Introduction to
# Algorithms", chapter on difference constraints; both from memory).
#
# Numbers are nanometres shifted left by SHIFT bits; the low bits count how often "strictly more" was asked for.

from collections.abc import Callable, Hashable, Iterable, Iterator
from dataclasses import dataclass, field

SHIFT = 20
STRICT = 1
Number = Hashable


def exactly(nanometres: int) -> int:
    """A length in nanometres as this module counts it."""
    return nanometres << SHIFT


def nanometres(value: int) -> int:
    """The length in whole nanometres behind a value of this module, rounded down past any "strictly more"."""
    return value >> SHIFT


def nearest(value: int) -> int:
    """The length in whole nanometres that a value is but for any "strictly more" or "strictly less"."""
    return (value + (1 << (SHIFT - 1))) >> SHIFT


@dataclass(frozen=True, slots=True)
class Rise:
    """`over` >= `under` + `by`; without `under`, `over` >= `by`."""

    over: Number
    under: Number | None
    by: int


@dataclass(frozen=True, slots=True)
class Under:
    """`cell` < `need` + `by`; without `need`, `cell` < `by`."""

    cell: Number
    need: Number | None
    by: int


@dataclass(frozen=True, slots=True)
class Either:
    """At least one of these holds."""

    options: tuple[Under, ...]


@dataclass(frozen=True, slots=True)
class Case:
    """All of these hold."""

    rises: tuple[Rise, ...] = ()
    eithers: tuple[Either, ...] = ()


@dataclass(frozen=True, slots=True)
class OneOf:
    """At least one of these cases holds."""

    cases: tuple[Case, ...]


Constraint = Rise | Either | OneOf


@dataclass(slots=True)
class Leaf:
    """One way through the choices, with its least solution."""

    values: dict[Number | None, int]
    rises: dict[Number, list[Rise]]
    eithers: list[Either]
    choices: list[OneOf]

    def copy(self) -> "Leaf":
        """The same leaf, to be lifted on its own."""
        rises = {under: list(found) for under, found in self.rises.items()}
        return Leaf(dict(self.values), rises, list(self.eithers), list(self.choices))

    def at(self, number: Number | None) -> int:
        """The least value of a number; 0 for the ground and for what nothing holds up."""
        return self.values.get(number, 0)

    def holds(self, one: Under) -> bool:
        """Whether one option holds at the least values."""
        return self.at(one.cell) < self.at(one.need) + one.by

    def reach(self, start: Number) -> dict[Number, int]:
        """How far above `start` each number is forced to stay, for every number that `start` can lift."""
        reached = {start: 0}
        moved = [start]
        while moved:
            onward = [(rise.over, reached[under] + rise.by) for under in moved for rise in self.rises.get(under, ())]
            moved = []
            for over, by in onward:
                if over not in reached or by > reached[over]:
                    reached[over] = by
                    moved.append(over)
        return reached

    def fits(self, case: Case) -> bool:
        """Whether a whole case holds at the least values."""
        at = self.values.get  # as in `at`, which would be called a million times from here
        risen = all(at(rise.over, 0) >= at(rise.under, 0) + rise.by for rise in case.rises)
        return risen and all(any(map(self.holds, either.options)) for either in case.eithers)


@dataclass(slots=True)
class Search:
    """A search for solutions; `spent` counts its branches against `budget`, and past that it gives up deciding.

    An `eager` search goes through every choice, even one that the least solution happens to keep, so that its leaves
    say all there is to say. A branch that is not `wanted` is left out with all its leaves.
    """

    budget: int = 3000
    eager: bool = False
    wanted: Callable[[Leaf], bool] = lambda _: True
    spent: int = field(default=0)

    def leaves(self, constraints: Iterable[Constraint], start: Leaf | None = None) -> Iterator[Leaf]:
        """The least solution of each consistent way through the choices, lazily; `start` holds bounds to add these to.

        A choice is made only where the least solution so far breaks it, so the smallest value of any number over
        all leaves is the smallest it can have at all. When the budget runs out, what is left counts as consistent.
        """
        branch = before_choices(constraints, start)
        if branch:
            yield from self._explore(branch)

    def consistent(self, constraints: Iterable[Constraint], start: Leaf | None = None) -> bool:
        """Whether any numbers satisfy all the constraints, and those of `start`; never a false no."""
        return next(self.leaves(constraints, start), None) is not None

    def _explore(self, branch: Leaf) -> Iterator[Leaf]:
        self.spent += 1
        if not self.wanted(branch):
            return
        broken = None
        if self.spent <= self.budget:
            broken = branch.choices[0] if self.eager and branch.choices else _first_broken(branch)
        if broken is None:
            yield branch
            return
        for case in _ways_out(branch, broken):
            following = branch.copy()
            if isinstance(broken, OneOf):
                following.choices.remove(broken)
            following.eithers.extend(case.eithers)
            if _raise(following, case.rises):
                yield from self._explore(following)


def before_choices(constraints: Iterable[Constraint], start: Leaf | None = None) -> Leaf | None:
    """The least solution before any choice is made, for many searches to start from; None when there is none."""
    branch = start.copy() if start else Leaf({}, {}, [], [])
    # What ties numbers together first, then the highest floors: what is lower lifts nothing any more.
    rises = sorted(_sorted_into(branch, constraints), key=lambda rise: (rise.under is None, -rise.by))
    return branch if _raise(branch, rises) else None


def _sorted_into(branch: Leaf, constraints: Iterable[Constraint]) -> list[Rise]:
    rises: list[Rise] = []
    for constraint in constraints:
        if isinstance(constraint, Rise):
            rises.append(constraint)
        elif isinstance(constraint, Either):
            branch.eithers.append(constraint)
        else:
            branch.choices.append(constraint)
    return rises


def _raise(branch: Leaf, rises: Iterable[Rise]) -> bool:
    """Add rises one by one and lift every number to its new least value; False when one would have to exceed itself."""
    return all(_lifts_on(branch, rise) for rise in rises)


def _lifts_on(branch: Leaf, rise: Rise) -> bool:
    """Add a rise to what can be satisfied; if that lifts what it starts from, it would lift itself again for ever."""
    lifted = [rise.over] if _add(branch, rise) else []
    while lifted:
        if rise.under in lifted:
            return False
        onward = [further for under in lifted for further in branch.rises.get(under, ())]
        lifted = list(dict.fromkeys(further.over for further in onward if _lift(branch, further)))
    return True


def _add(branch: Leaf, rise: Rise) -> bool:
    if rise.under is not None:
        branch.rises.setdefault(rise.under, []).append(rise)
    return _lift(branch, rise)


def _lift(branch: Leaf, rise: Rise) -> bool:
    wanted = branch.at(rise.under) + rise.by
    if wanted <= branch.at(rise.over):
        return False
    branch.values[rise.over] = wanted
    return True


def _first_broken(branch: Leaf) -> Either | OneOf | None:
    """An either that is broken, else the choice that asks for the most lifting: it often keeps the others as well."""
    for either in branch.eithers:
        if not any(map(branch.holds, either.options)):
            return either
    broken = (choice for choice in branch.choices if not any(map(branch.fits, choice.cases)))
    return max(broken, key=lambda choice: _least_lift(branch, choice), default=None)


def _least_lift(branch: Leaf, choice: OneOf) -> int:
    at = branch.values.get
    lifts = (
        max((at(rise.under, 0) + rise.by - at(rise.over, 0) for rise in case.rises), default=0) for case in choice.cases
    )
    return min(lifts, default=0)


def _ways_out(branch: Leaf, broken: Either | OneOf) -> tuple[Case, ...]:
    """What could mend it, least lifting first; a number below a plain constant cannot be mended by lifting."""
    if isinstance(broken, OneOf):
        return broken.cases
    liftable = [one for one in broken.options if one.need is not None]
    liftable.sort(key=lambda one: branch.at(one.cell) - one.by - branch.at(one.need))
    return tuple(Case((Rise(one.need, one.cell, STRICT - one.by),)) for one in liftable)


def numbers_of(constraints: Iterable[Constraint]) -> Iterator[Number | None]:
    """Every number that occurs in these constraints, again for each time it does; None for the ground."""
    for constraint in constraints:
        if isinstance(constraint, Rise):
            yield from (constraint.over, constraint.under)
        elif isinstance(constraint, Either):
            yield from (number for one in constraint.options for number in (one.cell, one.need))
        else:
            for case in constraint.cases:
                yield from numbers_of((*case.rises, *case.eithers))
