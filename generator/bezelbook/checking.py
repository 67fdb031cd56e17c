"""What the rules find in a book: each is handed its scope, and what it found is kept by the scope's digest."""

import hashlib
import importlib
import pkgutil
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import TypeVar

import bezelbook.rules
from bezelbook.finding import Finding, NoteRule, NoteScope, PlaceRule, PlaceScope, Rule
from bezelbook.kinds.note.record import Bench, Tried
from bezelbook.kinds.record import Named, Record
from bezelbook.knowledge_base import KnowledgeBase, folded, knowledge_base
from bezelbook.values.words import WEIGHTS

N = TypeVar("N", bound=Named)
Kept = Mapping[str, tuple[Finding, ...]]


@dataclass(frozen=True, slots=True)
class Checked:
    """What was found, heaviest first, and what to keep for the next time."""

    findings: tuple[Finding, ...]
    kept: Kept


@lru_cache(maxsize=1)
def rules() -> tuple[Rule, ...]:
    """Every rule there is, by name; a module in the rules folder is a rule because it is there."""
    names = sorted(module.name for module in pkgutil.iter_modules(bezelbook.rules.__path__))
    return tuple(importlib.import_module(f"bezelbook.rules.{name}").RULE for name in names)


def check(book: KnowledgeBase, kept: Kept | None = None) -> Checked:
    """Run every rule on every scope, using what was kept for scopes that hold the very same records."""
    before = kept or {}
    after: dict[str, tuple[Finding, ...]] = {}
    for digest, run in _runs(book):
        after[digest] = before[digest] if digest in before else run()
    found = (finding for findings in after.values() for finding in findings)
    return Checked(tuple(sorted(found, key=_order)), after)


class _Run:
    """One rule on one scope, run when it is called."""

    def __init__(self, rule: Rule, scope: NoteScope | PlaceScope) -> None:
        self.rule = rule
        self.scope = scope

    def __call__(self) -> tuple[Finding, ...]:
        if isinstance(self.rule, NoteRule) and isinstance(self.scope, NoteScope):
            return tuple(self.rule.check(self.scope))
        if isinstance(self.rule, PlaceRule) and isinstance(self.scope, PlaceScope):
            return tuple(self.rule.check(self.scope))
        raise TypeError(f"{self.rule.name} was handed a scope of another sort")


def _runs(book: KnowledgeBase) -> Iterator[tuple[str, _Run]]:
    places = [(scope, _digest(scope.book, scope.place)) for scope in place_scopes(book)]
    notes = [(NoteScope(note), _digest_of([note])) for note in book.notes.values()]
    for rule in rules():
        scopes = notes if isinstance(rule, NoteRule) else places
        for scope, digest in scopes:
            yield f"{rule.name}:{digest}", _Run(rule, scope)


def place_scopes(book: KnowledgeBase) -> Iterator[PlaceScope]:
    """Each place that has notes, with a book that holds nothing but what a rule about it may see."""
    places = sorted({(note.vehicle, note.place) for note in book.notes.values() if not isinstance(note, Bench)})
    units, mounts = _by_name(book.head_units), _by_name(book.mounts)
    for vehicle, place in places:
        if vehicle in book.vehicles:
            notes = [note for note in book.notes_at(vehicle, place) if not isinstance(note, Bench)]
            named = (words for note in notes if isinstance(note.mounts, tuple) for words in note.mounts)
            tried = {unit.id: unit for note in notes if isinstance(note, Tried) for unit in _claiming(units, note.what)}
            used = {mount.id: mount for words in named for mount in _claiming(mounts, words)}
            bench = [note for unit in tried for note in book.bench_notes(unit)]
            seen = (book.shop, book.vehicles[vehicle], *tried.values(), *used.values(), *notes, *bench)
            yield PlaceScope(knowledge_base(seen), vehicle, place)


def _by_name(records: Mapping[str, N]) -> Mapping[str, tuple[N, ...]]:
    """Every record that goes by a name: where two do, a rule has to see both, so that the name stays open to it."""
    found: dict[str, tuple[N, ...]] = {}
    for record in records.values():
        for name in {folded(name) for name in (record.id, record.name, *record.also)}:
            found[name] = (*found.get(name, ()), record)
    return found


def _claiming(names: Mapping[str, tuple[N, ...]], words: str) -> tuple[N, ...]:
    return names.get(folded(words), ())


def _digest(book: KnowledgeBase, place: str) -> str:
    records: list[Record] = [book.shop, *book.vehicles.values(), *book.head_units.values()]
    return _digest_of([*records, *book.mounts.values(), *book.notes.values()], place)


def _digest_of(records: list[Record], *more: str) -> str:
    texts = [f"{type(record).__name__}:{record.model_dump_json()}" for record in records]
    return hashlib.sha256("\n".join([*more, *texts]).encode()).hexdigest()


def _order(finding: Finding) -> tuple[int, str, str, str, str]:
    return WEIGHTS.index(finding.weight), finding.vehicle, finding.place, finding.rule, finding.key
