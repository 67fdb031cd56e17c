"""The page of a vehicle: its splits, its places, and for each opening what goes in, how deep it is and who says so."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Place, Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links, place_anchor, vehicle_page
from bezelbook.publish.answer_table import Table, answer_table
from bezelbook.publish.circuits.vehicle_wiring import Wiring
from bezelbook.publish.mentions import Mentions
from bezelbook.publish.notes import Said, newest_first, said, said_at
from bezelbook.publish.opening import Opening
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.strips import Section, Strip, sections, strips, unknown_strips
from bezelbook.publish.template import render


@dataclass(frozen=True, slots=True)
class OpeningPart:
    """One opening as its part of the page shows it."""

    name: str
    anchor: str
    record: Place
    table: Table
    strips: tuple[Strip, ...]
    unknown_strips: tuple[str, ...]
    sections: tuple[Section, ...]
    argued: bool
    notes: tuple[Said, ...]


@dataclass(frozen=True, slots=True)
class OtherPlace:
    """A place that the book does not answer for yet, with its notes; `record` is None when the vehicle lists none."""

    name: str
    anchor: str
    record: Place | None
    notes: tuple[Said, ...]


def vehicle_pages(book: KnowledgeBase, openings: Sequence[Opening], named: Mentions) -> Iterator[SiteFile]:
    """One page a vehicle."""
    wiring = Wiring(book)
    for vehicle in book.vehicles.values():
        path = vehicle_page(vehicle.id)
        to = Links(path, book)
        own = [opening for opening in openings if opening.vehicle == vehicle.id]
        html = render(
            "kinds/vehicle/page.html",
            vehicle=vehicle,
            sisters=[(sister, _sister(book, sister), _sister_at(book, sister, to)) for sister in vehicle.sisters],
            openings=[_opening(opening, to) for opening in own],
            others=list(_others(book, vehicle, named.places.get(vehicle.id, frozenset()), own)),
            wiring=wiring.of(vehicle, to),
            to=to,
        )
        yield page_file(path, vehicle.name, html, f"vehicles/{vehicle.id}")


def _opening(opening: Opening, to: Links) -> OpeningPart:
    return OpeningPart(
        opening.name,
        place_anchor(opening.id),
        opening.record,
        answer_table(opening, to),
        strips(opening),
        unknown_strips(opening),
        sections(opening),
        len(opening.room.accounts) > 1,
        said_at(opening.book, opening.vehicle, opening.id, opening.room.evidence),
    )


def _others(
    book: KnowledgeBase, vehicle: Vehicle, noted: frozenset[str], shown: Sequence[Opening]
) -> Iterator[OtherPlace]:
    openings = {opening.id for opening in shown}
    for place in [*vehicle.places, *sorted(noted - set(vehicle.places))]:
        if place not in openings:
            record = vehicle.places.get(place)
            name = (record.name if record else None) or place.replace("-", " ")
            notes = newest_first(said(book, note) for note in book.notes_at(vehicle.id, place))
            yield OtherPlace(name, place_anchor(place), record, tuple(notes))


def _sister(book: KnowledgeBase, sister: str) -> str:
    return book.vehicles[sister].name if sister in book.vehicles else sister.replace("-", " ")


def _sister_at(book: KnowledgeBase, sister: str, to: Links) -> str:
    return to.vehicle(sister) if sister in book.vehicles else ""
