"""Whether some notes about one place can all be true as they are written."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from tests.simulator.box_world import Axis, World
from tests.simulator.notes import Content, Note, is_strong
from tests.simulator.possible.doors import DoorNotes
from tests.simulator.possible.linear import possible
from tests.simulator.possible.openings import OpeningNotes

Where = tuple[str, str]


@dataclass(frozen=True)
class Written:
    """A world and every note of its book."""

    world: World
    notes: Sequence[Note]

    def where(self, note: Note) -> Where | None:
        """The place that a note is about."""
        vehicle, place = note.content.get("vehicle"), note.content.get("place")
        return (str(vehicle), str(place)) if vehicle and place else None

    def strong_at(self, where: Where) -> list[Note]:
        """The strong notes that say something of a place, but those that another took the place of."""
        told = [note for note in self.notes if is_strong(note.content) and self._tells(note.content, where)]
        replaced = {note.content.get("replaces") for note in told}
        return [note for note in told if note.name not in replaced]

    def _tells(self, content: Content, where: Where) -> bool:
        """Whether it was made there, or on the other side and says that this one was measured the same."""
        vehicle, place = where
        if content.get("vehicle") != vehicle:
            return False
        doors = self.world.platform(vehicle).doors
        other = next((door.other for door in doors if door.place == place), None)
        there = content.get("place") == other and content.get("other_side") == "measured the same"
        return content.get("place") == place or (there and content["form"] == "measured")

    def possible(self, where: Where, notes: Iterable[tuple[str, Content]], also: Sequence[Axis] = ()) -> bool | None:
        """Whether some room agrees with all of this, `also` on axes of which the book was not told.

        None when that took too long to find out.
        """
        platform = self.world.platform(where[0])
        axes = tuple(axis for axis in platform.axes if axis in also or (counts(axis) and axis.bears(where[1])))
        told = list(notes)
        door = next((door for door in platform.doors if door.place == where[1]), None)
        if door is not None:
            return possible(DoorNotes(self.world, platform, door, axes, self.notes).clauses(told))
        opening = platform.opening(where[1])
        return possible(OpeningNotes(self.world, platform, opening, axes, self.notes).clauses(told))


def counts(axis: Axis) -> bool:
    """Whether the book takes a place's room to differ with an axis."""
    return axis.told in ("as it is", "between two years")
