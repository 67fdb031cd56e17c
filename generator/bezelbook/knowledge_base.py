"""The whole book as one immutable set of records, indexed by id, by kind, by place and by who points to whom."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from types import MappingProxyType

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.note.record import After, AnyNote, Bench, Measured, Metered, Seen, Tried
from bezelbook.kinds.record import Named, Record
from bezelbook.kinds.shop.record import Shop
from bezelbook.kinds.vehicle.record import Vehicle

BLANK_SHOP = Shop(id="shop", name="Unnamed shop", format=1)


def folded(words: str) -> str:
    """Words as the book compares them: lower case, hyphens and runs of blanks as one blank."""
    return " ".join(words.casefold().replace("-", " ").split())


@dataclass(frozen=True)
class KnowledgeBase:
    """Every record that could be read. Ids are unique within a kind; records come in order of id."""

    shop: Shop = BLANK_SHOP
    vehicles: Mapping[str, Vehicle] = field(default_factory=dict)
    head_units: Mapping[str, HeadUnit] = field(default_factory=dict)
    mounts: Mapping[str, Mount] = field(default_factory=dict)
    notes: Mapping[str, AnyNote] = field(default_factory=dict)

    @cached_property
    def newest_day(self) -> str | None:
        """The date of the newest note, which is the book's own date; None when no note has one."""
        return max((note.date for note in self.notes.values() if note.date), default=None)

    @cached_property
    def _by_place(self) -> Mapping[tuple[str, str], tuple[AnyNote, ...]]:
        found: dict[tuple[str, str], list[AnyNote]] = {}
        for note in self.notes.values():
            if not isinstance(note, Bench):
                found.setdefault((note.vehicle, note.place), []).append(note)
        return {place: tuple(notes) for place, notes in found.items()}

    def notes_at(self, vehicle: str, place: str) -> tuple[AnyNote, ...]:
        """The notes made at one place of one vehicle, in order of id."""
        return self._by_place.get((vehicle, place), ())

    def bench_notes(self, part: str) -> tuple[Bench, ...]:
        """The bench notes about one part, in order of id."""
        return self._by_part.get(part, ())

    @cached_property
    def _by_part(self) -> Mapping[str, tuple[Bench, ...]]:
        found: dict[str, list[Bench]] = {}
        for note in self.notes.values():
            if isinstance(note, Bench):
                found.setdefault(note.part, []).append(note)
        return {part: tuple(notes) for part, notes in found.items()}

    @cached_property
    def _unit_names(self) -> Mapping[str, str]:
        return names_of(self.head_units)

    @cached_property
    def _mount_names(self) -> Mapping[str, str]:
        return names_of(self.mounts)

    def head_unit_named(self, words: str) -> HeadUnit | None:
        """The head unit that these words name, by id, name or other name; None when none or several do."""
        return self.head_units.get(self._unit_names.get(folded(words), ""))

    def mount_named(self, words: str) -> Mount | None:
        """The mount that these words name, by id, name or other name; None when none or several do."""
        return self.mounts.get(self._mount_names.get(folded(words), ""))


def names_of(records: Mapping[str, Named]) -> Mapping[str, str]:
    """Folded name to id, for every name that belongs to one record only; an id always names its own record."""
    claims: dict[str, set[str]] = {}
    for record in records.values():
        for name in (record.name, *record.also):
            claims.setdefault(folded(name), set()).add(record.id)
    single = {name: next(iter(owners)) for name, owners in claims.items() if len(owners) == 1}
    return MappingProxyType(single | {folded(id_): id_ for id_ in records})


def knowledge_base(records: Iterable[Record]) -> KnowledgeBase:
    """The records of a book, indexed; of two with the same kind and id the later one counts."""
    ordered = sorted(records, key=lambda record: record.id)
    shops = [record for record in ordered if isinstance(record, Shop)]
    return KnowledgeBase(
        shop=shops[-1] if shops else BLANK_SHOP,
        vehicles={record.id: record for record in ordered if isinstance(record, Vehicle)},
        head_units={record.id: record for record in ordered if isinstance(record, HeadUnit)},
        mounts={record.id: record for record in ordered if isinstance(record, Mount)},
        notes={
            record.id: record
            for record in ordered
            if isinstance(record, Tried | Measured | Seen | Metered | Bench | After)
        },
    )
