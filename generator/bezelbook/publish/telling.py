"""What is told to the browser once and pointed at by number or by id: notes, answers, and what is not known."""

from collections.abc import Iterable
from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import HOME, Links
from bezelbook.reasoning.quote import quote
from bezelbook.reasoning.unknowns import Missing


class Pool:
    """Values that are told once and pointed at by number."""

    def __init__(self) -> None:
        self.values: list[Any] = []
        self._numbers: dict[str, int] = {}

    def number(self, value: Any) -> int:
        """Where a value stands; it is added when it is new."""
        key = repr(value)
        if key not in self._numbers:
            self._numbers[key] = len(self.values)
            self.values.append(value)
        return self._numbers[key]


class Telling:
    """The values shared by everything that is told about one vehicle."""

    def __init__(self, book: KnowledgeBase) -> None:
        self.book = book
        self.missing = Pool()
        self.answers = Pool()
        self.offers = Pool()
        self.jobs = Pool()
        self.notes: dict[str, dict[str, Any]] = {}

    def note(self, id_: str) -> str:
        """Tell of a note, once. Two notes with the same number of job are one job's."""
        if id_ not in self.notes:
            note = self.book.written(id_)
            self.notes[id_] = {
                "author": note.author,
                "date": note.date,
                "sure": getattr(note, "sure", None) or note.form,
                "form": note.form,
                "words": quote(self.book, note),
                "job": self.jobs.number([note.job] if note.job else [note.author, note.date]),
                "at": Links(HOME, self.book).note(note),
            }
        return id_

    def unknown(self, missing: Iterable[Missing]) -> list[int]:
        """Tell what is not known, each thing once."""
        return [self.missing.number([one.what, one.look, one.changes]) for one in missing]
