"""How many clips to have ready for a removal, kind by kind, and what has to be ordered for that."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import After
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.counts.fixing import Fixing
from bezelbook.reasoning.counts.lost import Tally, tallies
from bezelbook.reasoning.counts.order_quantity import order_quantity
from bezelbook.reasoning.counts.packs import Packs, packs
from bezelbook.reasoning.counts.shelf import Shelf, shelf


@dataclass(frozen=True, slots=True)
class ClipNeed:
    """What a removal wants of one kind of clip.

    `kind` is a record's id or words. `handled` is how many come off: those on the pieces, or as many as a note counted
    in all or a job wrote back when that is more; None when nobody counted, and then `need` and `order` are None.
    `single_use` is True when all of them are replaced whatever was lost.
    """

    kind: str
    name: str
    handled: int | None
    pieces: tuple[Fixing, ...]
    single_use: bool
    past: Tally
    need: int | None
    shelf: Shelf
    order: Packs | None
    unknown: tuple[str, ...]


def clip_needs(
    book: KnowledgeBase,
    removal: Iterable[Fixing],
    past: Iterable[After],
    everywhere: Mapping[str, Tally],
    today: str,
) -> tuple[ClipNeed, ...]:
    """The clips of a set of pieces, each piece counted once, by kind.

    `past` are write-backs of that removal, which say how many it handled; `everywhere` has what became of each kind
    in all jobs of the book, since a clip does not know which car it is in.
    """
    on_pieces: dict[str, list[Fixing]] = {}
    for fixing in removal:
        on_pieces.setdefault(fixing.kind, []).append(fixing)
    here = tallies(book, past)
    return tuple(
        _need(book, kind, on_pieces.get(kind, []), (everywhere.get(kind, Tally()), here.get(kind, Tally())), today)
        for kind in sorted({*here, *on_pieces})
    )


def _need(book: KnowledgeBase, kind: str, pieces: list[Fixing], past: tuple[Tally, Tally], today: str) -> ClipNeed:
    record = book.supplies.get(kind)
    everywhere, here = past
    handled = _handled(pieces, here)
    single_use = record is not None and record.single_use == "single use"
    need = None if handled is None else _wanted(everywhere, handled, single_use=single_use)
    lies = shelf(book, kind, today)
    order = None if need is None else packs(need, lies.count, record.pack if record else None)
    name = record.name if record else kind
    unknown = tuple(_unknown(book, kind, pieces, everywhere))
    return ClipNeed(kind, name, handled, tuple(pieces), single_use, everywhere, need, lies, order, unknown)


def _wanted(past: Tally, handled: int, *, single_use: bool) -> int:
    return handled if single_use else order_quantity(past.lost, past.handled, handled)


def _handled(pieces: list[Fixing], here: Tally) -> int | None:
    """How many come off; pieces that nobody counted add nothing, so that what a job handled may well be more."""
    return max([*_counts(pieces).values(), *(one.handled for one in here.jobs)], default=None)


def _counts(pieces: Iterable[Fixing]) -> dict[str, int]:
    """How many there are piece by piece, and how many notes counted in all, as far as anybody counted."""
    by_piece = [fixing.count for fixing in pieces if fixing.piece and fixing.count is not None]
    in_all = [fixing.count for fixing in pieces if not fixing.piece and fixing.count is not None]
    found = {"piece by piece": sum(by_piece)} if by_piece else {}
    return found | {"counted in all": max(in_all)} if in_all else found


def _unknown(book: KnowledgeBase, kind: str, pieces: list[Fixing], past: Tally) -> Iterable[str]:
    for fixing in pieces:
        piece = fixing.piece.replace("-", " ") or "pieces there, which the note does not name"
        if fixing.count is None:
            yield f"how many are on the {piece}: count them when it is off, 1 min"
        elif fixing.differ:
            counts = ", ".join(f"{count} in {note}" for note, count in fixing.counts.items() if count is not None)
            yield f"notes differ on the {piece} ({counts}): look at its back, 1 min; until then the larger counts"
    totals = _counts(pieces)
    if len(set(totals.values())) > 1:
        said = ", ".join(f"{count} {how}" for how, count in totals.items())
        yield f"notes differ on how many there are ({said}): count them when they are off, 1 min; until then the larger"
    if kind not in book.supplies:
        yield "which clip that is: caliper the shank of the first one that flies, 1 min"
    if past.aside:
        yield f"more lost than handled in {', '.join(past.aside)}: set aside until somebody reads it back"
