"""From a folder of files to checked knowledge, answers and pages: what the command line and the site both call."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import Any

from bezelbook.checking import Checked, Kept, check, group_of, rules
from bezelbook.counter import Counter
from bezelbook.finding import Finding
from bezelbook.kinds import KINDS
from bezelbook.kinds.record import kind_of
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.publish.knowledge import Knowledge, RulePage
from bezelbook.publish.pages import site_files
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.decided import BLANKS
from bezelbook.reasoning.plain import PlainAnswer
from bezelbook.reasoning.spoken.found import Choice
from bezelbook.reasoning.wiring_asked.answer import WiringAnswer
from bezelbook.reasoning.wiring_asked.plain import PlainWiring
from bezelbook.store.book import Loaded, load_book
from bezelbook.store.decision_file import decision_name, write_decision
from bezelbook.store.kind_examples import kind_examples
from bezelbook.store.near_miss import nearest
from bezelbook.store.new_book import write_new_book
from bezelbook.store.rule_cases import rule_cases
from bezelbook.store.schema_files import plain_schema_text, schema_texts, stale, write_schemas
from bezelbook.store.source import from_folder, source_of
from bezelbook.store.upgrade import upgrade
from bezelbook.store.writing import replace
from bezelbook.values.complaint import Wrong

# The date of a book in which no note has one.
NO_DAY = "no date"


@dataclass(frozen=True)
class Book:
    """An opened book: what was read, what could not be, how it reads as settled, and what the rules found."""

    folder: Path
    loaded: Loaded
    base: KnowledgeBase
    checked: Checked

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What the rules found, heaviest first."""
        return self.checked.findings

    def places_of(self, finding: Finding) -> tuple[str, ...]:
        """Where each quote of a finding stands, as path:line:column."""
        return tuple(source_of(self._paths[quote.kind, quote.id], quote.path) for quote in finding.quotes)

    @cached_property
    def _paths(self) -> Mapping[tuple[str, str], str]:
        """The file of every record, by kind and id."""
        return dict(zip(((kind_of(type(one)), one.id) for one in self.loaded.records), self.loaded.paths, strict=True))


def open_book(folder: Path, kept: Kept | None = None) -> Book:
    """Read and check a book; files that cannot be read are left out and complained about, nothing else is lost."""
    loaded = load_book(folder)
    checked = check(knowledge_base(loaded.records), kept)
    return Book(folder, loaded, checked.book, checked)


@dataclass(frozen=True, slots=True)
class Settled:
    """What came of a decision: its file, the book with it, and whether its question is gone."""

    path: Path
    book: Book
    gone: bool


def settle(
    book: Book,
    said: Mapping[str, Any],
    name: str | None = None,
    split: tuple[str, str, Mapping[str, Any]] | None = None,
) -> Settled:
    """Write a decision about a question that the book raises, with what its notes say now.

    Raises Wrong, with nothing written, for a question that nothing raises, a note that is not there, a blank that its
    author has filled himself, and whatever the decision's file may not say.
    """
    finding = book.checked.raised.get(said["question"])
    if finding is None:
        near = nearest(said["question"], book.checked.raised)
        mend = f'Did you mean "{near}"?' if near else "bezelbook check --format json gives the key of each"
        raise Wrong(f'nothing in the book raises "{said["question"]}"', mend)
    _check_read_as(book.base, said)
    weighed = [{"note": quote.id, "said": quote.words} for quote in finding.quotes if quote.kind == "note"]
    named = name or decision_name(finding.key, book.base.decisions)
    path = write_decision(book.folder, named, {"question": said["question"], "notes": weighed, **said}, split)
    after = open_book(book.folder)
    left = [found for found in after.findings if found.key == finding.key or _is_about(found, named)]
    return Settled(path, after, gone=not left)


def _is_about(found: Finding, decision: str) -> bool:
    return any(quote.kind == "decision" and quote.id == decision for quote in found.quotes)


def _check_read_as(base: KnowledgeBase, said: Mapping[str, Any]) -> None:
    for reading in (*said.get("read_as", ()), *said.get("struck", ())):
        note = base.typed.get(reading["note"]) or base.notes.get(reading["note"]) or base.struck.get(reading["note"])
        if note is None:
            near = nearest(reading["note"], base.notes)
            raise Wrong(f"there is no note {reading['note']}", f"Did you mean {near}?" if near else "See the quotes")
        filled = next((name for name in reading if name in BLANKS and getattr(note, name, None) is not None), None)
        if filled:
            raise Wrong(
                f"{reading['note']} says its {filled} itself, and a decision fills blanks only",
                "Strike the note, or ask its author to mend it",
            )


def knowledge_of(folder: Path, today: str | None = None) -> Knowledge:
    """Everything there is to publish of the book in a folder; without `today` its date is that of its newest note."""
    return knowledge(open_book(folder), today)


def knowledge(book: Book, today: str | None = None) -> Knowledge:
    """Everything there is to publish of an opened book."""
    return Knowledge(
        book.base,
        rule_pages(),
        book.findings,
        tuple(str(complaint) for complaint in book.loaded.complaints),
        today or book.base.newest_day or NO_DAY,
        {kind.name: kind_examples(kind.name) for kind in KINDS.values()},
        {key: rank.words for key, rank in book.checked.ranks.items()},
        {one.key: tuple(from_folder(book.folder, place) for place in book.places_of(one)) for one in book.findings},
        frozenset(book.checked.raised),
    )


def rule_pages() -> tuple[RulePage, ...]:
    """What there is to tell of every rule, by name."""
    return tuple(
        RulePage(rule.name, rule.title, rule.says, rule_cases(rule.name), rule.sort, *group_of(rule))
        for rule in rules()
    )


def every_schema() -> dict[str, str]:
    """The text of every schema file by its name: one a kind, one for an answer, one for an answer about wiring."""
    return {
        **schema_texts(),
        "answer.schema.json": plain_schema_text("answer", "What bezelbook says.", PlainAnswer),
        "wiring_answer.schema.json": plain_schema_text(
            "answer about wiring", "What bezelbook says of a job's wiring.", PlainWiring
        ),
    }


def write_pages(book: Book, out: Path, today: str | None = None) -> int:
    """Write every page and data script of a book below a folder; says how many."""
    files = site_files(knowledge(book, today))
    for file in files:
        replace(out / file.path, file.text)
    return len(files)


__all__ = [
    "Answer",
    "Book",
    "Choice",
    "Counter",
    "Knowledge",
    "WiringAnswer",
    "every_schema",
    "from_folder",
    "knowledge",
    "knowledge_of",
    "open_book",
    "rule_pages",
    "settle",
    "site_files",
    "stale",
    "upgrade",
    "write_new_book",
    "write_pages",
    "write_schemas",
]
