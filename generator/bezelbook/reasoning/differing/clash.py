"""Which of two notes has more room than the other leaves it, in which size, and by how much."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from bezelbook.kinds.note.record import AnyNote, Bench, Measured, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.mounting import stack_of
from bezelbook.reasoning.needs import needs_of_note
from bezelbook.reasoning.speakers.needs import needs_of_note as speaker_needs_of_note
from bezelbook.values.span import Span, span_of

# One name for the same room, whether it was read in the car or asked for by what was tried.
SIZE_OF: Mapping[str, str] = {
    "depth": "depth",
    "rear depth to fixed": "depth",
    "rear depth to glass down": "depth",
    "rear depth at worst of travel": "depth",
    "mounting depth": "depth",
    "front clearance": "front",
    "front height": "front",
    "cut-out": "hole",
    "cut-out long way": "hole",
    "basket": "hole",
}
SIZE_OF_REASON: Mapping[str | None, str] = {
    None: "depth",
    "depth": "depth",
    "plug": "depth",
    "glass": "depth",
    "grille": "front",
    "nose": "nose width",
    "other": "",
    "bolt": "",
    "circuit": "",
    "load": "",
}
Room = Mapping[str, tuple[int | None, int | None]]


@dataclass(frozen=True, slots=True)
class Clash:
    """Note number `roomier` (0 or 1) wants `by` nanometres more of `size` than the other says there is.

    `roomier` and `by` are None, and `size` is empty, where the two are not about room or agree.
    """

    size: str = ""
    roomier: int | None = None
    by: int = 0


def room_of(book: KnowledgeBase, note: AnyNote) -> Room:
    """The room that a note speaks for as the part met it, by size: at least and at most, in nanometres."""
    if isinstance(note, Measured):
        return dict(_read(book, note))
    if not isinstance(note, Tried) or note.verdict not in ("goes in", "does not"):
        return {}
    asked = asked_for(book, note)
    if note.verdict == "goes in":
        return {size: (span.low, None) for size, span in asked.items()}
    stopped = SIZE_OF_REASON.get(note.reason, note.reason or "")
    return {size: (None, span.high) for size, span in asked.items() if size == stopped}


def clash_of(book: KnowledgeBase, first: AnyNote, second: AnyNote) -> Clash:
    """How two notes clash over room; where several sizes do, the one by the most."""
    notes = (first, second)
    rooms = [room_of(book, note) for note in notes]
    found = [*_same_thing(first, second), *_over(rooms[0], rooms[1], 0), *_over(rooms[1], rooms[0], 1)]
    return max(found, key=lambda one: (one.by, one.size), default=Clash())


def net_clash_of(book: KnowledgeBase, first: AnyNote, second: AnyNote) -> Clash:
    """The same with what known mounts give taken off: nothing is left of a clash that they explain."""
    raw = clash_of(book, first, second)
    offsets = [offset_said(book, note) for note in (first, second)]
    if raw.roomier is None or raw.size != "depth" or None in offsets:
        return raw
    given = (offsets[raw.roomier] or 0) - (offsets[1 - raw.roomier] or 0)
    return replace(raw, by=max(0, raw.by - given)) if given <= raw.by else Clash()


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


def _over(wants: Room, leaves: Room, roomier: int) -> Iterator[Clash]:
    for size, (least, _) in wants.items():
        most = leaves.get(size, (None, None))[1]
        if least is not None and most is not None and least >= most:
            yield Clash(size, roomier, least - most)


def _read(book: KnowledgeBase, note: Measured) -> Iterator[tuple[str, tuple[int | None, int | None]]]:
    """What was read; of several ninths the shallowest, because that is what stops a thing."""
    readings = sorted(note.readings, key=lambda one: -one.reads.base)
    for reading in readings:
        tool = (reading.tool or "none").replace(" ", "_")
        house = book.shop.tools.none if tool == "eye" else getattr(book.shop.tools, tool)
        span = span_of(reading.reads, house.base)
        yield SIZE_OF.get(reading.of, reading.of), (span.low, span.high)


def asked_for(book: KnowledgeBase, note: Tried) -> Mapping[str, Span]:
    """What was asked for by whatever was tried."""
    if book.named("speaker", note.what) or (note.sizes is not None and note.sizes.mounting_depth is not None):
        speaker = speaker_needs_of_note(book, note)
        return {SIZE_OF[need]: span for need, span in speaker.spans.items() if need in SIZE_OF}
    return {need: span for need, span in needs_of_note(book, note).spans.items() if need != "plug"}
