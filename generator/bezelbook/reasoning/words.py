"""Free words at the counter, read as a question; what is missing is asked for, never guessed."""

import re
from collections.abc import Collection
from dataclasses import dataclass, replace

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.said_box import as_sold
from bezelbook.reasoning.said_sizes import BARE_UNITS, CHASSIS_MM, NEED_WORDS, SIZES, UNIT, sizes_said
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.spoken.fitting import mounts_named
from bezelbook.reasoning.spoken.found import Choice, Found, spoken, tells
from bezelbook.reasoning.spoken.places import means_speaker
from bezelbook.reasoning.spoken.question import speaker_words
from bezelbook.reasoning.spoken.shop_words import SIDES
from bezelbook.reasoning.vocabulary import OPENINGS, Phrase, folded_words, vocabulary
from bezelbook.reasoning.wiring_asked.question import WiringQuestion
from bezelbook.reasoning.wiring_asked.words import asks_for_wiring, wiring_question

__all__ = ["BARE_UNITS", "CHASSIS_MM", "NEED_WORDS", "SIZES", "UNIT", "Choice", "Reading", "read_words"]

HOW_DEEP = "How deep is it?"
# A new shop's book; how to write a vehicle down is told on the page of that name.
NO_VEHICLE = (
    "The book holds no vehicle yet: write the first one as a file in its folder vehicles, "
    "as the page How to write it down shows."
)
# What behind a small number shows that it is a size, so that it is no generation.
SIZE_GOES_ON = re.compile(
    rf"{UNIT}|x|\u00b1|\d+/\d+|[\u00bc-\u00be\u215b-\u215e]|din|doors?|coax|speakers?|sub|ring|{'|'.join(NEED_WORDS)}"
)


@dataclass(frozen=True)
class Reading:
    """What words were read as: a question, or the one thing to ask first.

    `took` says how bare numbers were read, with the other readings that would be possible, and what was left out.
    """

    read: Question | SpeakerQuestion | WiringQuestion | Choice
    took: tuple[str, ...] = ()

    @property
    def question(self) -> Question | None:
        """The question about an opening, unless something has to be asked first."""
        return self.read if isinstance(self.read, Question) else None


def read_words(book: KnowledgeBase, text: str, phrases: tuple[Phrase, ...] | None = None) -> Reading:
    """Read words as a question. Sizes are read by the usual limits of a chassis, and the reading taken is told.

    `phrases` is the book's vocabulary, where many questions are read one after the other.
    """
    phrases = vocabulary(book) if phrases is None else phrases
    words = folded_words(text)
    found = Found(words, list(words))
    found.take(phrase for phrase in phrases if phrase.points in ("vehicle", "unit", "mount", "speaker"))
    vehicles = _vehicles(book, phrases, found)
    if len(vehicles) != 1:
        return Reading(_which_vehicle(vehicles or list(book.vehicles.values())))
    vehicle = vehicles[0]
    found.take(phrase for phrase in phrases if phrase.vehicle == vehicle.id)
    units = found.named("unit")
    if asks_for_wiring(words, found.left) and not sizes_said(found.left, beside_unit=bool(units)).sizes:
        wiring = wiring_question(book, vehicle, words, found.named("place"), units)
        year, untold = _year(vehicle, found)
        return Reading(replace(wiring, splits=_splits(vehicle, found), year=year), untold)
    if means_speaker(vehicle, found):
        found.give_back(SIDES)
        year, untold = _year(vehicle, found)
        read, took = speaker_words(book, vehicle, found, _splits(vehicle, found), year)
        return Reading(read, took + untold)
    return _of_opening(book, vehicle, phrases, found)


def _of_opening(book: KnowledgeBase, vehicle: Vehicle, phrases: tuple[Phrase, ...], found: Found) -> Reading:
    place = _place(vehicle, phrases, found)
    units = found.named("unit")
    said = sizes_said(found.left, beside_unit=bool(units))
    said = said if units else as_sold(said, found.left)
    if isinstance(place, Choice):
        return Reading(place, said.took)
    mounts = _mounts(book, found)
    if isinstance(mounts, Choice):
        return Reading(mounts, said.took)
    year, untold = _year(vehicle, found)
    unit = units[0] if len(units) == 1 else None
    question = Question(vehicle.id, place, _splits(vehicle, found), year, mounts, unit=unit, sizes=said.sizes)
    if len(units) > 1 or said.rivals or not (units or "depth" in said.sizes):
        near = found.nearest(one for one in phrases if one.points == "unit") if said.sizes else []
        choice = _which_thing(book, units or near, said.rivals, sized=bool(said.sizes) and not units)
        return Reading(replace(choice, opening=question) if choice.ask == HOW_DEEP else choice, said.took)
    return Reading(question, said.took + untold)


def _vehicles(book: KnowledgeBase, phrases: tuple[Phrase, ...], found: Found) -> list[Vehicle]:
    """The vehicles that were named, or else share a word, unless another generation was said."""
    of_vehicles = [phrase for phrase in phrases if phrase.points == "vehicle"]
    named = found.named("vehicle")
    candidates = [book.vehicles[id_] for id_ in named or found.sharing(of_vehicles)]
    names = {word for phrase in of_vehicles for word in phrase.words if tells(word)}
    said = _generations(found, names, {vehicle.generation for vehicle in candidates})
    if said and not _numbered(found):
        candidates = [vehicle for vehicle in candidates if vehicle.generation in said]
    return candidates


def _numbered(found: Found) -> bool:
    """Whether a vehicle was named by words that hold a number, which is its generation."""
    named = [one for _, meant in found.hits for one in meant if one.points == "vehicle"]
    return any(word.isdigit() for one in named for word in one.words)


def _generations(found: Found, names: Collection[str], likely: Collection[int]) -> set[int]:
    """The generations said, as in "gen 2" and "hatch 2"; they are taken out of the words, for they are no sizes."""
    said = set()
    words = ("", *found.words, "")
    for at, (before, word, after) in enumerate(zip(words, words[1:], words[2:], strict=False)):
        if found.left[at] is None or not re.fullmatch(r"\d{1,2}", word):
            continue
        number = int(word)
        sized = SIZE_GOES_ON.fullmatch(after) and not (after == "in" and number in likely)
        if before == "gen" or (before in names and not sized and (number < 10 or number in likely)):
            found.left[at] = None
            said.add(number)
    return said


def _place(vehicle: Vehicle, phrases: tuple[Phrase, ...], found: Found) -> str | Choice:
    """The opening that was named, or the only one there is, or the only one that shares a typed word; else the choice.

    Anywhere else that was named is no opening for a box, and says so.
    """
    openings = {id_: place for id_, place in vehicle.places.items() if place.kind in OPENINGS}
    named = found.named("place", openings)
    elsewhere = found.named("place")
    if not named and not elsewhere:
        of_openings = [one for one in phrases if one.points == "place" and one.vehicle == vehicle.id]
        shared = [id_ for id_ in found.sharing(of_openings) if id_ in openings]
        named = list(openings) if len(openings) == 1 else shared
    if len(named) == 1:
        return named[0]
    ask = "Which place?"
    if elsewhere and not named:
        where = vehicle.places[elsewhere[0]]
        ask = f"{where.name or spoken(elsewhere[0])} is no opening that takes a box. Which place?"
    return Choice(ask, tuple((place.name or spoken(id_), spoken(id_)) for id_, place in openings.items()))


def _mounts(book: KnowledgeBase, found: Found) -> tuple[str, ...] | Choice | None:
    """The mounts that were named, in the order of the words; a name that two of them share has to be made plain."""
    said = tuple(mounts_named(found))
    for shared in (ids for ids in said if len(ids) > 1):
        return Choice("Which mount?", tuple((book.mounts[id_].name, spoken(id_)) for id_ in shared))
    return tuple(dict.fromkeys(ids[0] for ids in said)) or None


def _splits(vehicle: Vehicle, found: Found) -> dict[str, str]:
    """What was said of the build; an axis of which two values were said is not known."""
    said = {axis: found.named("split", axis=axis) for axis in vehicle.splits}
    return {axis: values[0] for axis, values in said.items() if len(values) == 1}


def _year(vehicle: Vehicle, found: Found) -> tuple[int | None, tuple[str, ...]]:
    """The model year that was said, or that there was no such year."""
    said = re.search(r"\byear (\d{1,2})\b", " ".join(word or "|" for word in found.left))
    if said is None or 1 <= int(said[1]) <= vehicle.model_years:
        return (int(said[1]) if said else None), ()
    return None, (f"year {said[1]} was left out: the {vehicle.name} ran {vehicle.model_years} model years",)


def _which_vehicle(vehicles: Collection[Vehicle]) -> Choice:
    """Ask which; of a book that holds none yet, say how it comes to hold one."""
    ask = "Which vehicle?" if vehicles else f"{NO_VEHICLE} Which vehicle will be the first?"
    return Choice(ask, tuple((vehicle.name, spoken(vehicle.id)) for vehicle in vehicles))


def _which_thing(book: KnowledgeBase, units: list[str], rivals: tuple[str, ...], *, sized: bool) -> Choice:
    if rivals:
        return Choice("Which of these is its depth?", tuple((size, f"{size} deep") for size in rivals))
    named = {id_: book.head_units[id_] for id_ in units}
    options = tuple((unit.name, spoken(id_)) for id_, unit in (named if named or sized else book.head_units).items())
    return Choice(HOW_DEEP if sized else "Which one?" if units else "Which one, or how deep is it?", options)
