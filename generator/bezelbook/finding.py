"""What a rule is, what it is handed, and what it says when it finds something."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from bezelbook.kinds.note.record import AnyNote
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.values.words import Weight


@dataclass(frozen=True, slots=True)
class NoteScope:
    """One note, and nothing else."""

    note: AnyNote


@dataclass(frozen=True, slots=True)
class PlaceScope:
    """One place of one vehicle: a book that holds only that vehicle, the notes made there and the parts they name."""

    book: KnowledgeBase
    vehicle: str
    place: str


@dataclass(frozen=True, slots=True)
class Quote:
    """What one note says, as one line, and the field in it that matters (a path from the top of the file)."""

    note: str
    words: str
    path: tuple[str | int, ...] = ()


@dataclass(frozen=True, slots=True)
class Finding:
    """Something that cannot all be true, or that nobody looked at, put so that a team can settle it in a minute.

    `key` is made of the rule, the place, the state and the dimension, never of the notes, so that a decision about it
    outlives the note that raised it. `proposals` are what would make both true, the likeliest first.
    """

    rule: str
    key: str
    weight: Weight
    says: str
    quotes: tuple[Quote, ...]
    difference: str
    proposals: tuple[str, ...]
    cost: str
    question: str
    answers: tuple[str, ...]
    vehicle: str = ""
    place: str = ""


@dataclass(frozen=True, slots=True)
class NoteRule:
    """A rule about one note; its check sees that note only. `title` and `says` are its heading and its sentence."""

    name: str
    title: str
    says: str
    check: Callable[[NoteScope], Iterable[Finding]]


@dataclass(frozen=True, slots=True)
class PlaceRule:
    """A rule about one place; its check sees that place only. `title` and `says` are its heading and its sentence."""

    name: str
    title: str
    says: str
    check: Callable[[PlaceScope], Iterable[Finding]]


Rule = NoteRule | PlaceRule
