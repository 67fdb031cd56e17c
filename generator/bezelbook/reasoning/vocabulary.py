"""The book's own names, and the usual ways to say a generation, as phrases that point at records."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.vehicle.record import PlaceKind, Vehicle
from bezelbook.knowledge_base import KnowledgeBase

Points = Literal["vehicle", "unit", "mount", "place", "split"]
# Places whose room is a box: width, height and depth in ninths.
OPENINGS: frozenset[PlaceKind] = frozenset(
    {
        "plain opening",
        "opening behind a bezel",
        "shaped opening",
        "display opening",
        "module bay",
        "pocket",
        "overhead console",
        "glovebox",
        "under seat",
    }
)
# Each is replaced in turn; the browser gets this list too, so both read words alike.
SAME_WORDS: tuple[tuple[str, str], ...] = (
    ("\u00d7", " x "),
    ("[\u2033\u201c\u201d]", '"'),
    ("[^a-z0-9./\"' \u00b1\u00bc-\u00be\u215b-\u215e,+]", " "),
    (r"[.,](?!\d)", " "),
    (r"\b(?:generation|gen|mark|mk) ?(\d+)\b", "gen $1"),
    (r"\b(\d+)(?:st|nd|rd|th) (?:generation|gen)\b", "gen $1"),
    (" +", " "),
)


@dataclass(frozen=True, slots=True)
class Phrase:
    """Words that name something; places and split values belong to one vehicle, a split value also has an axis."""

    words: tuple[str, ...]
    points: Points
    id: str
    vehicle: str = ""
    axis: str = ""


def folded_words(text: str) -> tuple[str, ...]:
    """Typed words as the vocabulary has them: lower case, generations said one way, nothing but words and sizes."""
    folded = text.lower()
    for pattern, instead in SAME_WORDS:
        folded = re.sub(pattern, instead.replace("$1", r"\1"), folded)
    return tuple(folded.split())


def vocabulary(book: KnowledgeBase) -> tuple[Phrase, ...]:
    """Every phrase of the book, longest first; of equal length in order of what they point at."""
    phrases = {phrase for phrase in _phrases(book) if phrase.words}
    return tuple(
        sorted(phrases, key=lambda one: (-len(one.words), one.words, one.points, one.id, one.vehicle, one.axis))
    )


def _phrases(book: KnowledgeBase) -> Iterator[Phrase]:
    for vehicle in book.vehicles.values():
        yield from _vehicle_phrases(vehicle)
    for unit in book.head_units.values():
        for name in (unit.id, unit.name, *unit.also):
            yield Phrase(folded_words(name), "unit", unit.id)
    for mount in book.mounts.values():
        for name in (mount.id, mount.name, *mount.also):
            yield Phrase(folded_words(name), "mount", mount.id)


def _vehicle_phrases(vehicle: Vehicle) -> Iterator[Phrase]:
    number = vehicle.generation
    classes = (f"{vehicle.vehicle_class} {number}", f"{vehicle.vehicle_class} gen {number}")
    for name in (vehicle.id, vehicle.name, *vehicle.also, *classes):
        yield Phrase(folded_words(name), "vehicle", vehicle.id)
    for place_id, place in vehicle.places.items():
        for name in (place_id, place.name or "", *place.also):
            yield Phrase(folded_words(name), "place", place_id, vehicle.id)
    for axis, split in vehicle.splits.items():
        for value, side in split.values.items():
            for name in (value, *side.also):
                yield Phrase(folded_words(name), "split", value, vehicle.id, axis)
