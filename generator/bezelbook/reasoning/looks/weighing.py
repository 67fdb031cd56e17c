"""Whether a part goes in, in one setting and by one account of it, once more is known."""

from dataclasses import dataclass
from functools import cached_property

from bezelbook.reasoning.cells import Demand, demands
from bezelbook.reasoning.evidence import Standing
from bezelbook.reasoning.looks.met import AllMet, Met, Read, Room
from bezelbook.reasoning.needs import Needs
from bezelbook.reasoning.outlook import with_clearance

NOTHING_MORE = Read({})


@dataclass(frozen=True)
class Weighed:
    """A part, as it is known now, and the room that it would meet."""

    needs: Needs
    room: Room

    @property
    def tried(self) -> tuple[Standing, ...]:
        """The notes of the account, where any of them is about this very part."""
        rooms = self.room.rooms
        return rooms.notes if any(rooms.key_of(one) == self.needs.key for one in rooms.notes) else ()

    @cached_property
    def _sure(self) -> frozenset[Demand]:
        """The demands that notes about this very part show to be met, whatever its size."""
        if not self.tried:
            return frozenset()
        rooms = self.room.rooms
        body, plug = demands(rooms.frame, self.needs, self.room.setting)
        return frozenset(demand for demand in body + plug if self._is_met(demand))

    def _is_met(self, demand: Demand) -> bool:
        rooms, setting = self.room.rooms, self.room.setting
        cleared = (with_clearance(rooms.frame, demand),)
        return not rooms.refuses(self.needs, setting, cleared) or not rooms.fitted().refuses(
            self.needs, setting, (demand,)
        )

    def view(self, needs: Needs, met: AllMet) -> bool | None:
        """Whether it goes in once it asks for this and meets that; None while it is open."""
        if any(_short(one, needs) for one in met.body) or (met.plug and all(_short(one, needs) for one in met.plug)):
            return False
        return True if all(self._fits(one, needs) for one in (*met.body, *met.plug)) else None

    @cached_property
    def unsure(self) -> frozenset[Demand]:
        """The demands that nothing shows to be met, as it is known now."""
        met = self.room.met(self.needs, NOTHING_MORE)
        return frozenset(
            one.demand
            for all_met in (met,)
            if all_met
            for one in (*all_met.body, *all_met.plug)
            if not self._fits(one, self.needs)
        )

    def _fits(self, one: Met, needs: Needs) -> bool:
        most = needs.spans[one.demand.need].high
        return (most is not None and most <= one.sure) or one.demand in self._sure


def _short(one: Met, needs: Needs) -> bool:
    least = needs.spans[one.demand.need].low
    return least is not None and least >= one.most
