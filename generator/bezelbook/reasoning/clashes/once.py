"""What was found of a book's place, worked out once however many rules ask for it."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache, wraps
from typing import TypeVar

from bezelbook.knowledge_base import KnowledgeBase

T = TypeVar("T")
# As many places as a big book has; one more is worked out again.
MOST_PLACES = 1000


@dataclass(frozen=True)
class _TheVery:
    """A book by identity: two that hold the same are two here, and one is kept alive as long as it is known by."""

    book: KnowledgeBase

    def __hash__(self) -> int:
        return id(self.book)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _TheVery) and self.book is other.book


def once_a_place(find: Callable[[KnowledgeBase, str, str], T]) -> Callable[[KnowledgeBase, str, str], T]:
    """The same function of a book, a vehicle and a place, which must depend on nothing else."""

    @lru_cache(maxsize=MOST_PLACES)
    def kept(book: _TheVery, vehicle: str, place: str) -> T:
        return find(book.book, vehicle, place)

    @wraps(find)
    def found(book: KnowledgeBase, vehicle: str, place: str) -> T:
        return kept(_TheVery(book), vehicle, place)

    return found
