"""The cheapest set of things to buy that reaches the most of what is wanted, each thing counted once however used."""

from collections.abc import Callable, Hashable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import chain
from typing import Any, Generic, TypeVar

from bezelbook.reasoning.circuits.hyperpath import Arc, least_values

N = TypeVar("N", bound=Hashable)

Cost = tuple[int, ...]


@dataclass(frozen=True)
class Item(Generic[N]):
    """Something to buy: its price, and the ways it opens, each from some nodes to others.

    The ways may promise more than the thing keeps, never less: they serve only to bound the search.
    """

    name: str
    price: int
    ways: tuple[tuple[tuple[N, ...], tuple[N, ...]], ...]


@dataclass(frozen=True)
class Wanted(Generic[N]):
    """What is to be reached: `start` is there for nothing, `goals` come in ranks, those of the first matter most."""

    start: tuple[N, ...]
    goals: tuple[tuple[N, ...], ...]


@dataclass(frozen=True)
class Found:
    """The cheapest set, by name in order, and what it costs: what each rank leaves unreached, the price, the rest."""

    names: tuple[str, ...]
    cost: Cost


def cheapest_set(
    items: Iterable[Item[N]], wanted: Wanted[N], cost: Callable[[tuple[str, ...]], Cost | None]
) -> Found | None:
    """The set of items that costs least, of equal ones the first by name; None when no set is allowed.

    `cost` gives what a set really costs, or None when it is not allowed: first, rank by rank, how many goals it leaves
    unreached, then the sum of its prices, then whatever else decides. Exact: a set is passed over only when it is
    shown to cost more than the best. The bound takes of all that a goal needs the dearest, which never exceeds the
    price of a set in which everything is paid once; adding them up would.
    """
    search = _Search(sorted(items, key=lambda item: item.name), wanted, cost)
    search.go_on((), 0)
    return search.best


class _Search(Generic[N]):
    def __init__(
        self, items: Sequence[Item[N]], wanted: Wanted[N], cost: Callable[[tuple[str, ...]], Cost | None]
    ) -> None:
        self.items = items
        self.wanted = wanted
        self.cost = cost
        self.best: Found | None = None
        self._start: list[Arc[Any]] = [Arc(node, (), lambda: 0) for node in wanted.start]
        self._paid = {item.name: list(_arcs(item, 0)) for item in items}
        self._priced = [list(_arcs(item, item.price)) for item in items]

    def go_on(self, taken: tuple[Item[N], ...], number: int) -> None:
        """Weigh every set that has these items and any of those from this number on."""
        if self.best is not None and self._bound(taken, number) > self.best.cost[: len(self.wanted.goals) + 1]:
            return
        if number == len(self.items):
            self._weigh(tuple(item.name for item in taken))
            return
        # Without it first, so that of equal sets the one with fewer things is met first.
        self.go_on(taken, number + 1)
        self.go_on((*taken, self.items[number]), number + 1)

    def _weigh(self, names: tuple[str, ...]) -> None:
        cost = self.cost(names)
        if cost is not None and (self.best is None or (cost, names) < (self.best.cost, self.best.names)):
            self.best = Found(names, cost)

    def _bound(self, taken: tuple[Item[N], ...], number: int) -> Cost:
        """The least that any such set can cost: what no such set reaches, and the price of the dearest goal.

        A set that leaves more unreached costs more whatever its price, so the price may count every goal in reach.
        """
        paid = [self._paid[item.name] for item in taken]
        values = least_values(chain(self._start, *paid, *self._priced[number:]))
        unreached = tuple(sum(goal not in values for goal in rank) for rank in self.wanted.goals)
        reached = (values[goal] for rank in self.wanted.goals for goal in rank if goal in values)
        return (*unreached, sum(item.price for item in taken) + max(reached, default=0))


def _arcs(item: Item[Any], price: int) -> Iterator[Arc[Any]]:
    """The ways of an item.

    With a single way, its price adds to what comes before it, as no path goes along one way twice; with several, it is
    only one more thing that has to be bought.
    """
    if len(item.ways) == 1:
        [(tails, heads)] = item.ways
        yield from (Arc(head, tails, _adding(price)) for head in heads)
        return
    bought = _Bought(item.name)
    yield Arc(bought, (), lambda: price)
    for tails, heads in item.ways:
        yield from (Arc(head, (*tails, bought), _adding(0)) for head in heads)


@dataclass(frozen=True, slots=True)
class _Bought:
    """The node at which an item is paid for."""

    name: str


def _adding(price: int) -> Callable[..., int]:
    return lambda *values: price + max(values, default=0)
