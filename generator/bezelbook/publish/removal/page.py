"""The page of a vehicle that says what comes off first: a part for every place that one may have to reach."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links, place_anchor, removal_page
from bezelbook.publish.counts.ready import ReadyPart
from bezelbook.publish.counts.thing import Things
from bezelbook.publish.mentions import Mentions
from bezelbook.publish.page_text import page_file
from bezelbook.publish.removal.cautions import Caution, caution, place_name, whole_car
from bezelbook.publish.removal.part import Part, part_of
from bezelbook.publish.removal.reached_for import reached_for, stays_on
from bezelbook.publish.removal.trade_words import FirstUse
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render
from bezelbook.reasoning.order.removal import Removal, removals_at
from bezelbook.values.words import Safety


@dataclass(frozen=True, slots=True)
class Target:
    """A place to reach, with an order for each build that differs; none of them written when nobody wrote any.

    `ready` is what to lay out before one starts there, and `twin` the same place on the other side.
    """

    name: str
    anchor: str
    at: str
    jobs: str
    safety: Safety | None
    parts: tuple[Part, ...]
    ready: ReadyPart | None
    twin: str | None

    @property
    def known(self) -> bool:
        """Whether a note says anything at all of what is on the way there."""
        return any(part.written or part.loose or part.hidden for part in self.parts)

    @property
    def hint(self) -> bool:
        """Whether an order is written for some build, which may help with the others."""
        return any(part.written for part in self.parts)

    @property
    def stopped(self) -> bool:
        """Whether all that is written is that a restraint is near."""
        return all(part.stopped for part in self.parts)

    @property
    def caution(self) -> Caution | None:
        """What could hurt someone there; None where nothing could, or nobody looked."""
        return caution(self.safety) if self.safety and self.safety != "none" else None

    @property
    def tools(self) -> tuple[str, ...]:
        """Everything that its steps take, each once."""
        steps = (step for part in self.parts for step in part.steps)
        return tuple(dict.fromkeys(tool for step in steps for tool in step.tools))


def removal_pages(book: KnowledgeBase, named: Mentions, things: Things) -> Iterator[SiteFile]:
    """One page a vehicle."""
    for vehicle in book.vehicles.values():
        to = Links(removal_page(vehicle.id), book)
        told = FirstUse()
        places = _places(vehicle, sorted(named.places.get(vehicle.id, ())))
        orders = {place: removals_at(book, vehicle, place) for place in places}
        ready = {part.at: part for part in things.ready(vehicle, to)}
        targets = [
            _target(vehicle, place, orders, ready.get(to.place(vehicle.id, place)), told, to) for place in places
        ]
        written = {one.anchor: one.name for one in targets if one.known and not one.stopped}
        html = render(
            "publish/removal.html",
            vehicle=vehicle,
            whole_car=whole_car(vehicle),
            vehicle_at=to.vehicle(vehicle.id),
            known=[(one, written.get(one.twin or "", "")) for one in targets if one.known],
            gaps=[(one, written.get(one.twin or "", "")) for one in targets if not one.known],
        )
        yield page_file(to.page, f"{vehicle.name}: what comes off first", html, f"vehicles/{vehicle.id}")


def _places(vehicle: Vehicle, noted: Sequence[str]) -> list[str]:
    """Every place that can be reached; of a vehicle as a whole nothing comes off."""
    own = [place for place, record in vehicle.places.items() if record.kind != "whole vehicle"]
    return [*own, *(place for place in noted if place not in vehicle.places)]


def _target(
    vehicle: Vehicle,
    place: str,
    orders: Mapping[str, Sequence[Removal]],
    ready: ReadyPart | None,
    told: FirstUse,
    to: Links,
) -> Target:
    record = vehicle.places.get(place)
    here = _pieces(orders[place])
    elsewhere = _pieces(one for other, removals in orders.items() if other != place for one in removals)
    stays = [(one, stays_on(vehicle, place, one, here, elsewhere)) for one in orders[place]]
    return Target(
        place_name(vehicle, place),
        place_anchor(place),
        to.place(vehicle.id, place),
        reached_for(vehicle, place),
        record.safety if record else None,
        tuple(part_of(vehicle, place, one, left, told, to) for one, left in stays),
        ready,
        place_anchor(record.other_side) if record and record.other_side else None,
    )


def _pieces(orders: Iterable[Removal]) -> frozenset[str]:
    return frozenset(step.piece for one in orders for step in one.steps)
