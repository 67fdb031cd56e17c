"""What the browser is told about the whole book: its names, how words are read, and which pages there are."""

from collections.abc import Iterator
from typing import Any

from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.record import Named
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.publish.address import HOME, Links, built, vehicle_page, vehicle_script
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.patterns import browser_pattern
from bezelbook.publish.record_pages import PART_HEADINGS, parts_of
from bezelbook.publish.spoken_data import spoken_data
from bezelbook.publish.wording import NUMBERS, VERDICTS
from bezelbook.reasoning.answer import FIRM
from bezelbook.reasoning.offer import KINDS, WANTING
from bezelbook.reasoning.said_box import BOXES
from bezelbook.reasoning.said_sizes import BARE_UNITS, CHASSIS_MM, NEED_WORDS, NO_SIZES, SIZES, TOO_FINE, UNIT
from bezelbook.reasoning.size_classes import class_of_nominal
from bezelbook.reasoning.spoken.places import own_words, takes_speaker
from bezelbook.reasoning.vocabulary import FILLERS, OPENINGS, SAME_WORDS, Phrase, vocabulary
from bezelbook.reasoning.wiring_asked.words import PHRASES, SHOWS_IT
from bezelbook.reasoning.words import NO_VEHICLE, SIZE_GOES_ON
from bezelbook.values.quantity import pattern
from bezelbook.values.unit import MOST_DECIMALS
from bezelbook.values.words import SURENESSES


def book_data(knowledge: Knowledge) -> dict[str, Any]:
    """Everything that the box has to know before a vehicle is named, as plain data."""
    book = knowledge.book
    return {
        "shop": {"name": book.shop.name, "first": book.shop.units_first},
        "verdicts": dict(VERDICTS),
        "firm": list(FIRM),
        "wanting": sorted(WANTING),
        "surenesses": list(SURENESSES),
        "offers": list(KINDS),
        "numbers": list(NUMBERS),
        "reading": _reading(),
        "phrases": [_phrase(one) for one in vocabulary(book)],
        "vehicles": [_vehicle(one) for one in book.vehicles.values()],
        "units": [{"id": unit.id, "name": unit.name} for unit in book.head_units.values()],
        "mounts": [_mount(mount) for mount in book.mounts.values()],
        "speakers": [_speaker(speaker) for speaker in book.speakers.values()],
        "pages": list(_pages(knowledge)),
    }


def _reading() -> dict[str, Any]:
    """How words and sizes are read."""
    return {
        "same": [[browser_pattern(written), instead] for written, instead in SAME_WORDS],
        "fillers": sorted(FILLERS),
        "sizes": browser_pattern(SIZES.pattern),
        "boxes": [[browser_pattern(pattern), *sizes] for pattern, sizes in BOXES.items()],
        "noSizes": browser_pattern(NO_SIZES.pattern),
        "sizeGoesOn": browser_pattern(SIZE_GOES_ON.pattern),
        "year": browser_pattern(r"\byear (\d{1,2})\b"),
        "unit": UNIT,
        "length": pattern("length"),
        "needs": dict(NEED_WORDS),
        "bare": list(BARE_UNITS),
        "usual": {need: list(limits) for need, limits in CHASSIS_MM.items()},
        "tooFine": [browser_pattern(TOO_FINE.pattern), f": no size has more than {MOST_DECIMALS} decimals"],
        "noVehicle": NO_VEHICLE,
        "wiring": {"words": sorted(SHOWS_IT), "phrases": [list(phrase) for phrase in PHRASES]},
        "spoken": spoken_data(),
    }


def _phrase(phrase: Phrase) -> dict[str, str]:
    return {
        "words": " ".join(phrase.words),
        "points": phrase.points,
        "id": phrase.id,
        "of": phrase.vehicle,
        "axis": phrase.axis,
    }


def _vehicle(vehicle: Vehicle) -> dict[str, Any]:
    return {
        "id": vehicle.id,
        "name": vehicle.name,
        "generation": vehicle.generation,
        "page": built(vehicle_page(vehicle.id)),
        "years": vehicle.model_years,
        "axes": list(vehicle.splits),
        "data": vehicle_script(vehicle.id),
        "places": [
            {
                "id": id_,
                "name": place.name or id_.replace("-", " "),
                "opening": place.kind in OPENINGS,
                "speaker": takes_speaker(place),
                "side": place.side,
                "own": sorted(own_words(id_, place)),
            }
            for id_, place in vehicle.places.items()
        ],
    }


def _mount(mount: Mount) -> dict[str, Any]:
    """A mount by name, and how thick it is where it is a plain ring."""
    ring = mount.thickness if mount.mount_kind == "spacer" else None
    return {"id": mount.id, "name": mount.name, "ring": [ring.base, ring.typed] if ring else None}


def _speaker(speaker: Speaker) -> dict[str, Any]:
    kind, sold_as = speaker.speaker_kind, class_of_nominal(speaker.nominal)
    return {"id": speaker.id, "name": speaker.name, "kind": kind, "soldAs": sold_as}


def _pages(knowledge: Knowledge) -> Iterator[list[Any]]:
    """Each page that has a name of its own: the name, what it is, where it is, and what else it is called."""
    book, to = knowledge.book, Links(HOME, knowledge.book)
    for vehicle in book.vehicles.values():
        yield _page(vehicle, "vehicle", to.vehicle(vehicle.id))
    for unit in book.head_units.values():
        yield _page(unit, "head unit", to.head_unit(unit.id))
    for mount in book.mounts.values():
        yield _page(mount, mount.mount_kind, to.mount(mount.id))
    for kind in PART_HEADINGS:
        yield from (_page(part, kind, to.record(kind, part.id)) for part in parts_of(book, kind))
    for rule in knowledge.rules:
        yield [rule.title, "how the book checks itself", to.rule(rule.name), []]


def _page(record: Named, what: str, at: str) -> list[Any]:
    return [record.name, what, at, [*record.also, record.id.replace("-", " ")]]
