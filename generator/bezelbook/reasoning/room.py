"""The rooms a place may still have, given its standing notes: what fits in all of them, and what in none."""

from collections.abc import Hashable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property, partial

from bezelbook.reasoning.bounds import Case, Constraint, Leaf, numbers_of
from bezelbook.reasoning.cells import Cell, Demand, Frame, Setting, cells_met, demands, structure, structure_met
from bezelbook.reasoning.claims import fit, misfit, one_of
from bezelbook.reasoning.evidence import Evidence, Standing
from bezelbook.reasoning.exits import Exits, may_leave
from bezelbook.reasoning.extremes import Ends
from bezelbook.reasoning.maximal import maximal_consistent
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.needs import NEEDS, Needs
from bezelbook.reasoning.start import Start, Starts
from bezelbook.reasoning.told import Told
from bezelbook.reasoning.tried import TriedThings


@dataclass(frozen=True)
class Rooms:
    """Every room and every part size that agrees with a set of standing notes at one place.

    All questions are answered by consistency: a part always fits when no such room refuses it, never fits when no
    such room takes it. What is `assumed` beside the notes may speak of the room seen `through` more mounts. `by_yes`
    leaves out what a caliper said of the holes of mounts, so that only what went in shows anything.
    """

    frame: Frame
    notes: tuple[Standing, ...]
    assumed: tuple[Constraint, ...] = ()
    through: tuple[Stack, ...] = ()
    told: Told | None = field(default=None, compare=False)
    begun: Starts = field(default_factory=Starts, compare=False, repr=False)
    by_yes: bool = False

    @cached_property
    def _told(self) -> Told:
        return self.told or Told(self.frame)

    @property
    def _known(self) -> Hashable:
        """What everything said of these rooms depends on, beside the question."""
        return self.notes, self.assumed, self.through, self.by_yes

    @cached_property
    def _tried(self) -> TriedThings:
        return TriedThings(self.notes, self._told)

    def key_of(self, one: Standing) -> str | None:
        """Whose sizes a note is about; None for a reading."""
        return self._tried.key_of(one)

    @cached_property
    def _stacks(self) -> tuple[Stack, ...]:
        return (*(one.stack for one in self.notes if one.stack is not None), *self.through)

    def _claims(self, varying: frozenset[str], exits: Exits | None) -> Iterator[Constraint]:
        split = exits is not None and self._tried.tries_exits
        for one in self.notes:
            yield from self._told.claim(one, varying, exits or {}, split=split)

    @cached_property
    def _starts(self) -> Starts:
        return Starts()

    def _start(self, needs: Needs | None, setting: Setting | None, exits: Exits | None) -> Start:
        """What is said here, with every number that a question in this setting could ask about.

        The notes alone are solved once for all rooms that were `begun` together, whatever else those assume.
        """
        varying = self._tried.varying | self._shared(needs)
        key: Hashable = (varying, None if exits is None else tuple(exits.items()), self._assumed_cells, self.through)
        start = notes = self.begun.of(key, lambda: Start(self._system(varying, exits)))
        if setting:
            more = partial(structure_met, setting, notes.numbers, self._stacks, holes_unread=self.by_yes)
            key = (key, setting.meets)
            start = self.begun.of(key, lambda: notes.adding(more()))
        return self._starts.of(key, lambda: start.adding(self.assumed)) if self.assumed else start

    @cached_property
    def _assumed_cells(self) -> frozenset[Cell]:
        return frozenset(_cells(self.assumed))

    def _system(self, varying: frozenset[str], exits: Exits | None) -> list[Constraint]:
        """The notes' bounds, and the structure between every number that occurs in them or in what is assumed."""
        constraints = list(self._claims(varying, exits))
        vary = tuple(self._tried.parts[key] for key in sorted(varying))
        cells = {*_cells(constraints), *self._assumed_cells}
        return [*constraints, *structure(cells, self._stacks, vary, holes_unread=self.by_yes)]

    def assuming(self, bounds: Iterable[Constraint], through: tuple[Stack, ...] = ()) -> "Rooms":
        """The rooms of the same notes in which these bounds hold as well."""
        return replace(self, assumed=(*self.assumed, *bounds), through=(*self.through, *through), told=self._told)

    def reading(self, one: Standing) -> "Rooms":
        """The rooms of the same notes in which somebody also read this: as if it were one of them, in less time."""
        return self.assuming(self._told.claim(one, frozenset(), {}, split=False))

    def _agrees(self, extra: Iterable[Constraint], needs: Needs | None, setting: Setting | None, exits: Exits) -> bool:
        """Whether some room that agrees with the notes satisfies these bounds as well."""
        return self._start(needs, setting, exits).agrees(extra)

    @cached_property
    def possible(self) -> bool:
        """Whether any room at all agrees with every note."""
        return self._told.once(("possible", self._known), self._possible)

    def _possible(self) -> bool:
        return any(self._agrees((), None, None, exits) for exits in self._tried.exits(None, None))

    def refuses(self, needs: Needs, setting: Setting, wanted: Sequence[Demand]) -> bool:
        """Whether some room that agrees with the notes falls short of one of these demands."""
        question = ("refuses", self._known, needs, setting, tuple(wanted))
        return self._told.once(question, lambda: self._refuses(needs, setting, wanted))

    def _refuses(self, needs: Needs, setting: Setting, wanted: Sequence[Demand]) -> bool:
        return any(
            self._falls_short(needs, setting, [one for one in wanted if may_leave(one, needs, exits)], exits)
            for exits in self._tried.exits(needs, setting)
        )

    def _falls_short(self, needs: Needs, setting: Setting, wanted: Sequence[Demand], exits: Exits) -> bool:
        bound = misfit(wanted, needs, self._shared(needs))
        return not bound or self._agrees(bound, needs, setting, exits)

    def takes(self, needs: Needs, setting: Setting) -> bool:
        """Whether some room that agrees with the notes meets every demand, wherever the plug may leave."""
        return self._told.once(("takes", self._known, needs, setting), lambda: self._takes(needs, setting))

    def _takes(self, needs: Needs, setting: Setting) -> bool:
        sure, plug = demands(self.frame, needs, setting)
        for exits in self._tried.exits(needs, setting):
            ways = [(*sure, one) for one in plug if may_leave(one, needs, exits)] if plug else [sure]
            extra = one_of(Case(fit(way, needs, self._shared(needs))) for way in ways)
            if self._agrees(extra, needs, setting, exits):
                return True
        return False

    def _shared(self, needs: Needs | None) -> frozenset[str]:
        """The parts whose sizes a question shares with the notes, so that they count as the same thing there."""
        keys = {needs.key_of(need) for need in NEEDS} if needs else set()
        return frozenset(key for key in keys if key in self._tried.parts and not self._tried.parts[key].exact)

    def leaves(self, setting: Setting) -> list[Leaf]:
        """The least solutions of the notes' bounds, with all that a setting meets: every choice, for every exit."""
        starts = (self._start(None, setting, exits) for exits in self._tried.exits(None, None))
        return [leaf for start in starts for leaf in start.leaves(eager=True)]

    def ends(self, setting: Setting) -> Mapping[Cell, Ends]:
        """How small and how large each number can be that a setting meets."""
        question = ("ends", self._known, setting.meets)
        return self._told.once(question, lambda: self._start(None, setting, None).ends(cells_met(setting)))

    def agreeing(self, notes: Iterable[Standing]) -> "Rooms":
        """The rooms that agree with these notes instead, nothing assumed."""
        return Rooms(self.frame, tuple(notes), told=self._told)

    @cached_property
    def alone(self) -> Mapping[Standing, "Rooms"]:
        """For each note the rooms that agree with it by itself."""
        return {one: self.agreeing((one,)) for one in self.notes}

    def only(self, *says: str) -> "Rooms":
        """The rooms that agree with those notes alone that say one of these things."""
        return self.agreeing(one for one in self.notes if one.says in says)

    def fitted(self) -> "Rooms":
        """The rooms that agree with what went in and with nothing that was read; by how much it did is a reading."""
        yeses = (one for one in self.notes if one.says == "goes in")
        return self._agreeing_once(tuple(self._told.without_gap(one) for one in yeses), by_yes=True)

    def measured(self) -> "Rooms":
        """The rooms that agree with every reading, and with every note that says by how much."""
        return self._agreeing_once(tuple(one for one in self.notes if one.says == "reading" or one.has_gap))

    def _agreeing_once(self, notes: tuple[Standing, ...], *, by_yes: bool = False) -> "Rooms":
        """The same ones each time, so that what was begun for them is kept as well."""
        made = partial(Rooms, self.frame, notes, told=self._told, by_yes=by_yes)
        return self._told.once(("rooms", notes, by_yes), made)


@dataclass(frozen=True)
class Place:
    """One place with its evidence, and the rooms that agree with each largest consistent set of its notes."""

    frame: Frame
    evidence: Evidence

    @cached_property
    def all_notes(self) -> Rooms:
        """The rooms that agree with every standing note, if there are any."""
        return Rooms(self.frame, self.evidence.standing)

    @cached_property
    def accounts(self) -> tuple[Rooms, ...]:
        """One set of rooms for each set of notes that can all be true together and cannot be added to.

        One account means that nothing is argued over here.
        """
        rooms = self.all_notes
        sets = maximal_consistent(rooms.notes, lambda notes: rooms.agreeing(notes).possible)
        return tuple(map(rooms.agreeing, sets))


def _cells(constraints: Iterable[Constraint]) -> Iterable[Cell]:
    """Every number that occurs in these bounds; at a place they are all cells."""
    return (cell for cell in numbers_of(constraints) if isinstance(cell, Cell))
