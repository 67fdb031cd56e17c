"""Every look that would settle anything, the one first that settles most for its minutes."""

from collections.abc import Mapping

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import place_of
from bezelbook.reasoning.looks.bench_looks import bench_looks
from bezelbook.reasoning.looks.look import Look
from bezelbook.reasoning.looks.opening_looks import opening_looks
from bezelbook.reasoning.looks.pair import open_pairs
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
    still_open = {key: open_pairs(place) for key, place in places.items()}
    found = [look for key, place in places.items() for look in opening_looks(place, still_open[key])]
    found += bench_looks(book, places, [pair for pairs in still_open.values() for pair in pairs])
    return tuple(sorted(found, key=best_first))


def best_first(look: Look) -> tuple[object, ...]:
    """What settles most for its minutes comes first; what is left is the same each time."""
    todo = look.todo
    return -look.worth, todo.minutes, todo.vehicle or "", todo.place or "", todo.builds, todo.what
