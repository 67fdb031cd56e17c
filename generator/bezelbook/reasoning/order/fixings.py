"""What holds a piece or stands on the way to a place: each kind of fastener with how many, where, and the odd one."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from bezelbook.kinds.note.removal import Fasteners
from bezelbook.kinds.supply.record import Fastener
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.order.saying import Said, gathered


@dataclass(frozen=True, slots=True)
class Fixing:
    """Fasteners of one kind in one spot. `record` is the supply's id when the book has it, else None."""

    name: str
    record: str | None
    where: str | None
    counts: tuple[Said[int], ...]
    lengths: tuple[Said[str], ...]
    odd_ones: tuple[Said[str], ...]
    notes: tuple[str, ...]

    @property
    def most(self) -> int | None:
        """The largest count that anybody wrote, which is the one to have ready for; None when nobody counted."""
        return max((said.what for said in self.counts), default=None)


def fixings(book: KnowledgeBase, said: Sequence[tuple[Fasteners, str]]) -> tuple[Fixing, ...]:
    """What (fasteners, note) pairs say of one piece together, in order of who said it first.

    Who leaves the spot blank means the spot that others name, when they name one only. Within one note the counts of a
    kind at one spot add up.
    """
    keyed = [(_kind(book, one), _spot(book, one, said), one, note) for one, note in said]
    keys = dict.fromkeys((kind, spot) for kind, spot, _, _ in keyed)
    return tuple(_fixing(book, [(one, note) for kind, spot, one, note in keyed if (kind, spot) == key]) for key in keys)


def record_of(book: KnowledgeBase, words: str) -> Fastener | None:
    """The fastener of the book that these words name; None when none or several do."""
    found = book.named("supply", words)
    return found if isinstance(found, Fastener) else None


def _kind(book: KnowledgeBase, one: Fasteners) -> str:
    found = record_of(book, one.kind)
    return folded(found.id if found else one.kind)


def _spot(book: KnowledgeBase, one: Fasteners, said: Sequence[tuple[Fasteners, str]]) -> str | None:
    if one.where:
        return folded(one.where)
    named = {folded(other.where) for other, _ in said if other.where and _kind(book, other) == _kind(book, one)}
    return next(iter(named)) if len(named) == 1 else None


def _fixing(book: KnowledgeBase, said: Sequence[tuple[Fasteners, str]]) -> Fixing:
    found = record_of(book, said[0][0].kind)
    return Fixing(
        found.name if found else said[0][0].kind,
        found.id if found else None,
        next((one.where for one, _ in said if one.where), None),
        gathered(_counts(said)),
        gathered((one.length.typed, note) for one, note in said if one.length),
        gathered((one.odd_one, note) for one, note in said if one.odd_one),
        tuple(dict.fromkeys(note for _, note in said)),
    )


def _counts(said: Iterable[tuple[Fasteners, str]]) -> Iterator[tuple[int, str]]:
    found: dict[str, int] = {}
    for one, note in said:
        if one.count is not None:
            found[note] = found.get(note, 0) + one.count
    return ((count, note) for note, count in found.items())
