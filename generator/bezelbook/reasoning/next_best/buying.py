"""What of a job would have to be bought: everything that does not lie on the shelf."""

from collections.abc import Iterable, Iterator

from bezelbook.kinds.record import PART_KINDS, Named
from bezelbook.knowledge_base import KnowledgeBase


def to_buy(book: KnowledgeBase, things: Iterable[str | None]) -> tuple[str, ...]:
    """The names of those of these things, by id, that nobody counted on the shelf; each once, None is nothing."""
    wanted = dict.fromkeys(thing for thing in things if thing)
    return tuple(_name(book, thing) for thing in wanted if not _lies(book, thing))


def mounts_with(book: KnowledgeBase, mounts: Iterable[str]) -> Iterator[str]:
    """These mounts, by id, and what each needs with it; words that name no mount of the book stay as they are."""
    for mount in mounts:
        yield mount
        yield from (book.mounts[mount].needs_too if mount in book.mounts else ())


def _lies(book: KnowledgeBase, thing: str) -> bool:
    return any(stock.thing == thing and stock.count > 0 for stock in book.shelf.values())


def _name(book: KnowledgeBase, thing: str) -> str:
    found = (book.named(kind, thing) for kind in PART_KINDS)
    return next((one.name for one in found if isinstance(one, Named)), thing)
