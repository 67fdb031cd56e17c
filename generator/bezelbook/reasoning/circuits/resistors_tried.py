"""Which load resistors a shop tried on the cars of a vehicle, note by note."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from bezelbook.kinds.note.fitting import LoadResistor
from bezelbook.kinds.note.record import After
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.cars import cars_of
from bezelbook.reasoning.circuits.one_car import shared
from bezelbook.reasoning.circuits.said import strong
from bezelbook.reasoning.evidence import unreplaced


@dataclass(frozen=True, slots=True)
class Tried:
    """One resistor of one write-back."""

    note: After
    resistor: LoadResistor


def resistors_tried(book: KnowledgeBase, vehicle: str) -> list[Tried]:
    """Every load resistor of the write-backs of a vehicle that stand, in order of note."""
    notes = [note for note in unreplaced(book.notes_of(vehicle)) if isinstance(note, After) and strong(note)]
    return [Tried(note, one) for note in notes for one in note.resistors]


def tried_on_one_build(book: KnowledgeBase, vehicle: str) -> Iterator[tuple[Tried, Tried]]:
    """Pairs out of two notes of one place whose cars may be of one build, where the leads may be the same."""
    for one, other in combinations(resistors_tried(book, vehicle), 2):
        if one.note.id == other.note.id or one.note.place != other.note.place:
            continue
        across = set(one.resistor.across), set(other.resistor.across)
        apart = all(across) and not across[0] & across[1]
        cars = cars_of(book, book.vehicles[vehicle], one.note.place)
        if not apart and any(shared(cars, one.note, other.note, "amplifier", "circuits")):
            yield one, other
