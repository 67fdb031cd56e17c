"""How many of a thing lie on the shelf, and whether that has to be counted again."""

from dataclasses import dataclass
from datetime import date

from bezelbook.knowledge_base import KnowledgeBase

# Nothing counts the shelf down, so a count grows old.
OLD_DAYS = 30


@dataclass(frozen=True, slots=True)
class Shelf:
    """What was counted, the days on which it was, and whether that is too long ago; `count` None is not looked."""

    count: int | None
    counted_on: tuple[str, ...]
    count_it: bool


def shelf(book: KnowledgeBase, thing: str, today: str) -> Shelf:
    """What lies on the shelf of a thing, by its id, over all the places where it lies.

    `today` is a day as the book writes it, or words when the book has none: then nothing can be told to be fresh.
    """
    rows = [stock for stock in book.shelf.values() if stock.thing == thing]
    if not rows:
        return Shelf(None, (), count_it=True)
    days = tuple(sorted({row.counted_on for row in rows if row.counted_on}))
    fresh = all(row.counted_on is not None and is_fresh(row.counted_on, today) for row in rows)
    return Shelf(sum(row.count for row in rows), days, count_it=not fresh)


def is_fresh(counted_on: str, today: str) -> bool:
    """Whether a count is at most thirty days old; a day that is still to come is a slip, and not fresh."""
    try:
        age = (date.fromisoformat(today) - date.fromisoformat(counted_on)).days
    except ValueError:
        return False
    return 0 <= age <= OLD_DAYS
