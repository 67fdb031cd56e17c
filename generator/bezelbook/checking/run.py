"""What the rules find in a book as it reads: each is handed its scope, and what it found is kept by its digest."""

import hashlib
import importlib
import pkgutil
from collections.abc import Callable, Iterator, Mapping
from functools import lru_cache, partial

import bezelbook.rules
from bezelbook.checking.scopes import Sort, records_of, scopes_of
from bezelbook.finding import AnyRule, Finding, PartScope, PlaceScope, Scope, VehicleScope
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase

Kept = Mapping[str, tuple[Finding, ...]]


@lru_cache(maxsize=1)
def rules() -> tuple[AnyRule, ...]:
    """Every rule there is, by name; a module below the rules folder is a rule because it is there."""
    modules = pkgutil.walk_packages(bezelbook.rules.__path__, "bezelbook.rules.")
    found = (importlib.import_module(module.name).RULE for module in modules if not module.ispkg)
    return tuple(sorted(found, key=lambda rule: rule.name))


def group_of(rule: AnyRule) -> tuple[str, str]:
    """The folder that a rule lies in, and what that folder is about, in its own words."""
    package = importlib.import_module(rule.check.__module__.rpartition(".")[0])
    return package.__name__.rpartition(".")[2], (package.__doc__ or "").strip()


def run_rules(book: KnowledgeBase, before: Kept) -> Kept:
    """What every rule finds in every scope of a book, using what was kept for scopes that hold the same records."""
    return {digest: before[digest] if digest in before else run() for digest, run in _runs(book)}


def run_rule(rule: AnyRule, scope: Scope) -> tuple[Finding, ...]:
    """What one rule finds in one scope; raises TypeError for a scope of another sort."""
    if not isinstance(scope, rule.scope):
        raise TypeError(f"{rule.name} was handed a scope of another sort")
    check_scope: Callable[..., Iterator[Finding]] = rule.check  # type: ignore[assignment]
    return tuple(check_scope(scope))


def _runs(book: KnowledgeBase) -> Iterator[tuple[str, Callable[[], tuple[Finding, ...]]]]:
    digests = _Digests()
    scopes: dict[Sort, list[tuple[Scope, str]]] = {}
    for rule in rules():
        if rule.scope not in scopes:
            scopes[rule.scope] = [(scope, digests.of(scope)) for scope in scopes_of(book, rule.scope)]
        for scope, digest in scopes[rule.scope]:
            yield f"{rule.name}:{digest}", partial(run_rule, rule, scope)


class _Digests:
    """The digest of a scope from those of its records, each record put into text once."""

    def __init__(self) -> None:
        self._of_records: dict[int, bytes] = {}

    def of(self, scope: Scope) -> str:
        whole = hashlib.sha256("\n".join(_about(scope)).encode())
        for record in records_of(scope):
            whole.update(self._of_record(record))
        return whole.hexdigest()

    def _of_record(self, record: Record) -> bytes:
        # By identity: every record outlives the check that it is part of.
        if id(record) not in self._of_records:
            text = f"{type(record).__module__}:{record.model_dump_json()}"
            self._of_records[id(record)] = hashlib.sha256(text.encode()).digest()
        return self._of_records[id(record)]


def _about(scope: Scope) -> tuple[str, ...]:
    """What in its records a scope is about."""
    if isinstance(scope, PlaceScope):
        return ("place", scope.vehicle, scope.place)
    if isinstance(scope, VehicleScope):
        return ("vehicle", scope.vehicle)
    return ("part", scope.kind, scope.part.id) if isinstance(scope, PartScope) else ("whole",)
