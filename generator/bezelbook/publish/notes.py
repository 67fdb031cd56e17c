"""How a note is quoted on a page: its own words, who and when, how sure, and why it stands where it does."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from bezelbook.kinds.note.record import AnyNote, Bench
from bezelbook.knowledge_base import KnowledgeBase, Struck
from bezelbook.publish.address import LOOSE, note_anchor, note_page
from bezelbook.publish.not_told import told
from bezelbook.publish.typed import Line, typed_lines
from bezelbook.reasoning.evidence import Evidence
from bezelbook.reasoning.quote import quote


@dataclass(frozen=True, slots=True)
class Said:
    """A note ready to be quoted. `stands` is strong, weak, aside, struck, or other for one that is not about room.

    It is `silent` where it says more than a page tells.
    """

    note: AnyNote
    words: str
    stands: str
    why: str
    read_as: tuple[str, ...] = ()
    silent: bool = False

    @property
    def anchor(self) -> str:
        """Its anchor on the page that quotes it in full."""
        return note_anchor(self.note.id)

    @property
    def by(self) -> str:
        """Who wrote it and when."""
        return f"{self.note.author or 'not signed'}, {self.note.date or 'no date'}"

    @property
    def sure(self) -> str:
        """How its author knows; for a note that does not say, what sort of note it is."""
        return getattr(self.note, "sure", None) or self.note.form

    @property
    def lines(self) -> tuple[Line, ...]:
        """Everything it says, as typed."""
        return typed_lines(self.note, leave_out=("id",))


def said(book: KnowledgeBase, note: AnyNote, stands: str = "other", why: str = "") -> Said:
    """A note by itself, as it was typed, and how the team reads it since."""
    as_typed = book.typed.get(note.id, note)
    may = told(book, as_typed)
    return Said(may, quote(book, may), stands, why, tuple(_read_as(book, note.id)), silent=may is not as_typed)


def _read_as(book: KnowledgeBase, note: str) -> Iterator[str]:
    """What the team has read into a note, decision by decision; nothing where no decision acts on it."""
    for decision in book.decisions.values() if note in book.typed else ():
        for reading in decision.read_as:
            if reading.note == note:
                said = [f"{line.label} {', '.join(line.words)}" for line in typed_lines(reading, leave_out=("note",))]
                by = f"{decision.author or 'not signed'}, {decision.date or 'no date'}"
                yield f"read as {', '.join(said)}: {decision.reason} ({by})"


def said_at(book: KnowledgeBase, vehicle: str, place: str, evidence: Evidence) -> tuple[Said, ...]:
    """Every note at a place: those that bind, the weak, those set aside and the rest, each newest first."""
    strong = [said(book, one.note, "strong") for one in evidence.standing]
    weak = [said(book, one.note, "weak", one.why) for one in evidence.weak]
    aside = [said(book, one.note, "aside", one.why) for one in evidence.aside]
    lost = struck_notes(book, book.struck_at(vehicle, place))
    sorted_out = {one.note.id for one in (*strong, *weak, *aside, *lost)}
    rest = [said(book, note) for note in book.notes_at(vehicle, place) if note.id not in sorted_out]
    waiting = [one for one in aside if one.note.id not in book.struck]
    return tuple(one for group in (strong, weak, waiting, rest, lost) for one in newest_first(group))


def struck_notes(book: KnowledgeBase, lost: Iterable[Struck]) -> list[Said]:
    """Notes that lost an argument: struck through, each with the reason."""
    return [said(book, one.note, "struck", f"struck: {one.because}") for one in lost]


def said_on_bench(book: KnowledgeBase, part: str) -> tuple[Said, ...]:
    """What was seen of a part on the bench, newest first, and after it what lost."""
    lost = [one for one in book.struck.values() if isinstance(one.note, Bench) and one.note.part == part]
    standing = newest_first(said(book, note) for note in book.bench_notes(part))
    return (*standing, *newest_first(struck_notes(book, lost)))


def newest_first(notes: Iterable[Said]) -> list[Said]:
    """Notes by date, the newest first and those without one last; of one day in order of id."""
    in_order = sorted(notes, key=lambda one: one.note.id)
    return sorted(in_order, key=lambda one: one.note.date or "", reverse=True)


def loose_notes(book: KnowledgeBase) -> tuple[Said, ...]:
    """Notes that point at a vehicle or at a part that is not in the book, newest first."""
    loose = [said(book, note) for note in book.notes.values() if note_page(book, note) == LOOSE]
    lost = [one for one in book.struck.values() if note_page(book, one.note) == LOOSE]
    return (*newest_first(loose), *newest_first(struck_notes(book, lost)))
