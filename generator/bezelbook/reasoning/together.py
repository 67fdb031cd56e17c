"""Whether some room of an opening agrees with all of some notes, however many depths one of them leaves open."""

from collections.abc import Iterator
from dataclasses import replace

from bezelbook.kinds.note.record import Measured, RoomReading
from bezelbook.reasoning.claims import MOST_CASES
from bezelbook.reasoning.evidence import Standing, refused_reading
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.room import Rooms
from bezelbook.values.words import NINTHS


def can_be_true(rooms: Rooms, notes: tuple[Standing, ...]) -> bool:
    """Whether some room agrees with these notes, and still does with one depth more of those that are too many for it.

    Of a note that leaves open where it read one depth after the other, only the rest bounds a room: each may have been
    read anywhere, and all that together is too much to try out. Each of them alone is not.
    """
    return rooms.agreeing(notes).possible and all(
        rooms.agreeing(version if other is one else other for other in notes).possible
        for one in notes
        for version in _with_one_of_many(one)
    )


def _with_one_of_many(one: Standing) -> Iterator[Standing]:
    """A note with only one of the depths of which it does not say where; none of it where they are not too many."""
    if isinstance(one.note, Measured) and one.stack is not None:
        said = one.note.readings
        anywhere = [at for at, reading in enumerate(said) if _is_anywhere(reading, one.stack)]
        if len(NINTHS) ** len(anywhere) > MOST_CASES:
            for kept in anywhere:
                fewer = tuple(reading for at, reading in enumerate(said) if at == kept or at not in anywhere)
                yield replace(one, note=one.note.model_copy(update={"readings": fewer}))


def _is_anywhere(reading: RoomReading, stack: Stack) -> bool:
    return reading.of == "depth" and not reading.zones and refused_reading(reading, stack) is None
