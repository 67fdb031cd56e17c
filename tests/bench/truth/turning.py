"""What two clashing notes truly turn on: the axes that make both true once the truth is filled in there."""

from collections.abc import Iterator
from dataclasses import dataclass

from tests.bench.truth.books import Judged
from tests.bench.truth.fired import SAME_AXIS, Fired
from tests.simulator.box_world import Axis
from tests.simulator.notes import Content, Note

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
    """A clash that is one: what it truly turns on, and the first two axes that were proposed."""

    axes: frozenset[str]
    proposed: tuple[str, ...]

    @property
    def hit(self) -> bool:
        """Whether a right one is among the first two."""
        return bool(self.axes & set(self.proposed[:2]))


def cases(book: Judged) -> Iterator[Case]:
    """Each conflict between two notes that cannot both be true, where what they turn on differs or is blank."""
    for one in book.fired:
        if one.sort != "conflict" or len(one.notes) < 2 or book.can_be_true(one.notes[:2]) is not False:
            continue
        axes = frozenset(true_axes(book, one))
        if axes:
            yield Case(axes, one.axes)


def true_axes(book: Judged, one: Fired) -> Iterator[str]:
    """The axes that differ as written, or are blank, and on which the truth makes both notes true."""
    first, second = (book.by_name[name] for name in one.notes[:2])
    where = book.written.where(first)
    if where is None or where != book.written.where(second) or not (first.in_full and second.in_full):
        return
    for axis, field in FIELDS.items():
        if _apart(first.content.get(field), second.content.get(field)):
            told = [(note.name, note.content | _kept(note, field)) for note in (first, second)]
            if book.written.possible(where, [told[0], told[1]]):
                yield axis
    for split in book.made.world.platform(where[0]).axes:
        if _apart(*(_split(note.content, split) for note in (first, second))):
            told = [(note.name, _with_split(note, split)) for note in (first, second)]
            if book.written.possible(where, told, (split,)):
                yield SAME_AXIS.get(split.name, split.name)


def _apart(one: object, other: object) -> bool:
    return one is None or other is None or one != other


def _kept(note: Note, field: str) -> Content:
    return {field: note.in_full[field]} if field in note.in_full else {}


def _split(content: Content, axis: Axis) -> object:
    splits = content.get("splits", {})
    return splits.get(axis.name) if isinstance(splits, dict) else None


def _with_split(note: Note, axis: Axis) -> Content:
    """A note with the truth about one way in which cars differ; the year, which stood for it, is left out."""
    splits = note.content.get("splits", {})
    known = splits if isinstance(splits, dict) else {}
    rest = {key: said for key, said in note.content.items() if key != "year"}
    return rest | {"splits": known | {axis.name: _split(note.in_full, axis)}}
