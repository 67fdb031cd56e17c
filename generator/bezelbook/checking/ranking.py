"""In what order a list of findings is read: the heaviest first, then what costs most to leave alone."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.finding import Finding
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.hanging.disputed import hanging_on
from bezelbook.reasoning.hanging.things import Things, things_at
from bezelbook.values.words import WEIGHTS


@dataclass(frozen=True, slots=True)
class Rank:
    """How many answers hang on a finding, how often somebody asked, and what it costs to leave it: in bay-hours."""

    answers: int
    asked: int
    cost: Fraction

    @property
    def words(self) -> str:
        """Why it stands where it stands, for the team."""
        hang = f"{self.answers} answers hang on it" if self.answers > 1 else "one answer hangs on it"
        if not self.asked:
            return hang
        return f"asked {'once' if self.asked == 1 else f'{self.asked} times'}; {hang}"


def ranks(book: KnowledgeBase, findings: Iterable[Finding]) -> Mapping[str, Rank]:
    """The rank of each finding by its key, worked out over the whole book: answers x (1 + times asked) x bay-hours."""
    places: dict[tuple[str, str], Things] = {}
    found: dict[str, Rank] = {}
    for finding in findings:
        where = (finding.vehicle, finding.place)
        if where not in places:
            places[where] = things_at(book, *where)
        things = places[where]
        answers = hanging_on(book, things, [book.notes[one] for one in finding.notes if one in book.notes])
        found[finding.key] = Rank(answers, things.times, answers * (1 + things.times) * finding.loss.middle)
    return found


def in_order(findings: Iterable[Finding], by: Mapping[str, Rank]) -> tuple[Finding, ...]:
    """The heaviest first, within a weight what costs most, ties by key."""
    return tuple(sorted(findings, key=lambda one: (WEIGHTS.index(one.weight), -by[one.key].cost, one.key)))
