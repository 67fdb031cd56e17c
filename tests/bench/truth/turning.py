"""What two notes that were set against each other truly turn on, and whether that was proposed."""

from collections.abc import Iterator
from dataclasses import dataclass

from tests.bench.truth.books import TRUE, Judged
from tests.bench.truth.fired import SAME_AXIS
from tests.simulator.box_world import Axis, Platform
from tests.simulator.notes import Content, Note
from tests.simulator.possible.place import Where

FIELDS = {
    "mount": "mounts",
    "loom": "loom",
    "glass": "glass",
    "tabs": "tabs",
    "plugs": "plugs",
    "cut": "cut",
    "side": "place",
    "datum": "readings",
}


@dataclass(frozen=True)
class Case:
    """Two notes with an explanation: what they truly turn on, and the axes that were proposed, the likeliest first."""

    axes: frozenset[str]
    proposed: tuple[str, ...]

    @property
    def hit(self) -> bool:
        """Whether a right one is among the first two."""
        return bool(self.axes & set(self.proposed[:2]))


@dataclass(frozen=True)
class Turn:
    """Something in which two notes can differ: a field, or one way in which cars do."""

    word: str
    field: str
    split: Axis | None = None

    def said(self, content: Content) -> object:
        """What a note says of it; None for a blank."""
        found = content.get(self.field)
        return found.get(self.split.name) if self.split and isinstance(found, dict) else found

    def put(self, content: Content, source: Content) -> Content:
        """A note with what another says of it; a model year that stood for a way in which cars differ goes with it."""
        value = self.said(source)
        if self.split is None:
            return content | ({} if value is None else {self.field: value})
        splits = content.get("splits")
        rest = {key: said for key, said in content.items() if key != "year"}
        return rest | {"splits": (splits if isinstance(splits, dict) else {}) | {self.split.name: value}}


def cases(book: Judged) -> Iterator[Case]:
    """Each conflict between two notes of which something explains the other: what that is differs or is blank there."""
    for one in book.fired:
        if one.sort == "conflict" and len(one.notes) >= 2:
            axes = frozenset(true_axes(book, *(book.by_name[name] for name in one.notes[:2])))
            if axes:
                yield Case(axes, one.axes)


def true_axes(book: Judged, first: Note, second: Note) -> Iterator[str]:
    """The axes that differ as written, or are blank, and that truly explain why both were seen.

    Of two notes that cannot both be true as written these are the axes on which the truth alone makes them so. Of two
    that can, since something is blank, those on which they would clash, had all of it been as it was but that.
    """
    where = book.written.where(first)
    if where is None or where != book.written.where(second) or not (first.in_full and second.in_full):
        return
    clash = book.can_be_true((first.name, second.name)) is False
    if not clash and not {first.false, second.false} <= set(TRUE):
        return
    for turn in turns(book.made.world.platform(where[0])):
        one, other = turn.said(first.content), turn.said(second.content)
        if one is None or other is None or one != other:
            explains = _mends if clash else _is_needed
            if explains(book, where, (first, second), turn):
                yield turn.word


def turns(platform: Platform) -> Iterator[Turn]:
    """Everything in which two notes about a platform can differ."""
    yield from (Turn(word, field) for word, field in FIELDS.items())
    yield from (Turn(SAME_AXIS.get(axis.name, axis.name), "splits", axis) for axis in platform.axes)


def _mends(book: Judged, where: Where, pair: tuple[Note, Note], turn: Turn) -> bool:
    """Whether both can be true once the truth about it is filled in."""
    told = [(note.name, turn.put(note.content, note.in_full)) for note in pair]
    return book.written.possible(where, told, (turn.split,) if turn.split else ()) is True


def _is_needed(book: Judged, where: Where, pair: tuple[Note, Note], turn: Turn) -> bool:
    """Whether they could not both be true, had it been with either as it truly was with the other."""
    axes = book.made.world.platform(where[0]).axes
    for one, other in (pair, pair[::-1]):
        told = [(one.name, one.in_full), (other.name, turn.put(other.in_full, one.in_full))]
        if book.written.possible(where, told, axes) is False:
            return True
    return False
