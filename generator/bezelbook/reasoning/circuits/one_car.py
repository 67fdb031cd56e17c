"""Whether two notes of a car's wiring may be, or must be, of one and the same build."""

from collections.abc import Iterator, Sequence

from bezelbook.kinds.note.record import AnyNote
from bezelbook.kinds.vehicle.record import Subject
from bezelbook.reasoning.circuits.cars import Car


def shared(cars: Sequence[Car], ours: AnyNote, theirs: AnyNote, *subjects: Subject) -> Iterator[Car]:
    """The builds that both notes may be of, as far as builds differ in these subjects."""
    return (car for car in cars if car.may_be(ours, *subjects) and car.may_be(theirs, *subjects))


def must_be_one(cars: Sequence[Car], ours: AnyNote, theirs: AnyNote, *subjects: Subject) -> bool:
    """Whether both notes are of one build and of no other."""
    return any(car.is_alone(ours, *subjects) and car.is_alone(theirs, *subjects) for car in cars)
