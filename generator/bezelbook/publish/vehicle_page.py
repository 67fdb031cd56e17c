"""The page of a vehicle: its splits, its places, and for each opening what goes in, how deep it is and who says so."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Place, Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import LOOK_NEXT, Links, look_anchor, place_anchor, removal_page, vehicle_page
from bezelbook.publish.answer_table import Table, answer_table
from bezelbook.publish.circuits.vehicle_wiring import Wiring
from bezelbook.publish.counts.thing import Things
from bezelbook.publish.electric.vehicle import loads_part
from bezelbook.publish.mentions import Mentions
from bezelbook.publish.note_tally import tally
from bezelbook.publish.notes import Said, newest_first, said, said_at
from bezelbook.publish.offers import OfferRow, Offers, offer_row
from bezelbook.publish.opening import OPEN, Opening
from bezelbook.publish.page_text import page_file
from bezelbook.publish.removal.glance import glances
from bezelbook.publish.repeated_readings import RepeatedReading, repeated_readings
from bezelbook.publish.screens import ScreenFigure, screens
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.speakers.place import Places
from bezelbook.publish.speakers.vehicle_part import SpeakerPart, speaker_part
from bezelbook.publish.strips import Section, Strip, sections, strips, unknown_strips
from bezelbook.publish.template import render
from bezelbook.reasoning.evidence import evidence_at


@dataclass(frozen=True, slots=True)
class OpeningPart:
    """One opening as its part of the page shows it; `speakers` is what is known of any that would go in there."""

    name: str
    anchor: str
    record: Place
    table: Table
    strips: tuple[Strip, ...]
    unknown_strips: tuple[str, ...]
    sections: tuple[Section, ...]
    argued: bool
    readings: tuple[RepeatedReading, ...]
    screens: tuple[ScreenFigure, ...]
    notes: tuple[Said, ...]
    speakers: SpeakerPart | None
    offers: tuple[OfferRow, ...]


@dataclass(frozen=True, slots=True)
class OtherPlace:
    """A place that takes no box, with its notes; `record` is None when the vehicle lists none.

    `speakers` is what goes in where a speaker does.
    """

    name: str
    anchor: str
    record: Place | None
    readings: tuple[RepeatedReading, ...]
    notes: tuple[Said, ...]
    speakers: SpeakerPart | None


def vehicle_pages(
    book: KnowledgeBase, openings: Sequence[Opening], named: Mentions, places: Places, things: Things
) -> Iterator[SiteFile]:
    """One page a vehicle."""
    wiring, offers = Wiring(book), Offers(book, openings)
    for vehicle in book.vehicles.values():
        path = vehicle_page(vehicle.id)
        to = Links(path, book)
        own = [opening for opening in openings if opening.vehicle == vehicle.id]
        html = render(
            "kinds/vehicle/page.html",
            vehicle=vehicle,
            sisters=[(sister, _sister(book, sister), _sister_at(book, sister, to)) for sister in vehicle.sisters],
            openings=[_opening(opening, to, places, offers) for opening in own],
            others=list(_others(vehicle, named.places.get(vehicle.id, frozenset()), own, places, to)),
            wiring=wiring.of(vehicle, to),
            ready=things.ready(vehicle, to),
            loads=loads_part(book, vehicle, to),
            to=to,
            removal_at=to.to(removal_page(vehicle.id)),
            first_off=list(glances(vehicle, to)),
            tally=tally,
            look_at=to.to(LOOK_NEXT, look_anchor(vehicle.id)),
        )
        yield page_file(path, vehicle.name, html, f"vehicles/{vehicle.id}")


def _opening(opening: Opening, to: Links, places: Places, offers: Offers) -> OpeningPart:
    takes = places.get((opening.vehicle, opening.id))
    return OpeningPart(
        opening.name,
        place_anchor(opening.id),
        opening.record,
        answer_table(opening, to),
        strips(opening),
        unknown_strips(opening),
        sections(opening),
        len(opening.room.accounts) > 1,
        repeated_readings(opening.book, opening.room.evidence, to),
        screens(opening, to),
        said_at(opening.book, opening.vehicle, opening.id, opening.room.evidence),
        speaker_part(takes, places, to) if takes and takes.answers else None,
        tuple(offer_row(offer, to) for offer in offers.units(opening, OPEN)),
    )


def _others(
    vehicle: Vehicle, noted: frozenset[str], shown: Sequence[Opening], places: Places, to: Links
) -> Iterator[OtherPlace]:
    book = to.book
    openings = {opening.id for opening in shown}
    for place in [*vehicle.places, *sorted(noted - set(vehicle.places))]:
        if place not in openings:
            record = vehicle.places.get(place)
            name = (record.name if record else None) or place.replace("-", " ")
            notes = newest_first(said(book, note) for note in book.notes_at(vehicle.id, place))
            takes = places.get((vehicle.id, place))
            part = speaker_part(takes, places, to) if takes else None
            readings = repeated_readings(book, evidence_at(book, vehicle, place), to)
            yield OtherPlace(name, place_anchor(place), record, readings, tuple(notes), part)


def _sister(book: KnowledgeBase, sister: str) -> str:
    return book.vehicles[sister].name if sister in book.vehicles else sister.replace("-", " ")


def _sister_at(book: KnowledgeBase, sister: str, to: Links) -> str:
    return to.vehicle(sister) if sister in book.vehicles else ""
