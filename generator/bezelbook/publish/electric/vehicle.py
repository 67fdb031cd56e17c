"""What a vehicle's page says of its supply, of the loads on its channels, and of load resistors, package by package."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.electric.heat import HeatPart, heat_part
from bezelbook.publish.wording import build_words, counted
from bezelbook.reasoning.electric.factory_channels import FactoryChannel, factory_channels
from bezelbook.reasoning.electric.least_load import ohms
from bezelbook.reasoning.electric.level import Level, loudest
from bezelbook.reasoning.electric.resistor_place import FIXED, WHERE
from bezelbook.reasoning.electric.resistor_rule import Proof, ResistorRule, resistor_rules
from bezelbook.reasoning.electric.stand_in import stand_ins
from bezelbook.reasoning.electric.supply_caution import supply_caution
from bezelbook.reasoning.unknowns import Missing

NamedAt = tuple[str, str]


@dataclass(frozen=True, slots=True)
class ChannelRow:
    """One factory channel in words, with the notes that tell of it.

    `drives` has the amplifiers of the book by whether they may stand in for it; none while its load is not known.
    """

    places: str
    build: str
    driven_by: str
    speakers: str
    sees: str
    drives: tuple[tuple[str, tuple[NamedAt, ...]], ...]
    differ: tuple[str, ...]
    notes: tuple[NamedAt, ...]
    unknown: tuple[Missing, ...]


@dataclass(frozen=True, slots=True)
class Quoted:
    """What one note tells of a resistor, and where it is quoted in full."""

    words: str
    note: str
    at: str


@dataclass(frozen=True, slots=True)
class ResistorRow:
    """What is proven for one package; `heat` is of the first proven value."""

    package: str
    says: str
    proven: tuple[Quoted, ...]
    against: tuple[Quoted, ...]
    beside: tuple[Quoted, ...]
    heat: HeatPart | None
    unknown: tuple[Missing, ...]


@dataclass(frozen=True, slots=True)
class LoadsPart:
    """All of it; `caution` is empty for a plain 12 V supply, and `resistors` where no note tells of any."""

    caution: str
    channels: tuple[ChannelRow, ...]
    resistors: tuple[ResistorRow, ...]
    where: tuple[str, ...]


def loads_part(book: KnowledgeBase, vehicle: Vehicle, to: Links) -> LoadsPart:
    """What notes tell of a vehicle's channels and of resistors on them."""
    rules = resistor_rules(book, vehicle)
    told = any(rule.says != "unknown" or rule.beside for rule in rules)
    return LoadsPart(
        supply_caution(vehicle),
        tuple(_channel(book, vehicle, one, to) for one in factory_channels(book, vehicle)),
        tuple(_resistor(rule, loudest(book, vehicle, rule.package), to) for rule in rules) if told else (),
        (WHERE, FIXED),
    )


def _channel(book: KnowledgeBase, vehicle: Vehicle, one: FactoryChannel, to: Links) -> ChannelRow:
    return ChannelRow(
        " and ".join(_place(vehicle, place) for place in one.places),
        build_words(one.build),
        one.driven_by,
        "; ".join(ohms(each.load) if each.load else "not looked" for each in one.hanging),
        _sees(one),
        tuple(_drives(book, one, to)) if one.sees.least else (),
        one.differ,
        tuple((note, to.note(book.notes[note])) for note in one.notes),
        one.unknown,
    )


def _sees(one: FactoryChannel) -> str:
    low, least = one.sees.low_notes, one.sees.least
    if least is None:
        about = f"; a meter's reading points at {ohms(one.about)}, worked out" if one.about else ""
        return f"not known{about}"
    if low is not None and low != least:
        return f"{ohms(low)} in the low notes, {ohms(least)} where all play"
    return ohms(least)


def _drives(book: KnowledgeBase, one: FactoryChannel, to: Links) -> Iterator[tuple[str, tuple[NamedAt, ...]]]:
    for says, ids in sorted(stand_ins(book, one.sees).items(), key=lambda row: row[0] != "fine"):
        yield says, tuple((book.amplifiers[id_].name, to.record("amplifier", id_)) for id_ in ids)


def _place(vehicle: Vehicle, place: str) -> str:
    record = vehicle.places.get(place)
    return (record.name if record else None) or place.replace("-", " ")


def _resistor(rule: ResistorRule, level: Level | None, to: Links) -> ResistorRow:
    first = rule.proven[0].resistor if rule.proven else None
    return ResistorRow(
        build_words(rule.package) or "every car",
        _says(rule),
        tuple(_quoted(one, to) for one in rule.proven),
        tuple(_quoted(one, to) for one in rule.against),
        tuple(_quoted(one, to) for one in rule.beside),
        heat_part(first.value, first.rated, level.reads if level else None) if first else None,
        rule.missing,
    )


def _says(rule: ResistorRule) -> str:
    if rule.says == "unknown":
        return "unknown"
    until = f"; until settled: {rule.until_settled}" if rule.until_settled else ""
    return f"{rule.says}{until}, by {counted(rule.witnesses, 'job')}"


def _quoted(proof: Proof, to: Links) -> Quoted:
    resistor = proof.resistor
    said = [resistor.value.typed]
    said += [f"rated {resistor.rated.typed}"] if resistor.rated else []
    said += [f"across {', '.join(resistor.across)}"] if resistor.across else []
    said += [f"with: {resistor.with_it or 'not looked'}", f"without: {resistor.without_it or 'not looked'}"]
    said += [f"fixed to {resistor.fixed_to}"] if resistor.fixed_to else []
    return Quoted(f"{', '.join(said)} – {proof.shows}", proof.note.id, to.note(proof.note))
