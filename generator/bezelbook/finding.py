"""What a rule is, what it is handed, and what it says when it finds something."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Generic, Literal, TypeVar

from bezelbook.kinds.decision.record import Decision
from bezelbook.kinds.note.record import AnyNote
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.losses import Loss
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.quote import quote
from bezelbook.values.words import Weight

Sort = Literal["conflict", "gap", "slip"]
"""Notes that cannot all be true; something that nobody looked at; a number that arithmetic says was mistyped."""


@dataclass(frozen=True, slots=True)
class NoteScope:
    """One note, and nothing else."""

    note: AnyNote


@dataclass(frozen=True, slots=True)
class PartScope:
    """One part: a book that holds only it, the parts it names, the parts that name it, and the bench notes of it."""

    book: KnowledgeBase
    kind: str
    part: Record


@dataclass(frozen=True, slots=True)
class PlaceScope:
    """One place of one vehicle: a book that holds only that vehicle, the notes made there and the parts they name."""

    book: KnowledgeBase
    vehicle: str
    place: str


@dataclass(frozen=True, slots=True)
class VehicleScope:
    """One vehicle: a book that holds only it, its sisters, everything noted or asked of it, and every part."""

    book: KnowledgeBase
    vehicle: str


@dataclass(frozen=True, slots=True)
class BookScope:
    """The whole book."""

    book: KnowledgeBase


S = TypeVar("S", NoteScope, PartScope, PlaceScope, VehicleScope, BookScope, "DecisionScope")


@dataclass(frozen=True, slots=True)
class Quote:
    """What one record says, as one line, and the field in it that matters (a path from the top of the file)."""

    id: str
    words: str
    path: tuple[str | int, ...] = ()
    kind: str = "note"

    @classmethod
    def of(cls, book: KnowledgeBase, note: AnyNote, path: tuple[str | int, ...] = ()) -> "Quote":
        """What a note says at the field that matters."""
        return cls(note.id, quote(book, note, path), path)


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
    proposals: tuple[Proposal, ...]
    loss: Loss
    question: str
    answers: tuple[str, ...]
    vehicle: str = ""
    place: str = ""

    @property
    def notes(self) -> tuple[str, ...]:
        """The notes it quotes, by id."""
        return tuple(quote.id for quote in self.quotes if quote.kind == "note")


@dataclass(frozen=True, slots=True)
class DecisionScope:
    """One decision: what its question is while nothing is decided, what is left of it, and how old the book is.

    `raised` is None when nothing raises the question any more, `left` when the decision has settled it; `changed` are
    the weighed notes that say something else now; `today` is the book's own date.
    """

    decision: Decision
    raised: Finding | None
    left: Finding | None
    changed: tuple[str, ...]
    today: str | None


Scope = NoteScope | PartScope | PlaceScope | VehicleScope | BookScope | DecisionScope


@dataclass(frozen=True, slots=True)
class Rule(Generic[S]):
    """A rule: its check sees one scope of its sort, nothing else. `title` and `says` are its heading and sentence."""

    name: str
    title: str
    sort: Sort
    says: str
    scope: type[S]
    check: Callable[[S], Iterable[Finding]]


AnyRule = (
    Rule[NoteScope] | Rule[PartScope] | Rule[PlaceScope] | Rule[VehicleScope] | Rule[BookScope] | Rule[DecisionScope]
)
