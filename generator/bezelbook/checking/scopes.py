"""What a rule may see: for each sort of scope, every one there is in a book, holding nothing else."""

from collections.abc import Iterable, Iterator

from bezelbook.finding import BookScope, DecisionScope, NoteScope, PartScope, PlaceScope, Scope, VehicleScope
from bezelbook.kinds.note.record import AnyNote, Bench, Measured, Tried
from bezelbook.kinds.record import PART_KINDS, Named, Record, kind_of
from bezelbook.kinds.references import references
from bezelbook.kinds.supply.record import Foam
from bezelbook.knowledge_base import KnowledgeBase, folded, knowledge_base
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES

Sort = type[Scope]
Thing = tuple[str, str]


def scopes_of(book: KnowledgeBase, sort: Sort) -> Iterator[Scope]:
    """Every scope of one sort, in an order that depends on nothing but the records.

    There are none for decisions: those are made of what the others find.
    """
    if sort is NoteScope:
        return (NoteScope(note) for note in book.notes.values())
    if sort is BookScope:
        return iter((BookScope(book),))
    if sort is VehicleScope:
        return vehicle_scopes(book)
    if sort is PlaceScope:
        return place_scopes(book)
    return part_scopes(book) if sort is PartScope else iter(())


def records_of(scope: Scope) -> Iterator[Record]:
    """Every record that a scope holds, in one order."""
    if isinstance(scope, NoteScope | DecisionScope):
        yield scope.note if isinstance(scope, NoteScope) else scope.decision
        return
    for _, records in sorted(scope.book.records.items()):
        yield from records.values()


def place_scopes(book: KnowledgeBase) -> Iterator[PlaceScope]:
    """Each place that has notes: its vehicle, those notes, the parts they name and what those name in turn.

    A reading of the other side that was found the same here is one of this place too. A note of a speaker that says
    nothing of a gasket may have had any of the book's, so that all of them are there.
    """
    names = _Names(book)
    for vehicle, place in sorted(
        {(note.vehicle, note.place) for note in book.notes.values() if not isinstance(note, Bench)}
    ):
        if vehicle in book.vehicles:
            notes = (*book.notes_at(vehicle, place), *_same_on_the_other_side(book, vehicle, place))
            parts = names.reached_from(notes)
            foams = _foams(book, vehicle, place, notes)
            seen = (book.shop, book.vehicles[vehicle], *notes, *parts, *foams, *_benches(book, parts))
            yield PlaceScope(knowledge_base(seen), vehicle, place)


def _same_on_the_other_side(book: KnowledgeBase, vehicle: str, place: str) -> Iterator[Measured]:
    """Readings of the other side of a car whose author measured this one and found it the same."""
    of = book.vehicles[vehicle].places.get(place)
    for note in book.notes_at(vehicle, of.other_side) if of and of.other_side and of.other_side != place else ():
        if isinstance(note, Measured) and note.other_side == "measured the same":
            yield note


def _foams(book: KnowledgeBase, vehicle: str, place: str, notes: Iterable[AnyNote]) -> Iterator[Record]:
    """What may have been under a speaker of which a note does not say what was."""
    of = book.vehicles[vehicle].places.get(place)
    unsaid = any(isinstance(note, Tried) and note.gasket is None for note in notes)
    if unsaid and of is not None and of.kind in SPEAKER_PLACES | EITHER_PLACES:
        yield from (one for one in book.supplies.values() if isinstance(one, Foam))


def part_scopes(book: KnowledgeBase) -> Iterator[PartScope]:
    """Each part: itself, what it names, the parts that name it, and what was found of it on the bench."""
    names = _Names(book)
    for kind in PART_KINDS:
        for part in book.records.get(kind, {}).values():
            fellows = names.reached_from([part])
            naming = [
                book.records[pointer.kind][pointer.id]
                for pointer in book.pointers_to(kind, part.id)
                if pointer.kind in PART_KINDS
            ]
            seen = (book.shop, part, *fellows, *naming, *book.bench_notes(part.id))
            yield PartScope(knowledge_base(seen), kind, part)


def vehicle_scopes(book: KnowledgeBase) -> Iterator[VehicleScope]:
    """Each vehicle: itself, its sisters, what was noted and asked of it, its jobs, and every part and bench note."""
    parts = [record for kind in (*PART_KINDS, "stock") for record in book.records.get(kind, {}).values()]
    benches = [note for note in book.notes.values() if isinstance(note, Bench)]
    for vehicle in book.vehicles.values():
        sisters = [book.vehicles[sister] for sister in vehicle.sisters if sister in book.vehicles]
        asked = [one for one in book.questions.values() if one.vehicle == vehicle.id]
        jobs = [one for one in book.jobs.values() if one.vehicle == vehicle.id]
        seen = (book.shop, *sisters, vehicle, *book.notes_of(vehicle.id), *asked, *jobs, *parts, *benches)
        yield VehicleScope(knowledge_base(seen), vehicle.id)


def _benches(book: KnowledgeBase, parts: Iterable[Record]) -> Iterator[Record]:
    for part in parts:
        yield from book.bench_notes(part.id)


class _Names:
    """Who goes by which name: where two parts do, a rule has to see both, so that the name stays open to it."""

    def __init__(self, book: KnowledgeBase) -> None:
        self._claims: dict[Thing, list[Record]] = {}
        for kind in PART_KINDS:
            for record in book.records.get(kind, {}).values():
                for name in _names(record):
                    self._claims.setdefault((kind, name), []).append(record)

    def reached_from(self, records: Iterable[Record]) -> tuple[Record, ...]:
        """The parts that these records name, and the parts that those name, and so on, each once."""
        found: dict[Thing, Record] = {}
        waiting = list(records)
        while waiting:
            for part in self._named_by(waiting.pop()):
                thing = (kind_of(type(part)), part.id)
                if thing not in found:
                    found[thing] = part
                    waiting.append(part)
        return tuple(part for _, part in sorted(found.items()))

    def _named_by(self, record: Record) -> Iterator[Record]:
        for reference in references(record):
            for kind in reference.kinds:
                yield from self._claims.get((kind, folded(reference.words)), ())


def _names(record: Record) -> set[str]:
    spoken = (record.name, *record.also) if isinstance(record, Named) else ()
    return {folded(name) for name in (record.id, *spoken)}
