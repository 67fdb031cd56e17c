"""The room that a note speaks for, spot by spot: so much everywhere there, or not so much at one of them."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import partial

from bezelbook.kinds.note.record import AnyNote, Measured, RoomReading, Tool, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.needs import needs_of_note
from bezelbook.reasoning.speakers.needs import needs_of_note as speaker_needs_of_note
from bezelbook.values.span import Span, span_of
from bezelbook.values.words import NINTHS, Datum

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
# What is fixed behind a speaker lies furthest, glass that is down nearer, and the worst point of its travel nearest.
BEHIND = ("fixed", "down", "worst")
READ_TO = {
    "rear depth to fixed": BEHIND[:1],
    "rear depth to glass down": BEHIND[:2],
    "rear depth at worst of travel": BEHIND,
}
# Which room behind or before a speaker "by so much" is about, by its reason.
SPEAKER_GAPS: Mapping[str, tuple[str, tuple[str, ...]]] = {
    "depth": ("depth", BEHIND[:1]),
    "glass": ("depth", BEHIND),
    "grille": ("front", ("",)),
}
ACROSS = ("long way", "short way")
READ_ACROSS = {"cut-out": ACROSS, "cut-out long way": ACROSS[:1], "cut-out short way": ACROSS[1:]}
# The seats of mounts: a depth read from there has the mount in it.
SEATS = ("kit seat", "bracket seat")
FROM_A_FACE = ("depth", "front")


@dataclass(frozen=True, slots=True)
class Said:
    """A size at some spots: `least` at every one of them, or at some one no more than `most`, in nanometres.

    `held` says whether the mounts of the note are in it; `compared` that it is no reading by eye or from a face that
    nobody can compare with. `datum` and `tool` are those of a reading.
    """

    size: str
    spots: frozenset[str]
    least: int | None = None
    most: int | None = None
    held: bool = True
    compared: bool = True
    datum: Datum | None = None
    tool: Tool | None = None


def said_of(book: KnowledgeBase, note: AnyNote) -> Iterator[Said]:
    """Everything that a note says of the room, as the part or the tool met it."""
    if isinstance(note, Measured):
        for reading in note.readings:
            yield from _read(book, reading)
    elif isinstance(note, Tried):
        yield from _tried(book, note)


def room_of(book: KnowledgeBase, note: AnyNote) -> Room:
    """The room that a note speaks for as the part met it, by size: at least and at most, in nanometres.

    Of several spots the shallowest, because that is what stops a thing.
    """
    room: dict[str, tuple[int | None, int | None]] = {}
    for one in said_of(book, note):
        low, high = room.get(one.size, (None, None))
        room[one.size] = (_nearer(low, one.least), _nearer(high, one.most))
    return room


def _nearer(one: int | None, other: int | None) -> int | None:
    """The smaller of two lengths as far as they are known."""
    return min((end for end in (one, other) if end is not None), default=None)


def asked_for(book: KnowledgeBase, note: Tried) -> Mapping[str, Span]:
    """What was asked for by whatever was tried."""
    if book.named("speaker", note.what) or (note.sizes is not None and note.sizes.mounting_depth is not None):
        speaker = speaker_needs_of_note(book, note)
        return {SIZE_OF[need]: span for need, span in speaker.spans.items() if need in SIZE_OF}
    return {need: span for need, span in needs_of_note(book, note).spans.items() if need != "plug"}


def _read(book: KnowledgeBase, reading: RoomReading) -> Iterator[Said]:
    tool = (reading.tool or "none").replace(" ", "_")
    house = book.shop.tools.none if tool == "eye" else getattr(book.shop.tools, tool)
    span, size = span_of(reading.reads, house.base), _size_of(reading)
    held = reading.datum in SEATS or size not in FROM_A_FACE
    compared = tool != "eye" and (size not in FROM_A_FACE or reading.datum not in (None, "finished bezel face"))
    of = partial(Said, size, held=held, compared=compared, datum=reading.datum, tool=reading.tool)
    if reading.of == "depth" and not reading.zones:
        yield of(frozenset(NINTHS), most=span.high)
        return
    spots = _spots(reading)
    yield of(frozenset(spots), least=span.low)
    # Only what lies nearest is no further than what was read: the last of what a reading reaches past.
    for spot in spots[-1:] if reading.of in READ_TO else spots:
        yield of(frozenset({spot}), most=span.high)


def _size_of(reading: RoomReading) -> str:
    return "hole" if reading.of in READ_ACROSS else SIZE_OF.get(reading.of, reading.of)


def _spots(reading: RoomReading) -> tuple[str, ...]:
    if reading.of == "depth":
        return NINTHS if reading.zones == "all" else reading.zones
    return READ_TO.get(reading.of) or READ_ACROSS.get(reading.of) or ("",)


def _tried(book: KnowledgeBase, note: Tried) -> Iterator[Said]:
    if not _says_something(note):
        return
    asked = asked_for(book, note)
    behind_a_speaker = "hole" in asked
    stopped = SIZE_OF_REASON.get(note.reason, note.reason or "")
    stopped = "hole" if behind_a_speaker and stopped in ("width", "height") else stopped
    for size, span in asked.items():
        spots = _met(note, size, behind_a_speaker=behind_a_speaker)
        if note.verdict != "does not":
            yield Said(size, frozenset(spots), span.low, None)
        elif size == stopped:
            yield Said(size, frozenset(_stopped(note, spots)), None, span.high)
    yield from _by_so_much(book, note, behind_a_speaker=behind_a_speaker)


def _says_something(note: Tried) -> bool:
    """Whether it went in or did not; on a condition only where that was met: something cut, or the tabs out."""
    if note.verdict == "goes in if":
        return note.tabs == "out" or note.cut not in (None, UNCUT)
    return note.verdict != "not tried"


def _by_so_much(book: KnowledgeBase, note: Tried, *, behind_a_speaker: bool) -> Iterator[Said]:
    """By so much is a reading of the one room that it is about, against the size of what was tried."""
    gap = note.short_by if note.verdict == "does not" else note.to_spare
    where = SPEAKER_GAPS.get(note.reason or "") if behind_a_speaker else _gap_at(note)
    if gap is None or where is None:
        return
    size, spots = where
    need = asked_for(book, note)[size] if behind_a_speaker else _deepest_there(book, note, size, spots)
    by = span_of(gap, book.shop.tools.none.base)
    room = need.minus(by) if note.verdict == "does not" else need.plus(by)
    yield Said(size, frozenset(spots), least=room.low)
    yield Said(size, frozenset(spots[-1:]), most=room.high)


def _gap_at(note: Tried) -> tuple[str, tuple[str, ...]] | None:
    """The side of an opening, or the one ninth of it, at which there was so much."""
    if note.reason in ("width", "height"):
        return note.reason, ("",)
    deep = note.reason in (("depth", "plug") if note.verdict == "does not" else (None, "depth"))
    return ("depth", note.where) if deep and len(note.where) == 1 else None


def _deepest_there(book: KnowledgeBase, note: Tried, size: str, spots: tuple[str, ...]) -> Span:
    """What a box asks of a side, or of one ninth: where its plug leaves, that with its bend; anything if it may."""
    needs = needs_of_note(book, note)
    if size != "depth":
        return needs.spans["width" if size == "width" else "height"]
    if note.plugs == "off" or needs.exit not in (None, *spots):
        return needs.spans["depth"]
    return needs.spans["plug"] if needs.exit else Span(needs.spans["depth"].low, needs.spans["plug"].high)


def _met(note: Tried, size: str, *, behind_a_speaker: bool) -> tuple[str, ...]:
    """The spots that a thing met; a speaker of which nothing says that the glass was up met all there is."""
    if size == "hole":
        return ACROSS
    if size != "depth":
        return ("",)
    if behind_a_speaker:
        return BEHIND[:1] if note.glass == "up" else BEHIND
    return NINTHS


def _stopped(note: Tried, met: tuple[str, ...]) -> tuple[str, ...]:
    """Where something stopped it, of all that it met: where the note says, or in what lay nearest behind it."""
    if met == NINTHS and note.where:
        return note.where
    return met[-1:] if set(met) <= set(BEHIND) else met
