"""How a need for clips is worded on a page."""

from dataclasses import dataclass

from bezelbook.publish.address import Links
from bezelbook.publish.wording import counted
from bezelbook.reasoning.counts.clips import ClipNeed
from bezelbook.reasoning.counts.packs import Packs
from bezelbook.reasoning.counts.shelf import Shelf


@dataclass(frozen=True, slots=True)
class ClipRow:
    """One kind of clip at a place in words; `also` is what has to be said with it, the unknown among it."""

    name: str
    at: str
    comes_off: str
    have: str
    shelf: str
    order: str
    past: str
    also: tuple[str, ...]


def clip_row(need: ClipNeed, to: Links) -> ClipRow:
    """What one kind of clip wants."""
    return ClipRow(
        need.name,
        to.record("supply", need.kind),
        "not counted" if need.handled is None else str(need.handled),
        _have(need),
        shelf_words(need.shelf),
        order_words(need.order),
        past_words(need),
        need.unknown,
    )


def _have(need: ClipNeed) -> str:
    if need.need is None:
        return "unknown"
    return f"{need.need}, single use" if need.single_use else str(need.need)


def shelf_words(shelf: Shelf) -> str:
    """What lies on the shelf, and that it has to be counted when it was long ago."""
    if shelf.count is None:
        return "not looked: count it"
    days = f", counted {' and '.join(shelf.counted_on)}" if shelf.counted_on else ", counted on no known day"
    return f"{shelf.count}{days}{': count it' if shelf.count_it else ''}"


def order_words(order: Packs | None) -> str:
    """What to order in whole packs; pieces where nobody knows how many come in one."""
    if order is None:
        return "unknown"
    if not order.short:
        return "nothing"
    if order.packs is None or order.pack is None:
        return f"{counted(order.short, 'piece')}; pack not looked"
    return f"{counted(order.packs, 'pack')} of {order.pack}"


def past_words(need: ClipNeed) -> str:
    """What became of that kind in past jobs, and that it is thin when those are few."""
    past = need.past
    if not past.jobs:
        return "Thin: no job wrote back yet, so all of them may fly."
    said = f"{past.lost} of {past.handled} lost in {counted(past.witnesses, 'job')}"
    return f"Thin: {said}." if past.thin else f"{said}."
