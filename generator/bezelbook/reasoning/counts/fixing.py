"""What holds a piece of trim: fasteners of one kind, how many, and which notes counted them."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.note.removal import Fasteners
from bezelbook.kinds.supply.record import Fastener
from bezelbook.knowledge_base import KnowledgeBase, folded

# What breaks or flies when a panel is pulled; a screw or a nut goes back.
CLIPS = frozenset({"fir-tree clip", "W-base clip", "metal claw", "push rivet", "quarter-turn", "tethered pillar clip"})
_WORDS = ("clip", "claw", "rivet", "fir tree", "push pin")


@dataclass(frozen=True, slots=True)
class Fixing:
    """Fasteners of one kind on one piece; `piece` is empty where a note told of a place as a whole.

    `counts` has what each note counted, None where it did not count.
    """

    piece: str
    kind: str
    counts: Mapping[str, int | None]

    @property
    def count(self) -> int | None:
        """The larger count where notes differ: for ordering, one too many is the cheaper fault."""
        return max((count for count in self.counts.values() if count is not None), default=None)

    @property
    def differ(self) -> bool:
        """Whether notes counted differently."""
        return len({count for count in self.counts.values() if count is not None}) > 1


def kind_key(book: KnowledgeBase, words: str) -> str:
    """What the book calls a fastener: its record's id, or the words as the book compares them."""
    found = book.named("supply", words)
    return found.id if found else folded(words)


def is_clip(book: KnowledgeBase, kind: str) -> bool:
    """Whether a kind, as `kind_key` has it, is one that breaks or flies."""
    found = book.supplies.get(kind)
    if found is None:
        return any(word in kind for word in _WORDS)
    return isinstance(found, Fastener) and found.fastener_kind in CLIPS


def fixings(book: KnowledgeBase, notes: Iterable[Seen]) -> tuple[Fixing, ...]:
    """Every clip that these notes saw, each kind on each piece once, in order of piece and kind.

    What a note counted without saying on which piece stands under no piece, with all that the note counted: it may
    well be the clips that another note tells piece by piece.
    """
    found: dict[tuple[str, str], dict[str, int | None]] = {}
    for note in notes:
        loose = [("", row) for row in note.fasteners]
        rows = [(piece.piece, row) for piece in note.pieces for row in piece.fasteners]
        counted = _added(book, rows)
        whole = _added(book, [*loose, *(("", row) for _, row in rows)]) if loose else {}
        for (piece, kind), count in (counted | whole).items():
            found.setdefault((piece, kind), {})[note.id] = count
    return tuple(Fixing(piece, kind, counts) for (piece, kind), counts in sorted(found.items()))


def _added(book: KnowledgeBase, rows: Iterable[tuple[str, Fasteners]]) -> dict[tuple[str, str], int | None]:
    """The rows of one note, those of one kind on one piece added up; one that was not counted leaves them uncounted."""
    found: dict[tuple[str, str], int | None] = {}
    for piece, row in rows:
        key = (piece, kind_key(book, row.kind))
        before = found.get(key, 0)
        if is_clip(book, key[1]):
            found[key] = None if before is None or row.count is None else before + row.count
    return found
