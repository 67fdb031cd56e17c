"""Offering a unit up: what settles an answer that is too close to read, and what one yes or no says of other units."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.reasoning.cells import Cell, Demand, PresentedCell, Setting, demands
from bezelbook.reasoning.looks.look import CHASSIS, Promise, Todo
from bezelbook.reasoning.looks.opening_looks import OFFER_MINUTES
from bezelbook.reasoning.looks.pair import Pair, is_firm
from bezelbook.reasoning.looks.weighing import Weighed
from bezelbook.reasoning.needs import Needs
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place
from bezelbook.values.span import Span

UNIT_ITSELF = "the unit itself"


@dataclass(frozen=True, eq=False)
class Offer:
    """A unit in one setting in which it is open whether it goes in.

    `shows` is what it asks wherever its plug leaves: that much room there is once it went in. `unsure` is what it asks
    that is not met for certain: one of it there is no room for once it did not. `offset` is that of its mounts.
    """

    todo: Todo
    needs: Needs
    shows: tuple[Demand, ...]
    unsure: tuple[Demand, ...]
    offset: Span

    def by_a_yes(self, other: "Offer") -> bool:
        """Whether the other goes in for certain once this one did."""
        return other is self or all(
            any(as_large((self, one), (other, of)) for one in self.shows) for of in other.unsure
        )

    def by_a_no(self, other: "Offer") -> bool:
        """Whether the other does not go in for certain once this one did not."""
        return other is self or all(
            any(as_large((other, one), (self, of)) for one in other.shows) for of in self.unsure
        )


def as_large(one: tuple[Offer, Demand], other: tuple[Offer, Demand]) -> bool:
    """Whether one demand of one unit asks at least as much of the same room as that of the other."""
    (offer, demand), (than, of) = one, other
    out, in_ = offer.offset.high, than.offset.low
    if demand.cell == of.cell:
        out, in_ = demand.shift, of.shift
    if _room(demand) != _room(of) or out is None or in_ is None:
        return False
    if (offer.needs.key, demand.need) == (than.needs.key, of.need):
        return out <= in_
    least, most = offer.needs.spans[demand.need].low, than.needs.spans[of.need].high
    return least is not None and most is not None and least - out >= most - in_


def _room(demand: Demand) -> Cell:
    """Which room of the bare opening a demand meets, or which hole of a mount."""
    return demand.cell.room if isinstance(demand.cell, PresentedCell) else demand.cell


def offers(place: Place, pair: Pair, question: Asked, weighed: Sequence[Sequence[Weighed]]) -> Iterator[Offer]:
    """The unit of an open pair in each setting in which it is open; `weighed` is each setting by every account."""
    for setting, accounts in zip(question.settings, weighed, strict=True):
        if not is_firm(question.narrowed(stacks=(setting.stack,)), place.accounts):
            body, plug = demands(place.frame, question.needs, setting)
            asks, found = (*body, *plug), frozenset[Demand]().union(*(one.unsure for one in accounts))
            unsure = tuple(one for one in asks if one in found) or asks
            shows = asks if len(plug) == 1 else body
            todo = _todo(pair, question.needs, setting)
            yield Offer(todo, question.needs, shows, unsure, setting.stack.offset)


def _todo(pair: Pair, needs: Needs, setting: Setting) -> Todo:
    what = f"offer up {needs.name} with {setting.stack.words}, nothing cut, loom {setting.loom}, plugs on"
    where = (pair.vehicle, pair.place, (pair.build,))
    return Todo(*where, what, UNIT_ITSELF, OFFER_MINUTES, CHASSIS, pair.unit, setting.stack.key)


def offer_promises(of: Mapping[Pair, Sequence[Offer]], pair: Pair) -> Iterator[tuple[Todo, Pair, Promise]]:
    """What offering up the unit of a pair promises, for that pair and for the others of its build.

    Whether it goes in is as likely as not: nobody knows. A pair that is open with several mounts is settled by offering
    its unit up with each of them.
    """
    others = [(other, theirs) for other, theirs in of.items() if other.build == pair.build]
    for offer in of[pair]:
        for other, theirs in others:
            yes = [one for one in theirs if offer.by_a_yes(one)]
            no = [one for one in theirs if offer.by_a_no(one)]
            alone = Fraction((len(yes) == len(theirs)) + (len(no) == len(theirs)), 2)
            if alone:
                yield offer.todo, other, Promise(alone, alone)
            elif other == pair:
                left = frozenset(one.todo for one in theirs if one not in yes or one not in no)
                yield offer.todo, other, Promise(alone, Fraction(1), left)
