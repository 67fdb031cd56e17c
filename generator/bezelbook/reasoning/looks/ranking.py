"""Every look that would settle anything, the one first that settles most for its minutes."""

from collections.abc import Callable, Iterator, Mapping
from functools import cache

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import place_of
from bezelbook.reasoning.looks.imagined import Imagined
from bezelbook.reasoning.looks.look import Look, Promise, Todo, looks_of
from bezelbook.reasoning.looks.pair import Pair, open_pairs, times_asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.vocabulary import OPENINGS


def openings(book: KnowledgeBase) -> Mapping[tuple[str, str], Place]:
    """Every opening of the book that takes a box, by the ids of vehicle and place."""
    return {
        (vehicle.id, place): place_of(book, vehicle.id, place)
        for vehicle in book.vehicles.values()
        for place, record in vehicle.places.items()
        if record.kind in OPENINGS
    }


def looks(book: KnowledgeBase, places: Mapping[tuple[str, str], Place] | None = None) -> tuple[Look, ...]:
    """The looks worth taking, best first; `places` may be handed in where they were worked out already."""
    places = openings(book) if places is None else places

    @cache
    def weight(pair: Pair) -> int:
        return 1 + times_asked(book, pair)

    promises = (one for imagined in map(Imagined, places.values()) for one in _promises(imagined, weight))
    return tuple(sorted(looks_of(promises, weight), key=best_first))


def _promises(imagined: Imagined, weight: Callable[[Pair], int]) -> Iterator[tuple[Todo, Pair, Promise]]:
    questions = open_pairs(imagined.place)
    for pair, question in questions.items():
        yield from imagined.promises(pair, question)
        yield from imagined.asking(pair, question)
    yield from imagined.offering(questions, lambda pair: weight(pair) > 1)


def best_first(look: Look) -> tuple[object, ...]:
    """What settles most for its minutes comes first, then what settles most by itself; what is left is always the same.

    Of looks that pay only together, the one that may settle something alone may make the others unnecessary.
    """
    todo = look.todo
    where = todo.vehicle or "", todo.place or "", todo.builds
    return -look.worth, -look.expected, todo.minutes, *where, todo.what, todo.about or ""
