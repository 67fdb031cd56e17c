"""How far one person's readings of a thing repeat, and how much more there is between persons: one-way variances."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Group:
    """What one person, job or tool read of one thing: how many times, the mean, and the variance of one reading."""

    count: int
    mean: Fraction
    variance: Fraction


@dataclass(frozen=True, slots=True)
class Components:
    """The mean squares between and within groups with their degrees of freedom, and the mean of all readings.

    `size` is the count that the groups have in the middle, n₀; equal groups have just that.
    """

    mean: Fraction
    between: Fraction
    within: Fraction
    freedom: tuple[int, int]
    size: Fraction

    @property
    def ratio(self) -> Fraction | None:
        """F, the mean square between over that within; None when every group repeats exactly."""
        return self.between / self.within if self.within else None

    @property
    def raw_variance_between(self) -> Fraction:
        """The variance that groups have on top of how they repeat; below nothing where they lie closer than that."""
        return (self.between - self.within) / self.size

    @property
    def variance_between(self) -> Fraction:
        """The same, never below nothing."""
        return max(Fraction(0), self.raw_variance_between)


def group_of(readings: Sequence[Fraction]) -> Group:
    """One or more readings as a group; a single one has no variance to show."""
    count = len(readings)
    mean = sum(readings, Fraction(0)) / count
    squares = sum(((reading - mean) ** 2 for reading in readings), Fraction(0))
    return Group(count, mean, squares / (count - 1) if count > 1 else Fraction(0))


def components(groups: Sequence[Group]) -> Components:
    """The variances of two groups or more, of which one at least has two readings (GUM H.5.2)."""
    total = sum(group.count for group in groups)
    freedom = len(groups) - 1, total - len(groups)
    mean = sum((group.count * group.mean for group in groups), Fraction(0)) / total
    between = sum((group.count * (group.mean - mean) ** 2 for group in groups), Fraction(0)) / freedom[0]
    within = sum(((group.count - 1) * group.variance for group in groups), Fraction(0)) / freedom[1]
    squares = sum(group.count**2 for group in groups)
    return Components(mean, between, within, freedom, (total - Fraction(squares, total)) / freedom[0])
