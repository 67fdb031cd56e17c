"""Whether any numbers satisfy a set of either/ors of linear bounds: one linear programme after the other.

Numbers are millimetres. A bound that must not be reached is kept away from by a nanometre, which is ten times what the
solver (HiGHS, by way of scipy) may be wrong by and less than any two numbers of a made-up world ever differ by.
"""

from collections.abc import Hashable, Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from scipy.optimize import linprog

Name = Hashable
STRICT = 1e-6
NEARLY = 2e-7
FAR = 5_000.0
MOST = 400


@dataclass(frozen=True)
class Sum:
    """A sum of named numbers, each some times, and a constant."""

    terms: Mapping[Name, float]
    plus: float = 0.0

    def __add__(self, other: "Sum") -> "Sum":
        names = {**self.terms, **other.terms}
        return Sum(
            {name: self.terms.get(name, 0.0) + other.terms.get(name, 0.0) for name in names}, self.plus + other.plus
        )

    def __sub__(self, other: "Sum") -> "Sum":
        return self + other.times(-1.0)

    def times(self, factor: float) -> "Sum":
        """All of it, so many times."""
        return Sum({name: by * factor for name, by in self.terms.items()}, self.plus * factor)

    def at(self, values: Mapping[Name, float]) -> float:
        """What it comes to."""
        return self.plus + sum(by * values.get(name, 0.0) for name, by in self.terms.items())


# Every sum of an option is at least nothing; of a clause at least one option holds.
Option = tuple[Sum, ...]
Clause = tuple[Option, ...]


def number(name: Name) -> Sum:
    """A named number alone."""
    return Sum({name: 1.0})


def constant(length: float) -> Sum:
    """A known length."""
    return Sum({}, length)


def more_than(one: Sum, other: Sum) -> Sum:
    """One is larger than the other, not only as large."""
    return one - other - constant(STRICT)


def possible(clauses: Iterable[Clause]) -> bool | None:
    """Whether there are such numbers; None when that took too long to find out."""
    every = [clause for clause in clauses if () not in clause]
    rows = [bound for clause in every if len(clause) == 1 for bound in clause[0]]
    return _Search(rows).go((), tuple(clause for clause in every if len(clause) != 1))


class _Search:
    def __init__(self, rows: Sequence[Sum]) -> None:
        self.rows = tuple(rows)
        self.tried = 0

    def go(self, chosen: Option, open_: tuple[Clause, ...]) -> bool | None:
        """Try the options of whatever the smallest numbers break, one after the other."""
        self.tried += 1
        if self.tried > MOST:
            return None
        values = least([*self.rows, *chosen])
        if values is None:
            return False
        broken = [clause for clause in open_ if not any(holds(option, values) for option in clause)]
        if not broken:
            return True
        clause = min(broken, key=len)
        rest = tuple(one for one in open_ if one is not clause)
        found: bool | None = False
        for option in sorted(clause, key=lambda one: -min((bound.at(values) for bound in one), default=0.0)):
            came = self.go((*chosen, *option), rest)
            if came:
                return True
            found = None if came is None else found
        return found


def holds(option: Option, values: Mapping[Name, float]) -> bool:
    """Whether all of it holds at these numbers."""
    return all(bound.at(values) >= -NEARLY for bound in option)


def least(bounds: Sequence[Sum]) -> dict[Name, float] | None:
    """Numbers that satisfy all of these, the rooms among them as small as can be; None when there are none."""
    names = list(dict.fromkeys(name for bound in bounds for name in bound.terms))
    if not names:
        return {} if all(bound.plus >= -NEARLY for bound in bounds) else None
    column = {name: at for at, name in enumerate(names)}
    matrix = np.zeros((len(bounds), len(names)))
    for row, bound in enumerate(bounds):
        for name, by in bound.terms.items():
            matrix[row, column[name]] -= by
    limits = np.array([bound.plus for bound in bounds])
    small = np.array([1.0 if isinstance(name, tuple) and name[0] == "room" else 0.0 for name in names])
    found = linprog(small, A_ub=matrix, b_ub=limits, bounds=(-FAR, FAR), method="highs-ds")
    return dict(zip(names, found.x, strict=True)) if found.status == 0 else None
