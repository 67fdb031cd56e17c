"""The book's own names, and the usual ways to say a generation, as phrases that point at records."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.vehicle.record import PlaceKind, Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.inches_said import other_inches
from bezelbook.reasoning.size_classes import NUMBER_WORDS, size_class

Points = Literal["vehicle", "unit", "speaker", "mount", "place", "split"]
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
    ("[\u00d7*]", " x "),
    ("\u2044", "/"),
    ("\\+/?[-\u2212]", "\u00b1"),
    ("[\u2033\u201c\u201d]|''|\u2032\u2032|\u2019\u2019", '"'),
    ('[^a-z0-9./" \u00b1\u00bc-\u00be\u215b-\u215e,]', " "),
    # What is left of these once quotation marks round words are gone means inches.
    ('(^| )"([a-z])', "$1$2"),
    ('([a-z])"', "$1 "),
    (r"([a-z])[.,/]", "$1 "),
    (r"[.,/](?!\d)", " "),
    (" +", " "),
    (r"\bfirst (?=gen)", "1st "),
    (r"\bsecond (?=gen)", "2nd "),
    (r"\bthird (?=gen)", "3rd "),
    (r"\bfourth (?=gen)", "4th "),
    (r"\bfifth (?=gen)", "5th "),
    (r"\b(?:mark|mk) ?iii\b", "gen 3"),
    (r"\b(?:mark|mk) ?ii\b", "gen 2"),
    (r"\b(?:generation|gen|mark|mk) ?(\d+)\b", "gen $1"),
    (r"\b(\d+)(?:st|nd|rd|th)\b(?: (?:generation|gen)\b)?", "gen $1"),
    (r"(\d)w\b", "$1 wide"),
    (r"(\d)h\b", "$1 high"),
    (r"(\d)d\b", "$1 deep"),
    (r"(\d)din\b", "$1 din"),
    # "hatch2" is "hatch 2".
    (r"\b([a-z]{3,})(\d{1,2})\b", "$1 $2"),
    (" +", " "),
)
_FILLERS = (
    "a an and any are at be behind big but by can car could deep depth do does down eight five fit fits for four "
    "from gen get gets go goes going got has have he her here high height his how i if in inch inches into is it "
    "its just like me my new nine no not of off old on one or our out over please put room seven she six small "
    "some sure tall ten than that the their them there they this three to two under up us want wants we what "
    "where which wide width will with without would x year you your"
)
# Words that say nothing of which vehicle or place is meant, even where one of its names holds them.
FILLERS = frozenset(_FILLERS.split())


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
        folded = re.sub(pattern, re.sub(r"\$(\d)", r"\\\1", instead), folded)
    return tuple(folded.split())


def vocabulary(book: KnowledgeBase) -> tuple[Phrase, ...]:
    """Every phrase of the book, longest first; of equal length in order of what they point at.

    Where a thing's own file name is another's nickname, the words mean the thing itself: its file name comes before
    names, names before nicknames. So there are always words that ask for one thing and no other.
    """
    nearest: dict[tuple[str, ...], int] = {}
    ranked = {(rank, phrase) for rank, phrase in _phrases(book) if phrase.words}
    for rank, phrase in ranked:
        nearest[_meaning(phrase)] = min(rank, nearest.get(_meaning(phrase), rank))
    phrases = {phrase for rank, phrase in ranked if rank == nearest[_meaning(phrase)]}
    return tuple(
        sorted(phrases, key=lambda one: (-len(one.words), one.words, one.points, one.id, one.vehicle, one.axis))
    )


def _meaning(phrase: Phrase) -> tuple[str, ...]:
    """What two phrases have in common when one may hide the other: the words, and the sort of thing they point at."""
    return (phrase.points, phrase.vehicle, phrase.axis, *phrase.words)


def _phrases(book: KnowledgeBase) -> Iterator[tuple[int, Phrase]]:
    for vehicle in book.vehicles.values():
        yield from _vehicle_phrases(vehicle)
    for unit in book.head_units.values():
        for rank, words in _ranked(unit.id, unit.name, unit.also):
            yield rank, Phrase(words, "unit", unit.id)
            yield from ((3, Phrase(other, "unit", unit.id)) for other in other_inches(words))
    for speaker in book.speakers.values():
        for rank, words in _ranked(speaker.id, speaker.name, speaker.also):
            yield rank, Phrase(words, "speaker", speaker.id)
            yield from _sized_as(speaker.id, words)
    for mount in book.mounts.values():
        for rank, words in _ranked(mount.id, mount.name, mount.also):
            yield rank, Phrase(words, "mount", mount.id)


def _sized_as(id_: str, words: tuple[str, ...]) -> Iterator[tuple[int, Phrase]]:
    """A speaker's name with its number words as digits, unless nothing but a size is left of it."""
    said = " ".join(words)
    for pattern, instead in NUMBER_WORDS:
        said = re.sub(pattern, re.sub(r"\$(\d)", r"\\\1", instead), said)
    if size_class(said) is None:
        yield 3, Phrase(tuple(said.split()), "speaker", id_)


def _vehicle_phrases(vehicle: Vehicle) -> Iterator[tuple[int, Phrase]]:
    number = vehicle.generation
    classes = (f"{vehicle.vehicle_class} {number}", f"{vehicle.vehicle_class} gen {number}")
    for rank, words in _ranked(vehicle.id, vehicle.name, (*vehicle.also, *classes)):
        yield rank, Phrase(words, "vehicle", vehicle.id)
    for place_id, place in vehicle.places.items():
        for rank, words in _ranked(place_id, place.name or "", place.also):
            yield rank, Phrase(words, "place", place_id, vehicle.id)
    for axis, split in vehicle.splits.items():
        for value, side in split.values.items():
            for rank, words in _ranked(value, "", side.also):
                yield rank, Phrase(words, "split", value, vehicle.id, axis)


def _ranked(id_: str, name: str, also: Iterable[str]) -> list[tuple[int, tuple[str, ...]]]:
    """The words for one thing, the surest first."""
    said = [(0, id_), (1, name), *((2, nickname) for nickname in also)]
    return [(rank, folded_words(words)) for rank, words in said]
