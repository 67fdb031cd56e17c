"""What a thing asks of a dash opening: how wide, how high, how deep, and how deep where its plug leaves."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Literal, get_args

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.note.record import Tried
from bezelbook.kinds.note.state import Sizes
from bezelbook.kinds.record import Named
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.values.quantity import Quantity
from bezelbook.values.span import BLANK, NOTHING, Span, span_of
from bezelbook.values.words import Ninth

Need = Literal["width", "height", "nose width", "nose height", "depth", "plug"]
NEEDS: tuple[Need, ...] = get_args(Need)
# A record's field for each need; a note's or a question's sizes use the same words without "body".
RECORD_FIELDS: Mapping[Need, str] = {
    "width": "body_width",
    "height": "body_height",
    "nose width": "nose_width",
    "nose height": "nose_height",
    "depth": "body_depth",
    "plug": "plug_and_bend",
}
SIZE_FIELDS: Mapping[Need, str] = {need: name.removeprefix("body_") for need, name in RECORD_FIELDS.items()}


@dataclass(frozen=True, slots=True)
class Needs:
    """What one thing asks for, each need a span in nanometres.

    `key` says whose sizes these are: two needs with one key are the same thing on the bench, whatever its ±. Needs in
    `borrowed` are another thing's own, under that thing's key.
    `depth` is the body with anything that stands out `behind` it; `plug` is the whole depth at the ninth where the plug
    leaves (`exit`; None when nobody said). A need that is unknown has an unbounded span; if only its printed figure is
    known, that figure is in `printed`. `asked` holds the needs that bear on the question: all of them for a record.
    `alone` are the spans as they were read, of the body without what is behind it, and of plug and bend alone.
    """

    key: str
    name: str
    spans: Mapping[Need, Span] = field(hash=False)
    exit: Ninth | None = None
    printed: Mapping[Need, int] = field(default_factory=dict, hash=False)
    asked: frozenset[Need] = frozenset(NEEDS)
    plug_over_body: Span = BLANK
    borrowed: Mapping[Need, str] = field(default_factory=dict, hash=False)
    behind: Span = NOTHING
    alone: Mapping[Need, Span] = field(default_factory=dict, compare=False)

    def key_of(self, need: Need) -> str:
        """Whose size one need is."""
        return self.borrowed.get(need, self.key)

    @property
    def exact(self) -> bool:
        """Whether every need is one single value."""
        return all(span.exact for span in self.spans.values())


def needs_of_unit(book: KnowledgeBase, unit: HeadUnit) -> Needs:
    """The needs of a head unit's record; a size that the record leaves blank may come from a bench note about it.

    A size that says neither caliper nor ± counts as printed.
    """
    sizes = {need: record_size(book, unit, RECORD_FIELDS[need]) for need in NEEDS}
    rear = record_size(book, unit, "rear_protrusion")
    house = House(book.shop.tools.bench_caliper.base, None)
    return _needs(f"head_unit:{unit.id}", unit.name, sizes, unit.plug_exit, rear, house)


def needs_of_note(book: KnowledgeBase, note: Tried) -> Needs:
    """The needs of whatever a note tried: its record, or else the sizes typed in the note.

    A size in a note that says neither caliper nor printed was measured, with no tool named.
    """
    unit = book.head_unit_named(note.what)
    if unit is not None:
        return needs_of_unit(book, unit)
    typed = note.sizes or Sizes()
    sizes = {need: getattr(typed, SIZE_FIELDS[need]) for need in NEEDS}
    house = House(book.shop.tools.bench_caliper.base, book.shop.tools.none.base)
    return _needs(f"note:{note.id}", note.what, sizes, typed.plug_exit, None, house)


def needs_of_sizes(sizes: Mapping[Need, Quantity], exit_: Ninth | None, like: Needs | None = None) -> Needs:
    """The needs of sizes typed in a question: exact unless a ± was typed.

    What was not typed is not asked, unless it is `like` another thing, whose remaining needs it then has; what stands
    out behind that thing's body stands out behind a typed depth as well. The depth at the plug is always asked.
    """
    base = dict(like.spans) if like else dict.fromkeys(NEEDS, BLANK)
    behind = like.behind if like else NOTHING
    spans = base | {need: span_of(size, None) for need, size in sizes.items()}
    if "depth" in sizes:
        spans["depth"] = spans["depth"].plus(behind)
    over_body = like.plug_over_body if like else BLANK
    if "plug" in sizes:
        over_body = span_of(sizes["plug"], None).at_least(behind).minus(behind)
    spans["plug"] = spans["depth"].plus(over_body).at_least(spans["depth"])
    asked = frozenset(NEEDS) if like else frozenset({*sizes, "plug"} if "depth" in sizes else sizes)
    name = " x ".join(sizes[need].typed for need in NEEDS if need in sizes)
    borrowed = {need: like.key for need in NEEDS if need not in sizes} if like else {}
    if "depth" in sizes:
        borrowed.pop("plug", None)
    elif "plug" in sizes:
        borrowed = {need: key for need, key in borrowed.items() if need != "depth"}
    exit_ = exit_ or (like.exit if like else None)
    return Needs("asked", name, spans, exit_, {}, asked, over_body, borrowed, behind)


def at_its_word(needs: Needs) -> Needs:
    """The same needs with every printed figure taken as the truth."""
    figures = {need: Span(size, size) for need, size in needs.printed.items()}
    over_body = figures.pop("plug", needs.plug_over_body)
    spans = {**needs.spans, **figures}
    spans["plug"] = spans["depth"].plus(over_body)
    return replace(needs, key=f"{needs.key} as printed", spans=spans, printed={}, plug_over_body=over_body)


@dataclass(frozen=True, slots=True)
class House:
    """The ± of a size that typed none, in nanometres: with a caliper, and with no word at all (None: printed)."""

    caliper: int
    unsaid: int | None

    def span(self, size: Quantity | None) -> Span:
        """Everything a size may be; a blank or a printed one may be anything."""
        return BLANK if size is None or self.only_printed(size) else span_of(size, self.give(size))

    def give(self, size: Quantity) -> int | None:
        """The ± of a size that typed none."""
        return self.caliper if size.by == "caliper" else self.unsaid

    def only_printed(self, size: Quantity) -> bool:
        """Whether nobody measured it."""
        return size.by == "printed" or (size.by is None and size.give is None and self.unsaid is None)


def _needs(
    key: str,
    name: str,
    sizes: Mapping[Need, Quantity | None],
    exit_: Ninth | None,
    rear: Quantity | None,
    house: House,
) -> Needs:
    alone = {need: house.span(size) for need, size in sizes.items()}
    spans = dict(alone)
    behind = NOTHING if rear is None else house.span(rear)
    over_body = spans["plug"].at_least(behind)
    body = spans["depth"]
    spans["depth"] = body.plus(behind)
    spans["plug"] = body.plus(over_body)
    printed = {need: size.base for need, size in sizes.items() if size is not None and house.only_printed(size)}
    if "depth" in printed and rear is not None:
        printed["depth"] += rear.base
    over_body = over_body.minus(behind)
    return Needs(key, name, spans, exit_, printed, plug_over_body=over_body, behind=behind, alone=alone)


def record_size(book: KnowledgeBase, unit: Named, name: str) -> Quantity | None:
    """A size of a part: measured on its record, else all that bench notes about it allow, else as printed."""
    size: Quantity | None = getattr(unit, name)
    if size is not None and (size.by == "caliper" or (size.by is None and size.give is not None)):
        return size
    readings = [reading.reads for note in book.bench_notes(unit.id) for reading in note.readings if reading.of == name]
    return _together(readings, book.shop.tools.none.base) if readings else size


def _together(readings: Sequence[Quantity], house: int) -> Quantity:
    """All that any of these bench readings allows; none names its tool, so the house says how far it is trusted."""
    gives = [reading.give if reading.give is not None else house for reading in readings]
    low = min(reading.base - give for reading, give in zip(readings, gives, strict=True))
    high = max(reading.base + give for reading, give in zip(readings, gives, strict=True))
    middle = (low + high) // 2
    return replace(readings[0], base=middle, give=high - middle)
