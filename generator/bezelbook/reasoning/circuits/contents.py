"""What each cavity of a car's plug carries in one build, merged from what was metered there."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.note.record import Metered, Seen
from bezelbook.reasoning.cavities import cavities_of
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.plugs import plug_named
from bezelbook.reasoning.circuits.said import circuit_said, says_nothing
from bezelbook.reasoning.circuits.wiring import State
from bezelbook.values.words import CIRCUITS, Circuit, PlugView


@dataclass(frozen=True, slots=True)
class Held:
    """What is known of one circuit in a plug: `cavities` may hold it, counted as the connector's record counts."""

    state: State
    cavities: frozenset[int]
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Read:
    note: str
    sure: bool
    cavities: frozenset[int]
    circuit: Circuit | None  # None where it carries nothing


NOT_LOOKED = Held("not looked", frozenset(), ())


def contents(car: Car, connector: str) -> dict[Circuit, Held]:
    """Every circuit that notes say is, or is not, in this plug of a car; a circuit that is not here was not looked at.

    Argued over: notes that count put it in different cavities, or put something else into its cavity.
    """
    return car.once(_contents, connector)


def _contents(car: Car, connector: str) -> dict[Circuit, Held]:
    record = car.book.connectors[connector]
    notes = [note for note in car.notes if isinstance(note, Metered) and plug_named(car, note) == connector]
    reads = [read for note in notes if car.may_be(note, "circuits") for read in _reads(car, record, note)]
    sure = [read for read in reads if read.sure]
    found = {
        circuit: _held(circuit, sure, reads) for circuit in dict.fromkeys(read.circuit for read in reads) if circuit
    }
    if record.cavities and any(_whole(record.cavities, sure, note.id) for note in notes):
        found = {circuit: Held("not there", frozenset(), ()) for circuit in CIRCUITS} | found
    return found | _accessory(car, connector, found.get("accessory"))


def _reads(car: Car, record: Connector, note: Metered) -> Iterator[_Read]:
    for one in note.cavities:
        circuit = circuit_said(one.carries)
        if circuit is None and not says_nothing(one.carries):
            continue
        sure = car.is_sure(note.model_copy(update={"sure": one.sure or note.sure}), "circuits")
        yield _Read(note.id, sure, cavities_meant(record, one.cavity, note.view), circuit)


def cavities_meant(record: Connector, number: int, view: PlugView | None) -> frozenset[int]:
    """The numbers, as the connector's record counts, that a number counted from some view may stand for.

    Counted from the other side it is the mirror image; with the view left blank it may be either.
    """
    numbering = record.numbering
    if numbering is None or view == numbering.view:
        return frozenset({number})
    face = cavities_of(record)
    if face is None or number not in face.spots:
        return frozenset() if view else frozenset({number})
    row, column = face.spots[number]
    mirror = next(other for other, spot in face.spots.items() if spot == (row, face.columns + 1 - column))
    return frozenset({mirror}) if view else frozenset({mirror, number})


def _held(circuit: Circuit, sure: list[_Read], reads: list[_Read]) -> Held:
    own = [read for read in sure if read.circuit == circuit]
    if not own:
        weak = [read for read in reads if read.circuit == circuit]
        agreed = frozenset.intersection(*(read.cavities for read in weak))
        every = frozenset().union(*(read.cavities for read in weak))
        return Held("said", agreed, _notes(weak)) if agreed or not every else Held("argued over", every, _notes(weak))
    common = frozenset.intersection(*(read.cavities for read in own))
    others = [read for read in sure if read.circuit != circuit and read.cavities == common and len(common) == 1]
    if (not common and any(read.cavities for read in own)) or others:
        every = frozenset().union(*(read.cavities for read in own))
        return Held("argued over", every, _notes([*own, *others]))
    return Held("known", common, _notes(own))


def _notes(reads: list[_Read]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(read.note for read in reads))


def _whole(cavities: int, sure: list[_Read], note: str) -> bool:
    """Whether one note that counts read every cavity."""
    read = {number for one in sure if one.note == note for number in one.cavities}
    return read == set(range(1, cavities + 1))


def _accessory(car: Car, connector: str, held: Held | None) -> dict[Circuit, Held]:
    """What notes about how accessory comes say of a wire for it in this plug: none where it comes over the bus."""
    notes = [note for note in car.everywhere if isinstance(note, Seen | Metered) and note.accessory_supply]
    bus = tuple(note.id for note in notes if note.accessory_supply == "data bus" and car.is_sure(note, "circuits"))
    here = [note for note in notes if note in car.notes and plug_named(car, note) == connector]
    wire = tuple(note.id for note in here if note.accessory_supply in ("wire", "both") and car.may_be(note, "circuits"))
    if held and held.state in ("known", "argued over"):
        return {"accessory": Held("argued over", held.cavities, (*held.notes, *bus))} if bus else {}
    if bus:
        state: State = "argued over" if wire else "not there"
        return {"accessory": Held(state, frozenset(), (*bus, *wire))}
    return {"accessory": Held("said", frozenset(), wire)} if wire and held is None else {}
