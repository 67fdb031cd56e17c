"""What notes that were set against each other truly turn on, and whether that was proposed."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from tests.bench.truth.books import TRUE, Judged
from tests.bench.truth.fired import NEW_SPLIT, SAME_AXIS, Fired
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
# What a falsehood may change in a note, beside the splits.
STATED = ("place", "mounts", "readings", "sizes", "verdict")
# What is read from a face.
DEEP = ("depth", "rear depth", "front clearance")
# What asks for the difference between two notes that may both be true, since one of them left something out.
ASKS = ("deeper-yes-left-open",)


@dataclass(frozen=True)
class Case:
    """Notes with an explanation: what they truly turn on, and the axes that were proposed, the likeliest first."""

    regime: str
    axes: frozenset[str]
    proposed: tuple[str, ...]

    @property
    def hit(self) -> bool:
        """Whether a right one is among the first two."""
        return bool(self.axes & set(self.proposed[:2]))


@dataclass(frozen=True)
class Turn:
    """Something in which notes can differ: a field, or one way in which cars do."""

    word: str
    field: str
    split: Axis | None = None

    def said(self, content: Content) -> object:
        """What a note says of it; None for a blank."""
        found = content.get(self.field)
        if self.field == "readings":
            deep = [one for one in found if str(one["of"]).startswith(DEEP)] if isinstance(found, list) else []
            faces = {one.get("datum") for one in deep}
            return None if None in faces else tuple(sorted(map(str, faces)))
        return found.get(self.split.name) if self.split and isinstance(found, dict) else found

    def open_in(self, notes: Sequence[Note]) -> bool:
        """Whether the notes say different things of it, or one of them nothing."""
        said = [self.said(note.content) for note in notes]
        return None in said or any(one != said[0] for one in said)

    def put(self, content: Content, source: Content) -> Content:
        """A note with what another says of it; a model year that stood for a way in which cars differ goes with it."""
        if self.split is None:
            return content | ({self.field: source[self.field]} if self.field in source else {})
        splits = content.get("splits")
        rest = {key: said for key, said in content.items() if key != "year"}
        return rest | {"splits": (splits if isinstance(splits, dict) else {}) | {self.split.name: self.said(source)}}


def cases(book: Judged) -> Iterator[Case]:
    """Each finding that asks what some notes differ in, of which something explains that both were seen."""
    for one in book.fired:
        if (one.sort == "conflict" or one.rule in ASKS) and len(one.notes) >= 2:
            axes = frozenset(true_axes(book, at_odds(book, one)))
            if axes:
                yield Case(book.regime, axes, one.axes)


def at_odds(book: Judged, one: Fired) -> list[Note]:
    """The fewest of the quoted notes, from the first on, that cannot all be true; the first two if there are none."""
    for count in range(2, len(one.notes) + 1):
        if book.can_be_true(one.notes[:count]) is False:
            return [book.by_name[name] for name in one.notes[:count]]
    return [book.by_name[name] for name in one.notes[:2]]


def true_axes(book: Judged, notes: Sequence[Note]) -> Iterator[str]:
    """The axes that differ as written, or are blank, and that truly explain why all of it was seen.

    Of notes that cannot all be true as written these are the axes on which the truth alone makes them so. Of two that
    can, since something is blank, those on which they would clash, had all of it been as it was but that. Where one of
    them states something false, an axis that leaves that as it is explains nothing, though it may let it pass.
    """
    where = book.written.where(notes[0])
    if where is None or any(where != book.written.where(note) or not note.in_full for note in notes):
        return
    clash = book.can_be_true([note.name for note in notes]) is False
    if not clash and not {note.false for note in notes} <= set(TRUE):
        return
    for turn in turns(book.made.world.platform(where[0])):
        if turn.open_in(notes) and not (turn.word == "datum" and mistyped(notes)) and sets_right(turn, notes):
            explains = _mends if clash else _is_needed
            if explains(book, where, notes, turn):
                yield turn.word


def mistyped(notes: Sequence[Note]) -> bool:
    """Whether it is a number and not its face that is false in one of them: then nothing differs, and it is a slip."""
    return not any(note.false == "wrong datum" for note in notes)


def sets_right(turn: Turn, notes: Sequence[Note]) -> bool:
    """Whether nothing false is left in any of them once the truth about this is filled in."""
    return all(
        note.false in TRUE or says_nothing_false(turn.put(note.content, note.in_full), note.in_full) for note in notes
    )


def says_nothing_false(content: Content, true: Content) -> bool:
    """Whether whatever a note says that may have been made false is as it was."""
    said, were = content.get("splits"), true.get("splits")
    splits = isinstance(said, dict) and isinstance(were, dict) and not said.items() <= were.items()
    return not splits and all(content[key] == true.get(key) for key in STATED if key in content)


def turns(platform: Platform) -> Iterator[Turn]:
    """Everything in which notes about a platform can differ."""
    yield from (Turn(word, field) for word, field in FIELDS.items())
    for axis in platform.axes:
        word = SAME_AXIS.get(axis.name, axis.name) if axis in platform.told else NEW_SPLIT
        yield Turn(word, "splits", axis)


def _mends(book: Judged, where: Where, notes: Sequence[Note], turn: Turn) -> bool:
    """Whether all can be true once the truth about it is filled in."""
    told = [(note.name, turn.put(note.content, note.in_full)) for note in notes]
    return book.written.possible(where, told, (turn.split,) if turn.split else ()) is True


def _is_needed(book: Judged, where: Where, notes: Sequence[Note], turn: Turn) -> bool:
    """Whether two could not both be true, had it been with either as it truly was with the other."""
    axes, (first, second) = book.made.world.platform(where[0]).axes, notes
    for one, other in ((first, second), (second, first)):
        told = [(one.name, one.in_full), (other.name, turn.put(other.in_full, one.in_full))]
        if book.written.possible(where, told, axes) is False:
            return True
    return False
