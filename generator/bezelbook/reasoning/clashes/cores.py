"""The smallest sets of statements that cannot all be true, enough of them to name every statement that clashes."""

# Two at a time first: nearly every clash is one of two notes, and two notes are quickly compared. What is left is taken
# apart by dropping statements one at a time (Reiter, "A theory of diagnosis from first principles", 1987; from memory).

from collections.abc import Callable, Generator, Hashable, Iterator, Mapping, Sequence
from itertools import combinations
from typing import Generic, TypeVar

from bezelbook.reasoning.maximal import contradiction

S = TypeVar("S", bound=Hashable)


def cores(statements: Sequence[S], consistent: Callable[[tuple[S, ...]], bool]) -> tuple[tuple[S, ...], ...]:
    """Sets of statements that cannot all be true and could be if any one were dropped, in the order of the statements.

    None at all where everything can be true. Every statement that clashes with itself or with one other is in some of
    them, and so is every one that still clashes with the rest when those that clash most are left out.
    """
    return () if consistent(tuple(statements)) else tuple(_Search(statements, consistent).found())


class _Search(Generic[S]):
    """One search, and what it has named so far."""

    def __init__(self, statements: Sequence[S], consistent: Callable[[tuple[S, ...]], bool]) -> None:
        self._statements = tuple(statements)
        self._consistent = consistent
        self._named: set[S] = set()

    def found(self) -> Iterator[tuple[S, ...]]:
        """Every core, those that leave least to say first."""
        alone = [one for one in self._statements if not self._consistent((one,))]
        yield from ((one,) for one in alone)
        self._named.update(alone)
        sound = [one for one in self._statements if one not in alone]
        hubs = yield from self._pairs(sound)
        rest = [one for one in sound if one not in hubs]
        dropped = yield from self._larger(rest)
        yield from self._with_the_named([*hubs, *dropped])

    def _pairs(self, sound: Sequence[S]) -> Generator[tuple[S, ...], None, list[S]]:
        """Each statement that clashes with one other, with the one that clashes most; those are what it comes to."""
        apart: dict[S, list[S]] = {}
        for one, other in combinations(sound, 2):
            if not self._consistent((one, other)):
                apart.setdefault(one, []).append(other)
                apart.setdefault(other, []).append(one)
        hubs = self._hubs(apart)
        for hub in hubs:
            for other in apart[hub]:
                if hub not in self._named or other not in self._named:
                    self._named |= {hub, other}
                    yield self._in_order({hub, other})
        return hubs

    def _hubs(self, apart: Mapping[S, Sequence[S]]) -> list[S]:
        """Statements without which no two clash, the one that clashes with most of the others first."""
        hubs: list[S] = []
        while left := {one: sum(other not in hubs for other in apart[one]) for one in apart if one not in hubs}:
            most = max(left, key=lambda one: (left[one], -self._statements.index(one)))
            if not left[most]:
                break
            hubs.append(most)
        return hubs

    def _larger(self, rest: list[S]) -> Generator[tuple[S, ...], None, list[S]]:
        """Clashes of three or more among statements of which no two clash; it comes to one dropped from each."""
        dropped: list[S] = []
        while not self._consistent(tuple(rest)):
            core = contradiction(rest, self._consistent)
            self._named |= set(core)
            yield core
            dropped.append(core[-1])
            rest.remove(core[-1])
        return dropped

    def _with_the_named(self, dropped: Sequence[S]) -> Iterator[tuple[S, ...]]:
        """What clashes with several of those that were left out, and with none of them alone."""
        together: tuple[S, ...] = ()
        for one in dropped:
            if self._consistent((*together, one)):
                together += (one,)
        for one in self._statements:
            if one not in self._named and not self._consistent((*together, one)):
                core = contradiction((*together, one), self._consistent)
                self._named |= set(core)
                yield self._in_order(set(core))

    def _in_order(self, core: set[S]) -> tuple[S, ...]:
        return tuple(one for one in self._statements if one in core)
