"""The whole book as one immutable set of records, indexed by kind and id, by place and by who points to whom."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from types import MappingProxyType
from typing import TypeVar, cast

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.amplifier.record import Amplifier
from bezelbook.kinds.asked.record import Asked
from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.decision.record import Decision
from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.job.record import Job
from bezelbook.kinds.module.record import Module
from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.note.record import AnyNote, Bench
from bezelbook.kinds.record import Named, Record, kind_of
from bezelbook.kinds.references import Path, Reference, references
from bezelbook.kinds.shop.record import Shop
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.kinds.stock.record import Stock
from bezelbook.kinds.supply.record import AnySupply
from bezelbook.kinds.vehicle.record import Vehicle

R = TypeVar("R", bound=Record)
K = TypeVar("K")
V = TypeVar("V")

BLANK_SHOP = Shop(id="shop", name="Unnamed shop", format=1)


def folded(words: str) -> str:
    """Words as the book compares them: lower case, hyphens and runs of blanks as one blank."""
    return " ".join(words.casefold().replace("-", " ").split())


@dataclass(frozen=True, slots=True)
class Pointer:
    """A record that names another, and the way to where it does from the top of its file."""

    kind: str
    id: str
    path: Path


@dataclass(frozen=True, slots=True)
class Struck:
    """A note that lost: it binds nothing any more, and is shown struck through with the reason."""

    note: AnyNote
    because: str
    decision: str


@dataclass(frozen=True)
class KnowledgeBase:
    """Every record that could be read, by the name of its kind and its id.

    Ids are unique within a kind; records come in order of id. Notes that a decision struck are none of the records:
    they are in `struck`, by id, so that nothing reasons with them by mistake. `typed` has the notes that decisions read
    otherwise, as they were typed.
    """

    records: Mapping[str, Mapping[str, Record]] = field(default_factory=dict)
    struck: Mapping[str, Struck] = field(default_factory=dict)
    typed: Mapping[str, AnyNote] = field(default_factory=dict)

    def _of(self, model: type[R]) -> Mapping[str, R]:
        return cast("Mapping[str, R]", self.records.get(kind_of(model), {}))

    @cached_property
    def shop(self) -> Shop:
        """The shop whose book it is."""
        return next(reversed([*self._of(Shop).values()]), BLANK_SHOP)

    @cached_property
    def vehicles(self) -> Mapping[str, Vehicle]:
        """Every vehicle platform."""
        return self._of(Vehicle)

    @cached_property
    def head_units(self) -> Mapping[str, HeadUnit]:
        """Every head unit."""
        return self._of(HeadUnit)

    @cached_property
    def mounts(self) -> Mapping[str, Mount]:
        """Every kit, bracket, spacer and cup."""
        return self._of(Mount)

    @cached_property
    def connectors(self) -> Mapping[str, Connector]:
        """Every connector."""
        return self._of(Connector)

    @cached_property
    def speakers(self) -> Mapping[str, Speaker]:
        """Every speaker."""
        return self._of(Speaker)

    @cached_property
    def amplifiers(self) -> Mapping[str, Amplifier]:
        """Every amplifier."""
        return self._of(Amplifier)

    @cached_property
    def modules(self) -> Mapping[str, Module]:
        """Every interface module."""
        return self._of(Module)

    @cached_property
    def adapters(self) -> Mapping[str, Adapter]:
        """Every wiring adapter."""
        return self._of(Adapter)

    @cached_property
    def supplies(self) -> Mapping[str, AnySupply]:
        """Everything that gets used up, and every tool."""
        return cast("Mapping[str, AnySupply]", self.records.get("supply", {}))

    @cached_property
    def shelf(self) -> Mapping[str, Stock]:
        """What was counted on the shelf."""
        return self._of(Stock)

    @cached_property
    def notes(self) -> Mapping[str, AnyNote]:
        """Every note, of whatever form."""
        return cast("Mapping[str, AnyNote]", self.records.get("note", {}))

    def written(self, note: str) -> AnyNote:
        """The note of this id, whether it stands or was struck; raises KeyError when there is none."""
        return self.struck[note].note if note in self.struck else self.notes[note]

    def struck_at(self, vehicle: str, place: str) -> tuple[Struck, ...]:
        """The notes of one place of one vehicle that lost, in order of id."""
        lost = ((one, one.note) for _, one in sorted(self.struck.items()))
        return tuple(one for one, n in lost if not isinstance(n, Bench) and (n.vehicle, n.place) == (vehicle, place))

    @cached_property
    def decisions(self) -> Mapping[str, Decision]:
        """What the team settled."""
        return self._of(Decision)

    @cached_property
    def questions(self) -> Mapping[str, Asked]:
        """What was asked and not answered."""
        return self._of(Asked)

    @cached_property
    def jobs(self) -> Mapping[str, Job]:
        """Jobs to come."""
        return self._of(Job)

    @cached_property
    def newest_day(self) -> str | None:
        """The date of the newest note, which is the book's own date; None when no note has one."""
        return max((note.date for note in self.notes.values() if note.date), default=None)

    @cached_property
    def _by_place(self) -> Mapping[tuple[str, str], tuple[AnyNote, ...]]:
        return _grouped(((n.vehicle, n.place), n) for n in self.notes.values() if not isinstance(n, Bench))

    def notes_at(self, vehicle: str, place: str) -> tuple[AnyNote, ...]:
        """The notes made at one place of one vehicle, in order of id."""
        return self._by_place.get((vehicle, place), ())

    def notes_of(self, vehicle: str) -> tuple[AnyNote, ...]:
        """The notes made on one vehicle, wherever on it, in order of id."""
        return self._by_vehicle.get(vehicle, ())

    @cached_property
    def _by_vehicle(self) -> Mapping[str, tuple[AnyNote, ...]]:
        return _grouped((n.vehicle, n) for n in self.notes.values() if not isinstance(n, Bench))

    def bench_notes(self, part: str) -> tuple[Bench, ...]:
        """The bench notes about one part, in order of id."""
        return self._by_part.get(part, ())

    @cached_property
    def _by_part(self) -> Mapping[str, tuple[Bench, ...]]:
        return _grouped((n.part, n) for n in self.notes.values() if isinstance(n, Bench))

    def head_unit_named(self, words: str) -> HeadUnit | None:
        """The head unit that these words name, by id, name or other name; None when none or several do."""
        return self.head_units.get(self._id_named("head_unit", words))

    def mount_named(self, words: str) -> Mount | None:
        """The mount that these words name, by id, name or other name; None when none or several do."""
        return self.mounts.get(self._id_named("mount", words))

    def named(self, kind: str, words: str) -> Record | None:
        """The record of this kind that these words name, by id, name or other name; None when none or several do."""
        return self.records.get(kind, {}).get(self._id_named(kind, words))

    def _id_named(self, kind: str, words: str) -> str:
        return self._names.get(kind, {}).get(folded(words), "")

    @cached_property
    def _names(self) -> Mapping[str, Mapping[str, str]]:
        return {kind: names_of(records) for kind, records in self.records.items()}

    def pointers_to(self, kind: str, name: str) -> tuple[Pointer, ...]:
        """Every record that names the one of this kind and id, in order of kind, id and field."""
        return self._pointers.get((kind, name), ())

    @cached_property
    def _pointers(self) -> Mapping[tuple[str, str], tuple[Pointer, ...]]:
        found: dict[tuple[str, str], list[Pointer]] = {}
        for kind, records in sorted(self.records.items()):
            for record in records.values():
                for reference in references(record):
                    for target in self._targets(reference):
                        found.setdefault(target, []).append(Pointer(kind, record.id, reference.path))
        return {target: tuple(pointers) for target, pointers in found.items()}

    def _targets(self, reference: Reference) -> Iterator[tuple[str, str]]:
        """What a reference names: one record of each of its kinds at most."""
        for kind in reference.kinds:
            name = self._id_named(kind, reference.words) if reference.in_words else reference.words
            if name in self.records.get(kind, {}):
                yield kind, name


def _grouped(entries: Iterable[tuple[K, V]]) -> Mapping[K, tuple[V, ...]]:
    found: dict[K, list[V]] = {}
    for key, value in entries:
        found.setdefault(key, []).append(value)
    return {key: tuple(values) for key, values in found.items()}


def names_of(records: Mapping[str, Record]) -> Mapping[str, str]:
    """Folded name to id, for every name that belongs to one record only; an id always names its own record."""
    claims: dict[str, set[str]] = {}
    for record in records.values():
        for name in (record.name, *record.also) if isinstance(record, Named) else ():
            claims.setdefault(folded(name), set()).add(record.id)
    single = {name: next(iter(owners)) for name, owners in claims.items() if len(owners) == 1}
    return MappingProxyType(single | {folded(id_): id_ for id_ in records})


def knowledge_base(records: Iterable[Record]) -> KnowledgeBase:
    """The records of a book, indexed; of two with the same kind and id the later one counts."""
    found: dict[str, dict[str, Record]] = {}
    for record in sorted(records, key=lambda record: record.id):
        found.setdefault(kind_of(type(record)), {})[record.id] = record
    return KnowledgeBase(found)
