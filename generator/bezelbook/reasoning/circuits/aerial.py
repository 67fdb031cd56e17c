"""Which leads join a car's aerial plug to a radio, and whether something in the aerial wants feeding."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.adapter.record import Adapter, End
from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.pieces import Presence
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.unknowns import Missing

KINDS = frozenset({"aerial", "extension", "splitter"})


@dataclass(frozen=True, slots=True)
class AerialSeen:
    """One aerial lead of a car: the plug on it by record and by words, whether it wants feeding, and who saw it."""

    connector: str
    words: str
    amplified: Presence
    notes: tuple[str, ...]
    sure: bool


@dataclass(frozen=True, slots=True)
class AerialLead:
    """The lead from one aerial plug to a radio, if the book has one; `ends_in` is the plug that goes into the radio.

    `straight` is a plug in which leads of the book end: it goes into a radio as it is.
    """

    aerial: AerialSeen
    adapters: tuple[Adapter, ...]
    ends_in: str
    straight: bool
    unknown: tuple[Missing, ...]


def aerials(car: Car) -> tuple[AerialSeen, ...]:
    """The aerial leads that somebody saw, at whatever place of the vehicle the note was made."""
    return tuple(dict.fromkeys(_aerials(car)))


def _aerials(car: Car) -> Iterator[AerialSeen]:
    for note in car.everywhere:
        if isinstance(note, Seen) and car.may_be(note, "plug"):
            for one in note.aerials:
                found = car.book.named("connector", one.plug or "")
                words = car.book.connectors[found.id].name if found else one.plug or ""
                sure = car.is_sure(note, "plug")
                yield AerialSeen(found.id if found else "", words, one.amplified or "not looked", (note.id,), sure)


def aerial_leads(car: Car) -> tuple[AerialLead, ...]:
    """For each aerial that was seen, the lead that takes it to a plug of another sort."""
    return tuple(_lead(car, seen) for seen in aerials(car))


def _lead(car: Car, seen: AerialSeen) -> AerialLead:
    way, end = _first(car.book, seen.connector)
    straight = not way and _goes_straight_in(car.book, seen.connector)
    return AerialLead(seen, way, end, straight, tuple(_unknown(seen, way)))


def _goes_straight_in(book: KnowledgeBase, plug: str) -> bool:
    """Whether some lead of the book makes another plug into this one, which it would only do for a radio."""
    ends = (end for adapter in book.adapters.values() for end in _onward_of(adapter))
    return plug in ends


def _onward_of(adapter: Adapter) -> Iterator[str]:
    taken = {end.connector for end in adapter.ends.values() if end.side == "unit side"}
    return (end for plug in taken if plug for end in _onward(adapter, plug) if end != plug)


def _first(book: KnowledgeBase, plug: str) -> tuple[tuple[Adapter, ...], str]:
    """The first lead by name that takes this plug to one of another sort; two in a row lose too much of the signal."""
    found = ((adapter, end) for adapter in book.adapters.values() for end in _onward(adapter, plug) if end != plug)
    adapter, end = next(found, (None, ""))
    return ((adapter,) if adapter else ()), end


def _onward(adapter: Adapter, connector: str) -> Iterator[str]:
    """Where a lead ends whose one end takes this plug of the car; a plug for the radio is shaped like the car's."""
    if adapter.adapter_kind not in KINDS or not any(_takes(end, connector) for end in adapter.ends.values()):
        return
    for end in adapter.ends.values():
        if end.connector and end.side == "vehicle side":
            yield end.connector


def _takes(end: End, connector: str) -> bool:
    return end.connector == connector and end.side == "unit side"


def _unknown(seen: AerialSeen, way: tuple[Adapter, ...]) -> Iterator[Missing]:
    if not seen.sure:
        yield Missing("the aerial plug was seen on a car that may have been another build", "look, 1 min", "the lead")
    if seen.amplified == "not looked":
        yield Missing(
            "whether the aerial has an amplifier that wants feeding",
            "meter its feed on the factory radio, 3 min",
            "whether reception is weak without a feed",
        )
    fed = any("aerial feed" in adapter.circuits for adapter in way)
    if seen.amplified == "there" and way and not fed:
        yield Missing("how the amplifier in the aerial is fed", "meter the lead on the bench, 3 min", "reception")
