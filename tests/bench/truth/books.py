"""One book of a regime with what was found in it, and what is true of its notes."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from tests.bench.truth.fired import Fired, fired
from tests.bench.truth.limits import outside
from tests.simulator.box_world import World
from tests.simulator.changes import changing_doors, changing_openings
from tests.simulator.counter import Draw, Made, make
from tests.simulator.doors.draw import draw_door_world
from tests.simulator.draw_world import draw_world
from tests.simulator.falsehoods import CORRUPTED
from tests.simulator.leaving_out import FORGETFUL
from tests.simulator.notes import Content, Note, is_strong
from tests.simulator.possible.place import Where, Written
from tests.simulator.regimes import HONEST, Regime

Told = Sequence[tuple[str, Content]]
TRUE = (None, "told twice")
# Regime by name, how its worlds are drawn and how its notes are written.
REGIMES: dict[str, tuple[Regime, tuple[Draw, Draw]]] = {
    "honest": (HONEST, (draw_world, draw_door_world)),
    "corrupted": (CORRUPTED, (draw_world, draw_door_world)),
    "running change": (HONEST, (changing_openings, changing_doors)),
    "left out": (FORGETFUL, (draw_world, draw_door_world)),
}
# So many notes for each place of a book.
PER_PLACE = (1, 2, 4, 8)


@dataclass(frozen=True)
class Judged:
    """A made book, its findings, and the oracle of its notes."""

    regime: str
    made: Made
    written: Written
    fired: tuple[Fired, ...]

    @cached_property
    def by_name(self) -> dict[str, Note]:
        """Its notes by their file names."""
        return {note.name: note for note in self.made.notes}

    @cached_property
    def flagged(self) -> frozenset[str]:
        """The notes that a conflict or a slip names."""
        return frozenset(name for one in self.fired if one.flags for name in one.notes)

    @cached_property
    def strong(self) -> frozenset[str]:
        """The notes that somebody saw or measured to be so."""
        return frozenset(note.name for note in self.made.notes if is_strong(note.content))

    @cached_property
    def places(self) -> tuple[Where, ...]:
        """Every place there is."""
        return tuple(places(self.made.world))

    def false_at(self, where: Where) -> list[Note]:
        """The strong notes about a place that state a falsehood."""
        return [note for note in self.written.strong_at(where) if note.false not in TRUE]

    @cached_property
    def detectable(self) -> dict[str, bool]:
        """Whether each strong false note can be found out: by its number, or since no room agrees with it."""
        found: dict[str, bool] = {}
        for where in self.places:
            true: Told = [(one.name, one.content) for one in self.written.strong_at(where) if one.false in TRUE]
            for note in self.false_at(where):
                clash = self.written.possible(where, [*true, (note.name, note.content)]) is False
                clash = clash and self.written.possible(where, true) is not False
                found[note.name] = found.get(note.name, False) or clash or outside(note.content)
        return found

    def can_be_true(self, names: Sequence[str]) -> bool | None:
        """Whether these notes can all be true as they are written; None when they are not about one place."""
        notes = [self.by_name[name] for name in names]
        wheres = [where for where in map(self.written.where, notes) if where]
        if len(wheres) < len(notes):
            return None
        told = [(note.name, note.content) for note in notes]
        found = [self.written.possible(where, told) for where in dict.fromkeys(wheres)]
        return False if False in found else None if None in found else True


def places(world: World) -> Iterator[Where]:
    """Every place of a world by its vehicle and its name."""
    for platform in world.platforms:
        yield from ((platform.name, opening.place) for opening in platform.openings)
        yield from ((platform.name, door.place) for door in platform.doors)


def judged(seed: str, regime: str, number: int) -> Judged:
    """The book of a seed; by its number about openings or doors, with few notes for each place or many."""
    how, draws = REGIMES[regime]
    draw, per_place = draws[number % 2], PER_PLACE[number // 2 % len(PER_PLACE)]
    name = f"{seed} {regime} {number}"
    spots = len(list(places(make(name, how, 0, draw).world)))
    made = make(name, how, per_place * spots, draw)
    return Judged(regime, made, Written(made.world, made.notes), tuple(fired(made.findings)))
