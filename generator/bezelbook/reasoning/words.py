"""Free words at the counter, read as a question; what is missing is asked for, never guessed."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.vocabulary import OPENINGS, Phrase, folded_words, vocabulary
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity, read_quantity

NUMBER = "(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:[.,]\\d+)?[\u00bc-\u00be\u215b-\u215e]?)"
UNIT = '(?:mm|cm|inches|inch|in|")'
GIVE = f"(?: ?(?:\u00b1|\\+/) ?{NUMBER} ?{UNIT}?)?"
SIZE = f"{NUMBER} ?{UNIT}?{GIVE}"
SIZES = re.compile(
    f"(?:^| )({SIZE})(?: ?x ?({SIZE}))?(?: ?x ?({SIZE}))?(?: (deep|depth|wide|width|high|height|tall))?(?= |$)"
)
NEED_WORDS: Mapping[str, Need] = {
    "wide": "width",
    "width": "width",
    "high": "height",
    "height": "height",
    "tall": "height",
}
# A bare number is read in the first of these units that brings it within what a chassis ever measures.
BARE_UNITS = ("mm", "in", "cm")
# A depth of 2 to 9 means inches to whoever says it.
CHASSIS_MM: Mapping[Need, tuple[int, int]] = {"depth": (20, 229), "width": (40, 300), "height": (25, 200)}
WIDTH_FIRST: tuple[Need, ...] = ("width", "height", "depth")
MM = 1_000_000


@dataclass(frozen=True)
class Choice:
    """Something the words leave open: what to ask, and the answers with the words that would say them."""

    ask: str
    options: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class Reading:
    """What words were read as: a question, or the one thing to ask first.

    `took` says how bare numbers were read, with the other readings that would be possible.
    """

    read: Question | Choice
    took: tuple[str, ...] = ()

    @property
    def question(self) -> Question | None:
        """The question, unless something has to be asked first."""
        return self.read if isinstance(self.read, Question) else None


@dataclass(slots=True)
class _Found:
    """What has been recognised so far; `left` are the words not yet used, with gaps where words were taken out."""

    left: list[str | None]
    hits: list[Phrase] = field(default_factory=list)

    def take(self, phrases: Iterable[Phrase]) -> None:
        """Recognise phrases, longest first, each word once."""
        for phrase in phrases:
            size = len(phrase.words)
            for start in range(len(self.left) - size + 1):
                if tuple(self.left[start : start + size]) == phrase.words:
                    self.left[start : start + size] = [None] * size
                    self.hits.append(phrase)

    def first(self, points: str) -> Phrase | None:
        """The first thing of a sort that was recognised."""
        return next((hit for hit in self.hits if hit.points == points), None)


def read_words(book: KnowledgeBase, text: str) -> Reading:
    """Read words as a question. Sizes are read by the usual limits of a chassis, and the reading taken is told."""
    phrases = vocabulary(book)
    found = _Found(list(folded_words(text)))
    found.take(phrase for phrase in phrases if phrase.points in ("vehicle", "unit", "mount"))
    vehicle = _vehicle(phrases, found)
    if vehicle is None:
        return Reading(_which_vehicle(book))
    found.take(phrase for phrase in phrases if phrase.vehicle == vehicle)
    sizes, took = _sizes(found)
    place = _place(book, vehicle, phrases, found)
    if place is None:
        return Reading(_which_place(book, vehicle), took)
    unit = found.first("unit")
    if unit is None and not sizes:
        return Reading(_which_thing(book), took)
    question = Question(
        vehicle,
        place,
        splits={hit.axis: hit.id for hit in found.hits if hit.points == "split"},
        year=_year(found),
        mounts=tuple(hit.id for hit in found.hits if hit.points == "mount") or None,
        unit=unit.id if unit else None,
        sizes=sizes,
    )
    return Reading(question, took)


def _vehicle(phrases: tuple[Phrase, ...], found: _Found) -> str | None:
    """The vehicle that was named, or the only one that shares a word with what was typed."""
    named = found.first("vehicle")
    return named.id if named else _only_sharing(found, [phrase for phrase in phrases if phrase.points == "vehicle"])


def _place(book: KnowledgeBase, vehicle: str, phrases: tuple[Phrase, ...], found: _Found) -> str | None:
    """The place that was named, or the only opening there is, or the only one that shares a typed word."""
    named = found.first("place")
    if named is not None:
        return named.id
    openings = [id_ for id_, place in book.vehicles[vehicle].places.items() if place.kind in OPENINGS]
    of_openings = [one for one in phrases if (one.vehicle, one.points) == (vehicle, "place") and one.id in openings]
    return openings[0] if len(openings) == 1 else _only_sharing(found, of_openings)


def _only_sharing(found: _Found, phrases: list[Phrase]) -> str | None:
    """The id of the only thing named by a phrase that shares an unused word; numbers and "gen" do not count."""
    words = {word for word in found.left if word is not None and not word[0].isdigit() and word != "gen"}
    sharing = {phrase.id for phrase in phrases if words & set(phrase.words)}
    return sharing.pop() if len(sharing) == 1 else None


def _year(found: _Found) -> int | None:
    text = " ".join(word or "|" for word in found.left)
    said = re.search(r"\byear (\d{1,2})\b", text)
    return int(said[1]) if said else None


def _sizes(found: _Found) -> tuple[dict[Need, Quantity], tuple[str, ...]]:
    text = re.sub(r"\byear \d{1,2}\b", "|", " ".join(word or "|" for word in found.left))
    for said in SIZES.finditer(text):
        parts = [part.strip() for part in said.groups()[:3] if part]
        needs = WIDTH_FIRST[: len(parts)] if len(parts) > 1 else (_need(said[4]),)
        try:
            return _read(dict(zip(needs, parts, strict=True)))
        except Wrong:
            continue
    return {}, ()


def _need(word: str | None) -> Need:
    return NEED_WORDS.get(word or "", "depth")


def _read(parts: dict[Need, str]) -> tuple[dict[Need, Quantity], tuple[str, ...]]:
    """Sizes typed together share the last unit typed; without any unit they are read by the usual limits."""
    units = [unit for part in parts.values() for unit in re.findall(UNIT, part)]
    if units:
        sizes = {need: read_quantity(_with_unit(part, units[-1]), "length") for need, part in parts.items()}
        return sizes, ()
    usual = [unit for unit in BARE_UNITS if all(_is_usual(need, part, unit) for need, part in parts.items())]
    unit = usual[0] if usual else "mm"
    sizes = {need: read_quantity(_with_unit(part, unit), "length") for need, part in parts.items()}
    typed = " x ".join(parts.values())
    others = "".join(f"; {other} would be {typed} {other}" for other in usual[1:])
    return sizes, (f"{typed} read as {unit}{others}",)


def _with_unit(part: str, unit: str) -> str:
    plain = part.replace("+/", "±")
    return plain if re.search(UNIT, plain) else f"{plain} {unit}"


def _is_usual(need: Need, part: str, unit: str) -> bool:
    low, high = CHASSIS_MM[need]
    return low * MM <= read_quantity(_with_unit(part, unit), "length").base <= high * MM


def _which_vehicle(book: KnowledgeBase) -> Choice:
    options = tuple((vehicle.name, vehicle.id.replace("-", " ")) for vehicle in book.vehicles.values())
    return Choice("Which vehicle?", options)


def _which_place(book: KnowledgeBase, vehicle: str) -> Choice:
    places = book.vehicles[vehicle].places.items()
    options = tuple(
        (place.name or id_.replace("-", " "), id_.replace("-", " ")) for id_, place in places if place.kind in OPENINGS
    )
    return Choice("Which place?", options)


def _which_thing(book: KnowledgeBase) -> Choice:
    options = tuple((unit.name, unit.id.replace("-", " ")) for unit in book.head_units.values())
    return Choice("Which one, or how deep is it?", options)
