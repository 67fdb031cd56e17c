"""Over which sizes of a room notes contradict each other, and which things' answers lie in between."""

from collections.abc import Iterable, Mapping, Sequence

from bezelbook.kinds.note.record import AnyNote
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.differing.rooms_said import room_of
from bezelbook.reasoning.hanging.things import Things
from bezelbook.values.span import Span

Window = tuple[int, int]


def hanging_on(book: KnowledgeBase, things: Things, notes: Sequence[AnyNote]) -> int:
    """How many things' answers hang on notes: at least one, which is the answer of whoever reads them.

    Where the notes contradict each other over a size, those whose size lies in between or is not known; elsewhere
    whatever somebody asked about there. A count, not a solution: it is there to put a list in order.
    """
    windows = disputed(book, notes)
    found = things.asked if not windows else {name for name, sizes in things.sizes.items() if _within(sizes, windows)}
    return max(1, len(found))


def disputed(book: KnowledgeBase, notes: Iterable[AnyNote]) -> Mapping[str, Window]:
    """From the least that one note leaves to the most that another wants, in nanometres, where the latter is more."""
    least: dict[str, int] = {}
    most: dict[str, int] = {}
    for note in notes:
        for size, (low, high) in room_of(book, note).items():
            if low is not None:
                least[size] = max(low, least.get(size, low))
            if high is not None:
                most[size] = min(high, most.get(size, high))
    return {size: (most[size], least[size]) for size in least.keys() & most.keys() if most[size] <= least[size]}


def _within(sizes: Mapping[str, Span], windows: Mapping[str, Window]) -> bool:
    return any(_overlaps(sizes[size], window) for size, window in windows.items() if size in sizes)


def _overlaps(span: Span, window: Window) -> bool:
    low, high = window
    return (span.high is None or span.high >= low) and (span.low is None or span.low <= high)
