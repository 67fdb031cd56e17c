"""A look: what to look at, with which tool, for how long, and the answers that it would make firm."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.looks.pair import Pair, times_asked

# Bay-hours that a wrong answer costs: the middle of what the trade says of a chassis found too deep with the dash open
# (half an hour to two), and of one whose plug and loom do not go in (half an hour to one). Common practice, no source.
CHASSIS = Fraction(5, 4)
PLUG = Fraction(3, 4)


@dataclass(frozen=True, slots=True)
class Todo:
    """What somebody would do: where, in which builds of it (none for the bench), what, with what, how many minutes."""

    vehicle: str | None
    place: str | None
    builds: tuple[Build, ...]
    what: str
    tool: str
    minutes: int
    bay_hours: Fraction


@dataclass(frozen=True, slots=True)
class Look:
    """A look with, for each open pair that it may settle, in which share of its possible outcomes it does."""

    todo: Todo
    settles: Mapping[Pair, Fraction]
    worth: Fraction

    @property
    def expected(self) -> Fraction:
        """How many open answers it settles on average."""
        return sum(self.settles.values(), start=Fraction(0))


def look_of(book: KnowledgeBase, todo: Todo, outcomes: Sequence[Iterable[Pair]]) -> Look | None:
    """A look by the pairs that each of its outcomes settles, all equally likely; None when no outcome settles any.

    Its worth is the mean, over the outcomes, of what they settle, each pair 1 + as often as it was asked, times the
    bay-hours that a wrong answer costs, for each minute of looking.
    """
    counts: dict[Pair, int] = {}
    for settled in outcomes:
        for pair in settled:
            counts[pair] = counts.get(pair, 0) + 1
    if not counts:
        return None
    shares = {pair: Fraction(count, len(outcomes)) for pair, count in counts.items()}
    weighed = sum((share * (1 + times_asked(book, pair)) for pair, share in shares.items()), start=Fraction(0))
    return Look(todo, shares, weighed * todo.bay_hours / todo.minutes)
