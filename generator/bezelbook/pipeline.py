"""From a folder of files to checked knowledge, answers and pages: what the command line and the site both call."""

import json
from codecs import BOM_UTF8
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import Any

from bezelbook.checking import Checked, Kept, check, rules
from bezelbook.finding import Finding
from bezelbook.kinds import KINDS
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.publish.knowledge import Knowledge, RulePage
from bezelbook.publish.pages import site_files
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.next_best.desk import Desk
from bezelbook.reasoning.plain import PlainAnswer
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.answer import SpeakerAnswer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.vocabulary import vocabulary
from bezelbook.reasoning.words import Choice, read_words
from bezelbook.store.book import Loaded, load_book
from bezelbook.store.kind_examples import kind_examples
from bezelbook.store.new_book import write_new_book
from bezelbook.store.rule_cases import rule_cases
from bezelbook.store.schema_files import plain_schema_text, schema_texts, stale, write_schemas
from bezelbook.store.source import source_of
from bezelbook.store.upgrade import upgrade
from bezelbook.store.writing import replace
from bezelbook.values.complaint import Wrong

# The date of a book in which no note has one.
NO_DAY = "no date"
SHAPE = '{"vehicle": …, "place": …, "what": …}'


@dataclass(frozen=True)
class Book:
    """An opened book: what was read, what could not be, and what the rules found."""

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
        return tuple(source_of(self._note_paths[quote.note], quote.path) for quote in finding.quotes)

    @cached_property
    def _note_paths(self) -> Mapping[str, str]:
        paths = (Path(path) for path in self.loaded.read)
        return {path.stem: path.as_posix() for path in paths if path.parent.parent.name == "notes"}


def open_book(folder: Path, kept: Kept | None = None) -> Book:
    """Read and check a book; files that cannot be read are left out and complained about, nothing else is lost."""
    loaded = load_book(folder)
    base = knowledge_base(loaded.records)
    return Book(folder, loaded, base, check(base, kept))


def knowledge_of(folder: Path, today: str | None = None) -> Knowledge:
    """Everything there is to publish of the book in a folder; without `today` its date is that of its newest note."""
    return knowledge(open_book(folder), today)


def knowledge(book: Book, today: str | None = None) -> Knowledge:
    """Everything there is to publish of an opened book."""
    pages = tuple(RulePage(rule.name, rule.title, rule.says, rule_cases(rule.name)) for rule in rules())
    return Knowledge(
        book.base,
        pages,
        book.findings,
        tuple(str(complaint) for complaint in book.loaded.complaints),
        today or book.base.newest_day or NO_DAY,
        {kind.name: kind_examples(kind.name) for kind in KINDS.values()},
    )


def every_schema() -> dict[str, str]:
    """The text of every schema file by its name: one a kind, and one for an answer."""
    return {**schema_texts(), "answer.schema.json": plain_schema_text("answer", "What bezelbook says.", PlainAnswer)}


def write_pages(book: Book, out: Path, today: str | None = None) -> int:
    """Write every page and data script of a book below a folder; says how many."""
    files = site_files(knowledge(book, today))
    for file in files:
        replace(out / file.path, file.text)
    return len(files)


class Counter:
    """Answers questions about one book, remembering each place it was asked about."""

    def __init__(self, base: KnowledgeBase) -> None:
        self.base = base
        self._phrases = vocabulary(base)
        self._desk = Desk(base)

    def ask_words(self, text: str) -> tuple[Answer | SpeakerAnswer | Choice, tuple[str, ...]]:
        """An answer to free words, or the one thing to ask first; and how bare numbers were read."""
        reading = read_words(self.base, text, self._phrases)
        found = reading.read if isinstance(reading.read, Choice) else self._answer(reading.read)
        return found, reading.took

    def ask(self, data: Mapping[str, Any]) -> dict[str, Any]:
        """A question as plain data, answered as plain data; raises Wrong when it cannot be read."""
        reading = read_question(self.base, data, self._phrases)
        found = reading.read
        took = {"took": list(reading.took)} if reading.took else {}
        if isinstance(found, Choice):
            return {"ask": found.ask, "options": [list(option) for option in found.options]} | took
        return {**self._answer(found).plain(), **took}

    def batch(self, lines: Iterable[bytes]) -> Iterator[dict[str, Any]]:
        """One answer for each line of JSON that is not blank; a line that is wrong says so and stops nothing."""
        for number, line in enumerate(lines, 1):
            if line.removeprefix(BOM_UTF8).strip():
                yield self._line(number, line)

    def _line(self, number: int, line: bytes) -> dict[str, Any]:
        try:
            return self.ask(_question(line))
        except Wrong as wrong:
            return {"line": number, "wrong": wrong.what, "mend": wrong.mend}

    def _answer(self, question: Question | SpeakerQuestion) -> Answer | SpeakerAnswer:
        if isinstance(question, SpeakerQuestion):
            return self._desk.speaker(question)
        return self._desk.opening(question)


def _question(line: bytes) -> dict[str, Any]:
    """A line of a batch as plain data; raises Wrong when it is not a set of keys and values."""
    try:
        data = json.loads(line.decode("utf-8-sig"))
    except UnicodeDecodeError as error:
        raise Wrong("this line is not UTF-8 text", "Save the file as UTF-8") from error
    except (ValueError, RecursionError) as error:
        # ValueError beside the reader's own: a number of thousands of digits.
        raise Wrong("this line is not JSON", f"Write one question a line: {SHAPE}") from error
    if not isinstance(data, dict):
        raise Wrong("a question is a set of keys and values", f"Write {SHAPE}")
    return data


__all__ = [
    "Answer",
    "Book",
    "Choice",
    "Counter",
    "Knowledge",
    "every_schema",
    "knowledge",
    "knowledge_of",
    "open_book",
    "site_files",
    "stale",
    "upgrade",
    "write_new_book",
    "write_pages",
    "write_schemas",
]
