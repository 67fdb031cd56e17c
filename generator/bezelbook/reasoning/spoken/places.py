"""Which place for a speaker is meant, and on which side; the driver's side is asked about, never taken for one."""

from collections.abc import Collection, Iterable

from bezelbook.kinds.vehicle.record import Place, Vehicle
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES
from bezelbook.reasoning.spoken.found import Choice, Found, most_named, replaced, spoken, tells
from bezelbook.reasoning.spoken.shop_words import (
    NEEDLESS_WORDS,
    PLACE_WORDS,
    SHOP_WORDS,
    SIDES,
    SPEAKER_WORDS,
    TELLING_WORDS,
)
from bezelbook.reasoning.vocabulary import OPENINGS, folded_words


def takes_speaker(place: Place) -> bool:
    """Whether a place takes a speaker at all."""
    return place.kind in SPEAKER_PLACES | EITHER_PLACES


def own_words(id_: str, place: Place) -> frozenset[str]:
    """The words by which a place is told apart from the others of its vehicle, sides left out."""
    said = " ".join((spoken(id_), place.name or "", *place.also))
    names = frozenset(word for word in shop_words(" ".join(folded_words(said))) if tells(word)) - frozenset(SIDES)
    return names | (frozenset(shop_words(place.kind)) & frozenset(TELLING_WORDS))


def shop_words(text: str) -> tuple[str, ...]:
    """The words of folded text with every way of saying a thing made one."""
    return tuple(replaced(text, SHOP_WORDS).split())


def means_speaker(vehicle: Vehicle, found: Found) -> bool:
    """Whether the words are about a speaker and not about a box in an opening."""
    openings = {id_: place for id_, place in vehicle.places.items() if place.kind in OPENINGS}
    theirs = frozenset().union(*(own_words(id_, place) for id_, place in openings.items()))
    opening = bool(found.named("place", openings))
    units, speakers = found.named("unit"), found.named("speaker")
    words = shop_words(found.text(with_places=True))
    elsewhere = [id_ for id_, place in vehicle.places.items() if place.kind in SPEAKER_PLACES]
    at_speaker = bool(found.named("place", elsewhere)) or bool(set(words) & set(PLACE_WORDS) - theirs)
    if units:
        return bool(speakers) and at_speaker and not opening
    return bool(speakers) or bool(set(words) & set(SPEAKER_WORDS)) or (at_speaker and not opening)


def speaker_place(vehicle: Vehicle, found: Found) -> str | Choice:
    """The place that was named, or the only one that has every telling word and the side; else what to ask."""
    places = {id_: place for id_, place in vehicle.places.items() if takes_speaker(place)}
    words = shop_words(found.text(with_places=True))
    named = found.named("place", places)
    likely = named or _likely(places, words)
    if not likely:
        return _asked(vehicle, places, _nowhere(vehicle, found, words))
    sides = set(most_named(word for word in words if word in SIDES))
    if len(sides) == 1:
        likely = [id_ for id_ in likely if places[id_].side in sides] or likely
    if len(likely) == 1:
        return likely[0]
    return _asked(vehicle, likely, _which(places, likely, words))


def _likely(places: dict[str, Place], words: Collection[str]) -> list[str]:
    """The places that have every telling word; a word that no place has is none where it is needless."""
    own = {id_: own_words(id_, place) for id_, place in places.items()}
    known = frozenset().union(*own.values())
    said = frozenset(words) & (known | frozenset(TELLING_WORDS))
    telling = {word for word in said if word in known or word not in NEEDLESS_WORDS}
    return [id_ for id_, have in own.items() if telling <= have]


def _nowhere(vehicle: Vehicle, found: Found, words: Collection[str]) -> str:
    openings = found.named("place")
    if openings and not set(words) & set(PLACE_WORDS):
        where = vehicle.places[openings[0]]
        return f"{where.name or spoken(openings[0])} takes no speaker. Which place?"
    return f"The book has no such place for a speaker in the {vehicle.name}. Which place?"


def _which(places: dict[str, Place], likely: Iterable[str], words: Collection[str]) -> str:
    """What to ask when several places are possible: only the side where nothing else tells them apart."""
    alike = {own_words(id_, places[id_]) for id_ in likely}
    if len(alike) > 1 or len({places[id_].side for id_ in likely}) == 1:
        return "Which place?"
    if "seatside" in words:
        return "Left or right, sitting in it and facing forward? The driver may sit on either. Which side?"
    return "Which side?"


def _asked(vehicle: Vehicle, ids: Iterable[str], ask: str) -> Choice:
    here = tuple(ids)
    options = tuple((vehicle.places[id_].name or spoken(id_), spoken(id_)) for id_ in here)
    return Choice(ask, options, at=tuple((vehicle.id, id_) for id_ in here) if ask.endswith("side?") else ())
