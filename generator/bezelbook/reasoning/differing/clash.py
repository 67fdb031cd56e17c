"""Which of two notes has more room than the other leaves it, in which size, and by how much."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from itertools import product

from bezelbook.kinds.note.record import AnyNote, Bench, Measured, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.differing.rooms_said import SIZE_OF_REASON, Said, said_of
from bezelbook.reasoning.mounting import stack_of

# Which way a mount that stands out changes a size: more behind, less in front.
GIVEN_BY_MOUNTS = {"depth": 1, "front": -1}


@dataclass(frozen=True, slots=True)
class Clash:
    """Note number `roomier` (0 or 1) wants `by` nanometres more of `size` than the other says there is.

    `roomier` is None and `size` is empty where the two are not about room or agree. `between` is what they say of it,
    the roomier one's first; empty where one and the same thing went in and did not.
    """

    size: str = ""
    roomier: int | None = None
    by: int = 0
    between: tuple[Said, ...] = field(default=(), compare=False)


def clash_of(book: KnowledgeBase, first: AnyNote, second: AnyNote) -> Clash:
    """How two notes clash over room; where several sizes do, the one by the most."""
    return _most(clash for clash, _ in _every(book, first, second))


def net_clash_of(book: KnowledgeBase, first: AnyNote, second: AnyNote, *, compared: bool = False) -> Clash:
    """The same with what known mounts give taken off: nothing is left of a clash that they explain.

    With `compared` only readings that can be compared count.
    """
    every = [(clash, given or 0) for clash, given in _every(book, first, second)]
    return _most(
        replace(clash, by=clash.by - given)
        for clash, given in every
        if not compared or all(said.compared for said in clash.between)
    )


def _most(clashes: Iterable[Clash]) -> Clash:
    wanting = (clash for clash in clashes if clash.by >= 0)
    return max(wanting, key=lambda one: (one.by, one.size), default=Clash())


def offset_said(book: KnowledgeBase, note: AnyNote) -> int | None:
    """How far out the mounts of a note hold at most, in nanometres; None where they are unsaid or nobody knows."""
    if isinstance(note, Measured) and note.mounts is None:
        return 0
    if isinstance(note, Bench) or note.mounts is None:
        return None
    stack = stack_of(book, note.mounts if isinstance(note.mounts, tuple) else (), note.id)
    return None if stack.strange else stack.offset.high


def _same_thing(first: AnyNote, second: AnyNote) -> Iterator[Clash]:
    """One and the same thing that goes in and does not clashes by nothing, whatever its size."""
    if isinstance(first, Tried) and isinstance(second, Tried) and first.what == second.what:
        verdicts = (first.verdict, second.verdict)
        if set(verdicts) == {"goes in", "does not"}:
            refused = second if verdicts[0] == "goes in" else first
            size = SIZE_OF_REASON.get(refused.reason, refused.reason or "")
            yield from [Clash(size, verdicts.index("goes in"), 0)] if size else []


def _every(book: KnowledgeBase, first: AnyNote, second: AnyNote) -> Iterator[tuple[Clash, int | None]]:
    """Each size and spot over which they clash, with how much more room the mounts of the one give; None if unknown."""
    notes = (first, second)
    for same in _same_thing(first, second):
        yes, no = (notes[same.roomier or 0], notes[1 - (same.roomier or 0)])
        yield same, _given(same.size, offset_said(book, yes), offset_said(book, no))
    said = [tuple(said_of(book, note)) for note in notes]
    for roomier in (0, 1):
        for wants, leaves in product(said[roomier], said[1 - roomier]):
            by = _short(wants, leaves)
            if by is not None:
                out = offset_said(book, notes[roomier]) if wants.held else 0
                less = offset_said(book, notes[1 - roomier]) if leaves.held else 0
                yield Clash(wants.size, roomier, by, (wants, leaves)), _given(wants.size, out, less)


def _short(wants: Said, leaves: Said) -> int | None:
    """How much is wanting where the one has at least so much everywhere that the other has less of at some spot.

    Negative where there is more than enough.
    """
    if wants.least is None or leaves.most is None or wants.size != leaves.size or not leaves.spots <= wants.spots:
        return None
    return wants.least - leaves.most


def _given(size: str, out: int | None, less: int | None) -> int | None:
    return None if out is None or less is None else GIVEN_BY_MOUNTS.get(size, 0) * (out - less)
