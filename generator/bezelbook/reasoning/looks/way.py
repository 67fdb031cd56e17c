"""Looks by what they would tell, and which of them settle a question best for their minutes, alone or together."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from bezelbook.reasoning.looks.look import Promise, Todo
from bezelbook.reasoning.looks.met import Read, Spot
from bezelbook.reasoning.looks.readings import TRIED
from bezelbook.reasoning.looks.weighing import Weighed
from bezelbook.reasoning.needs import Needs
from bezelbook.values.span import Span


@dataclass(frozen=True, eq=False)
class Way:
    """A look by what it tells in the outcome of a number: of an opening or a mount, or of what a unit asks for."""

    todo: Todo
    tells: Callable[[int], Mapping[Spot, Span]] | None = None
    needs: Callable[[Needs, int], Needs] | None = None


Ways = frozenset[Way]


@dataclass(frozen=True)
class Bundles:
    """What a part asks for in every setting of a question, by every account of each, with the looks that bear on it.

    `read` gives what looks together tell in the outcome of a number.
    """

    needs: Needs
    settings: Sequence[Sequence[Weighed]]
    ways: Sequence[Way]
    read: Callable[[Ways, int], Read]
    _shares: dict[Ways, Fraction] = field(default_factory=dict, compare=False, repr=False)

    def promises(self) -> Iterator[tuple[Todo, Promise]]:
        """What each look promises; one that has no part in settling the question is left out."""
        if not self.share(frozenset(self.ways)):
            return
        together = self._together()
        for way in self.ways:
            alone = frozenset({way})
            best = max(alone, together.get(way, alone), key=self.pays)
            if self.share(best):
                others = frozenset(one.todo for one in best - alone)
                yield way.todo, Promise(self.share(alone), self.share(best), others)

    def _together(self) -> dict[Way, Ways]:
        """With which others each look pays best: all that are not left out, one after the other, since that pays more.

        What is left out may still be worth a look, as long as more is settled with it than without it.
        """
        found: dict[Way, Ways] = {}
        left = frozenset(self.ways)
        for way in self.ways:
            fewer = left - {way}
            if fewer and self.share(fewer) < self.share(left):
                found[way] = left
            if fewer and self.pays(fewer) >= self.pays(left):
                left = fewer
        return found | dict.fromkeys(left, left)

    def pays(self, ways: Ways) -> Fraction:
        """In which share of their outcomes these looks settle the question, for each minute that they take."""
        return self.share(ways) / sum(way.todo.minutes for way in ways)

    def share(self, ways: Ways) -> Fraction:
        """In which share of their outcomes these looks settle the question; one that no account allows cannot be."""
        if ways not in self._shares:
            found = [self._settled(ways, number) for number in range(TRIED)]
            possible = [one for one in found if one is not None]
            self._shares[ways] = Fraction(sum(possible), len(possible) or 1)
        return self._shares[ways]

    def _settled(self, ways: Ways, number: int) -> bool | None:
        needs = self.needs
        for way in (one for one in self.ways if one in ways):
            needs = way.needs(needs, number) if way.needs else needs
        read = self.read(frozenset(way for way in ways if way.tells), number)
        for accounts in self.settings:
            met = [(one, found) for one in accounts if (found := one.room.met(needs, read))]
            if not met:
                return None
            views = {one.view(needs, found) for one, found in met}
            if len(views) > 1 or None in views:
                return False
        return True
