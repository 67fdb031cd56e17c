"""The page of a vehicle that says what comes off first: a part for every place that one may have to reach."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links, place_anchor, removal_page
from bezelbook.publish.mentions import Mentions
from bezelbook.publish.page_text import page_file
from bezelbook.publish.removal.part import Part, part_of
from bezelbook.publish.removal.trade_words import FirstUse
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render
from bezelbook.reasoning.order.removal import removals_at
from bezelbook.values.words import Safety


@dataclass(frozen=True, slots=True)
class Target:
    """A place to reach, with an order for each build that differs; none of them written when nobody wrote any."""

    name: str
    anchor: str
    at: str
    safety: Safety | None
    parts: tuple[Part, ...]

    @property
    def known(self) -> bool:
        """Whether a note says anything at all of what is on the way there."""
        return any(part.written or part.loose or part.hidden for part in self.parts)


def removal_pages(book: KnowledgeBase, named: Mentions) -> Iterator[SiteFile]:
    """One page a vehicle."""
    for vehicle in book.vehicles.values():
        to = Links(removal_page(vehicle.id), book)
        told = FirstUse()
        places = _places(vehicle, sorted(named.places.get(vehicle.id, ())))
        targets = [_target(book, vehicle, place, told, to) for place in places]
        html = render(
            "publish/removal.html",
            vehicle=vehicle,
            vehicle_at=to.vehicle(vehicle.id),
            known=[one for one in targets if one.known],
            gaps=[one for one in targets if not one.known],
        )
        yield page_file(to.page, f"{vehicle.name}: what comes off first", html, f"vehicles/{vehicle.id}")


def _places(vehicle: Vehicle, noted: Sequence[str]) -> list[str]:
    """Every place that can be reached; of a vehicle as a whole nothing comes off."""
    own = [place for place, record in vehicle.places.items() if record.kind != "whole vehicle"]
    return [*own, *(place for place in noted if place not in vehicle.places)]


def _target(book: KnowledgeBase, vehicle: Vehicle, place: str, told: FirstUse, to: Links) -> Target:
    record = vehicle.places.get(place)
    parts = [part_of(book, vehicle, place, one, told, to) for one in removals_at(book, vehicle, place)]
    return Target(
        (record.name if record else None) or place.replace("-", " "),
        place_anchor(place),
        to.place(vehicle.id, place),
        record.safety if record else None,
        tuple(parts),
    )
