"""Which builds of a car its wiring notes speak of, which notes count, and how to tell the builds from the seat."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any, TypeVar

from bezelbook.kinds.note.record import AnyNote, Bench
from bezelbook.kinds.vehicle.record import Subject, Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build, bearing_axes, builds, known_splits, matching
from bezelbook.reasoning.circuits.said import strong

T = TypeVar("T")

WIRING: tuple[Subject, ...] = ("plug", "circuits", "amplifier", "kept")


@dataclass(frozen=True)
class Car:
    """One place of one vehicle, in one build: the values of every split that bears on plugs or circuits there."""

    book: KnowledgeBase
    vehicle: Vehicle
    place: str
    build: Build
    # What was worked out of it; that depends on the book alone, so that keeping it changes nothing.
    kept: dict[tuple[Callable[..., Any], tuple[str, ...]], Any] = field(default_factory=dict, compare=False, repr=False)

    def once(self, work_out: Callable[..., T], *of: str) -> T:
        """What this function works out of this car and of these, asked once."""
        if (work_out, of) not in self.kept:
            self.kept[work_out, of] = work_out(self, *of)
        found: T = self.kept[work_out, of]
        return found

    @cached_property
    def notes(self) -> tuple[AnyNote, ...]:
        """The notes made at this place that no other note took the place of."""
        return standing_notes(self.book, self.vehicle.id, self.place)

    @cached_property
    def everywhere(self) -> tuple[AnyNote, ...]:
        """Those made at any place of the vehicle, this one first."""
        places = dict.fromkeys((self.place, *self.vehicle.places))
        return tuple(note for place in places for note in standing_notes(self.book, self.vehicle.id, place))

    def may_be(self, note: AnyNote, *subjects: Subject) -> bool:
        """Whether a note may have been made on a car of this build, as far as builds differ in these subjects."""
        return self._own(subjects) in self._cars(note, subjects)

    def is_alone(self, note: AnyNote, *subjects: Subject) -> bool:
        """Whether a note was made on a car of this build and of no other."""
        return self._cars(note, subjects) == (self._own(subjects),)

    def is_sure(self, note: AnyNote, *subjects: Subject) -> bool:
        """Whether a note counts for this build: it is strong, and was made on a car of this build and of no other."""
        return strong(note) and self.is_alone(note, *subjects)

    def _axes(self, subjects: tuple[Subject, ...]) -> tuple[str, ...]:
        bearing = {axis for subject in subjects for axis in bearing_axes(self.vehicle, self.place, subject)}
        return tuple(axis for axis in self.vehicle.splits if axis in bearing)

    def _own(self, subjects: tuple[Subject, ...]) -> Build:
        axes = self._axes(subjects)
        return tuple(pair for pair in self.build if pair[0] in axes)

    def _cars(self, note: AnyNote, subjects: tuple[Subject, ...]) -> tuple[Build, ...]:
        every = builds(self.vehicle, self._axes(subjects))
        if isinstance(note, Bench):
            return every
        return matching(every, known_splits(self.vehicle, note.splits, note.year)) or every


def standing_notes(book: KnowledgeBase, vehicle: str, place: str) -> tuple[AnyNote, ...]:
    """The notes made at a place that no strong note took the place of, in order of id."""
    notes = book.notes_at(vehicle, place)
    replaced = {note.replaces for note in notes if note.replaces and strong(note)}
    return tuple(note for note in notes if note.id not in replaced)


def cars_of(book: KnowledgeBase, vehicle: Vehicle, place: str, known: Mapping[str, str] | None = None) -> list[Car]:
    """Every build of a place's wiring that agrees with what is known, in the vehicle's own order."""
    bearing = {axis for subject in WIRING for axis in bearing_axes(vehicle, place, subject)}
    axes = tuple(axis for axis in vehicle.splits if axis in bearing)
    return [Car(book, vehicle, place, build) for build in matching(builds(vehicle, axes), known or {})]


def tells(vehicle: Vehicle, axes: tuple[str, ...]) -> str:
    """How to tell the values of these splits apart from the seat, in one line."""
    return "; ".join(_tells(vehicle, axes)) or "nobody has written how to tell"


def _tells(vehicle: Vehicle, axes: tuple[str, ...]) -> Iterator[str]:
    for axis in axes:
        for value, side in vehicle.splits[axis].values.items():
            if side.tell:
                yield f"{value}: {side.tell.removesuffix('.')}"
