"""A look: what to look at, with which tool, for how long, and the answers that it would make firm."""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.looks.pair import Pair

# Bay-hours that a wrong answer costs: the middle of what the trade says of a chassis found too deep with the dash open
# (half an hour to two), and of one whose plug and loom do not go in (half an hour to one). Common practice, no source.
CHASSIS = Fraction(5, 4)
PLUG = Fraction(3, 4)


@dataclass(frozen=True, slots=True)
class Todo:
    """What somebody would do: where, in which builds of it (none for the bench), what, with what, how many minutes.

    `about` is the unit on the bench or offered up, or the note that is asked about, by its file name; `mounts` are
    those with which a unit is offered up, none for the bare opening.
    """

    vehicle: str | None
    place: str | None
    builds: tuple[Build, ...]
    what: str
    tool: str
    minutes: int
    bay_hours: Fraction
    about: str | None = None
    mounts: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Promise:
    """What a look does for an open pair: in which share of its outcomes it settles it `alone`.

    `share` is the same together with the `others`, with which it does most for the minutes of all of them.
    """

    alone: Fraction
    share: Fraction
    others: frozenset[Todo] = frozenset()


@dataclass(frozen=True, slots=True)
class Look:
    """A look with, for each open pair that it may settle, in which share of its possible outcomes it does.

    `helps` are the pairs that it settles only together with other looks.
    """

    todo: Todo
    settles: Mapping[Pair, Fraction]
    helps: tuple[Pair, ...]
    worth: Fraction

    @property
    def expected(self) -> Fraction:
        """How many open answers it settles on average."""
        return sum(self.settles.values(), start=Fraction(0))


def looks_of(promises: Iterable[tuple[Todo, Pair, Promise]], weight: Callable[[Pair], int]) -> Iterator[Look]:
    """Looks by what they promise for each pair.

    The worth of a look is what it settles on average, each pair by its weight, for each minute of looking, times the
    bay-hours that a wrong answer costs. Where a pair takes other looks as well, those count with their minutes, once
    however many pairs they serve; the pairs that would make it pay less are left for later.
    """
    found: dict[Todo, dict[Pair, Promise]] = {}
    for todo, pair, promise in promises:
        found.setdefault(todo, {})[pair] = promise
    for todo, of in found.items():
        settles = {pair: one.alone for pair, one in of.items() if one.alone}
        helps = tuple(pair for pair, one in of.items() if not one.alone)
        weighed = [(one.share * weight(pair), one.others) for pair, one in of.items()]
        yield Look(todo, settles, helps, _pays(todo, weighed) * todo.bay_hours)


def _pays(todo: Todo, weighed: Iterable[tuple[Fraction, frozenset[Todo]]]) -> Fraction:
    """How much is settled for each minute, with the pairs that pay best and all looks that those take."""
    best, settled, others = Fraction(0), Fraction(0), frozenset[Todo]()
    for value, more in sorted(weighed, key=lambda one: one[0] / _minutes(todo, one[1]), reverse=True):
        settled, others = settled + value, others | more
        best = max(best, settled / _minutes(todo, others))
    return best


def _minutes(todo: Todo, others: Iterable[Todo]) -> int:
    return todo.minutes + sum(one.minutes for one in others)
