"""Which notes name a part or a place: the other end of what a note points at."""

from collections.abc import Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import AnyNote, Bench, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.notes import Said, newest_first, said


@dataclass(frozen=True, slots=True)
class Mention:
    """A note as the page of a part quotes it: from which place of which vehicle, and where it is quoted in full."""

    where: str
    said: Said
    at: str


@dataclass(frozen=True, slots=True)
class Mentions:
    """Notes by the head unit tried in them and by each mount used in them; places by the vehicle they are noted at."""

    tried: Mapping[str, tuple[AnyNote, ...]]
    used: Mapping[str, tuple[AnyNote, ...]]
    places: Mapping[str, frozenset[str]]


def mentions(book: KnowledgeBase) -> Mentions:
    """Everything that notes of the book name."""
    tried: dict[str, list[AnyNote]] = {}
    used: dict[str, list[AnyNote]] = {}
    places: dict[str, set[str]] = {}
    for note in book.notes.values():
        if isinstance(note, Bench):
            continue
        places.setdefault(note.vehicle, set()).add(note.place)
        unit = book.head_unit_named(note.what) if isinstance(note, Tried) else None
        if unit:
            tried.setdefault(unit.id, []).append(note)
        for mount in _mounts(book, note.mounts):
            used.setdefault(mount, []).append(note)
    return Mentions(
        {unit: tuple(notes) for unit, notes in tried.items()},
        {mount: tuple(notes) for mount, notes in used.items()},
        {vehicle: frozenset(noted) for vehicle, noted in places.items()},
    )


def quoted(book: KnowledgeBase, notes: tuple[AnyNote, ...], to: Links) -> tuple[Mention, ...]:
    """Notes as a part's page quotes them, newest first."""
    ordered = newest_first(said(book, note) for note in notes)
    return tuple(Mention(where(book, one.note), one, to.note(one.note)) for one in ordered)


def where(book: KnowledgeBase, note: AnyNote) -> str:
    """Where a note was made: the vehicle and the place by the shop's names, or on the bench."""
    return "on the bench" if isinstance(note, Bench) else place_words(book, note.vehicle, note.place)


def place_words(book: KnowledgeBase, vehicle: str, place: str) -> str:
    """A place of a vehicle by the shop's names, or the vehicle alone; an id not in the book stands for itself."""
    record = book.vehicles.get(vehicle)
    whole = record.name if record else vehicle.replace("-", " ")
    if not place:
        return whole
    known = record.places.get(place) if record else None
    place_name = (known.name if known else None) or place.replace("-", " ")
    return f"{whole}, {place_name}"


def _mounts(book: KnowledgeBase, mounts: tuple[str, ...] | str | None) -> tuple[str, ...]:
    if mounts is None or isinstance(mounts, str):
        return ()
    named = (book.mount_named(words) for words in mounts)
    return tuple(dict.fromkeys(mount.id for mount in named if mount))
