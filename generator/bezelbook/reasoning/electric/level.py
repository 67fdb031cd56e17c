"""How many volts a factory amplifier was metered to give, loud."""

from collections.abc import Iterator
from typing import NamedTuple

from bezelbook.kinds.note.record import Metered
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.electric.amounts import between
from bezelbook.reasoning.electric.package import package_of
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.values.quantity import Quantity


class Level(NamedTuple):
    """The highest reading on an output, and the note that has it."""

    reads: Quantity
    note: str


def loudest(book: KnowledgeBase, vehicle: Vehicle, package: Build) -> Level | None:
    """The most that any output of one audio package was metered at; None when nobody metered one loud.

    A note that does not say which package it was made on tells nothing of any.
    """
    return max(_levels(book, vehicle, package), key=lambda level: between(level.reads).high, default=None)


def _levels(book: KnowledgeBase, vehicle: Vehicle, package: Build) -> Iterator[Level]:
    metered = (note for note in unreplaced(book.notes_of(vehicle.id)) if isinstance(note, Metered))
    for note in metered:
        here = package_of(vehicle, note.splits, note.year) == package
        yield from (Level(output.level, note.id) for output in note.channels if output.level and here)
