"""How long a job takes, by what past jobs of the same scope at the same place of the same vehicle took."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.note.record import After
from bezelbook.knowledge_base import folded
from bezelbook.reasoning.evidence import job_key
from bezelbook.values.shown import show_minutes

THIN = 3
# A time of more than so many times the median covers something else until its author says so.
OUTLIER = 2


@dataclass(frozen=True, slots=True)
class Spent:
    """One time of one job, in seconds; `first_time` is None where the note does not say."""

    note: After
    seconds: int
    first_time: bool | None


@dataclass(frozen=True, slots=True)
class Minutes:
    """The times of one scope in seconds: those that count, shortest first, the first ones, and those to ask about."""

    scope: str
    usual: tuple[Spent, ...]
    first: tuple[Spent, ...]
    ask_scope: tuple[Spent, ...]

    @property
    def median(self) -> Fraction | None:
        """The middle one in seconds, or half way between the two in the middle; None when there is none."""
        return _median([one.seconds for one in self.usual]) if self.usual else None

    @property
    def thin(self) -> bool:
        """Whether there are too few to lean on."""
        return len(self.usual) < THIN

    @property
    def unsaid(self) -> int:
        """How many of those that count do not say whether it was the first time."""
        return sum(one.first_time is None for one in self.usual)

    @property
    def words(self) -> str:
        """As a shop says it: `about 1 h 35 (1 h 20 to 1 h 50, three jobs; 2 h 30 the first time)`."""
        if self.median is None:
            return f"{_each(self.first)} the first time, and nobody has done it since" if self.first else "nobody knows"
        low, high = (show_minutes(one.seconds) for one in (self.usual[0], self.usual[-1]))
        jobs = "one job" if len(self.usual) == 1 else f"{len(self.usual)} jobs"
        span = f"{low} to {high}, {jobs}" if low != high else f"{low}, {jobs}"
        first = f"; {_each(self.first)} the first time" if self.first else ""
        return f"about {show_minutes(round(self.median))} ({span}{first})"


def minutes(notes: Iterable[After]) -> tuple[Minutes, ...]:
    """The times that these notes wrote back, scope by scope in order of name; a copied job counts once.

    A first time is kept apart. So is one of more than twice the median of the others, until somebody says what it
    covered. A note that does not say whether it was the first time counts, and `unsaid` says how many do not.
    """
    by_scope: dict[str, dict[tuple[object, ...], Spent]] = {}
    for note in notes:
        for took in note.times:
            kept = by_scope.setdefault(folded(took.scope), {})
            first = None if took.first_time is None else took.first_time == "first time"
            one = Spent(note, took.took.base, first)
            key = (*job_key(note), note.vehicle, note.place)
            kept[key] = max(kept.get(key, one), one, key=_longer)
    return tuple(_sorted_out(scope, [*kept.values()]) for scope, kept in sorted(by_scope.items()))


def _longer(spent: Spent) -> tuple[bool, int]:
    return spent.first_time is True, spent.seconds


def _sorted_out(scope: str, every: Sequence[Spent]) -> Minutes:
    in_order = sorted(every, key=lambda one: (one.seconds, one.note.id))
    again = [one for one in in_order if not one.first_time]
    limit = OUTLIER * _median([one.seconds for one in again]) if again else Fraction(0)
    return Minutes(
        scope,
        tuple(one for one in again if one.seconds <= limit),
        tuple(one for one in in_order if one.first_time),
        tuple(one for one in again if one.seconds > limit),
    )


def _median(seconds: Sequence[int]) -> Fraction:
    middle, odd = divmod(len(seconds), 2)
    in_order = sorted(seconds)
    return Fraction(in_order[middle]) if odd else Fraction(in_order[middle - 1] + in_order[middle], 2)


def _each(spent: Sequence[Spent]) -> str:
    return ", ".join(show_minutes(one.seconds) for one in spent)
