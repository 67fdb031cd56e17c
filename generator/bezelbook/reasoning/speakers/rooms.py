"""The rooms for a speaker that a place may still have, given its notes: what fits in all of them, and what in none."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import cast

from bezelbook.kinds.note.record import Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.bounds import Constraint, nearest, numbers_of
from bezelbook.reasoning.extremes import Ends
from bezelbook.reasoning.maximal import maximal_consistent
from bezelbook.reasoning.room_span import RoomSpan
from bezelbook.reasoning.speakers.cells import (
    SpeakerCell,
    SpeakerDemand,
    SpeakerFrame,
    SpeakerSetting,
    demands,
    frame_of,
    structure,
)
from bezelbook.reasoning.speakers.claims import claim, fit, misfit
from bezelbook.reasoning.speakers.evidence import SpeakerEvidence, SpeakerStanding, evidence_at
from bezelbook.reasoning.speakers.needs import SpeakerNeeds, needs_of_note
from bezelbook.reasoning.speakers.stacks import SpeakerStack
from bezelbook.reasoning.start import Start, Starts


@dataclass(frozen=True)
class SpeakerRooms:
    """Every room and every speaker's size that agrees with a set of standing notes at one place, and what is assumed.

    A speaker always fits when no such room refuses it, and never fits when no such room takes it. `by_yes` leaves out
    what a caliper said of the holes of mounts, so that only what went in shows anything.
    """

    frame: SpeakerFrame
    notes: tuple[SpeakerStanding, ...]
    assumed: tuple[Constraint, ...] = ()
    through: tuple[SpeakerStack, ...] = field(default=(), compare=False)
    by_yes: bool = False

    @cached_property
    def tried(self) -> dict[SpeakerStanding, SpeakerNeeds]:
        """What the notes that tried something were about."""
        return {one: needs_of_note(self.frame.book, one.note) for one in self.notes if isinstance(one.note, Tried)}

    @cached_property
    def _varying(self) -> dict[str, SpeakerNeeds]:
        """The speakers whose sizes are not exact: one number for every note about them."""
        return {needs.key: needs for needs in self.tried.values() if not needs.exact}

    @cached_property
    def _claims(self) -> tuple[Constraint, ...]:
        keys = frozenset(self._varying)
        return tuple(bound for one in self.notes for bound in claim(self.frame, one, keys))

    @cached_property
    def _begun(self) -> Start:
        """What the notes say and what is assumed, solved as far as it goes without any question."""
        return Start((*self._claims, *self.assumed))

    @cached_property
    def _starts(self) -> Starts:
        return Starts()

    def _start(self, asked: frozenset[SpeakerCell], *stacks: SpeakerStack) -> Start:
        """The same with the ties between all numbers that occur there and these, solved once for all bounds on them."""
        return self._starts.of((asked, stacks), lambda: self._begun.adding(self._ties(asked, stacks)))

    def _ties(self, asked: frozenset[SpeakerCell], stacks: tuple[SpeakerStack, ...]) -> Sequence[Constraint]:
        """What always holds between these numbers and those of the notes."""
        seen = (one.stack for one in self.notes if one.stack is not None)
        every, varying = (*seen, *self.through, *stacks), self._varying.values()
        cells = {*_cells(self._claims), *_cells(self.assumed), *asked}
        return structure(self.frame.book, cells, every, varying, holes_unread=self.by_yes)

    def _consistent(self, extra: Sequence[Constraint], *stacks: SpeakerStack) -> bool:
        return self._start(_cells(extra), *stacks).agrees(extra)

    @cached_property
    def possible(self) -> bool:
        """Whether any room at all agrees with every note."""
        return self._consistent(())

    def refuses(self, needs: SpeakerNeeds, setting: SpeakerSetting, wanted: Sequence[SpeakerDemand]) -> bool:
        """Whether some room that agrees with the notes falls short of one of these demands."""
        bound = misfit(wanted, needs, frozenset(self._varying))
        return bool(wanted) and (not bound or self._consistent(bound, setting.stack))

    def takes(self, needs: SpeakerNeeds, setting: SpeakerSetting) -> bool:
        """Whether some room that agrees with the notes meets every demand."""
        wanted = fit(demands(self.frame, needs, setting), needs, frozenset(self._varying))
        return self._consistent(wanted, setting.stack)

    def spans(self, setting: SpeakerSetting, wanted: Sequence[SpeakerDemand]) -> tuple[RoomSpan, ...]:
        """The room that each demand meets, in nanometres, over every room that agrees with the notes."""
        ends = self._ends(tuple(demand.cell for demand in wanted), setting.stack)
        return tuple(_span(ends[demand.cell], demand.shift) for demand in wanted)

    def _ends(self, cells: tuple[SpeakerCell, ...], stack: SpeakerStack) -> Mapping[SpeakerCell, Ends]:
        if (cells, stack) not in self._found:
            self._found[cells, stack] = self._start(frozenset(cells), stack).ends(cells)
        return self._found[cells, stack]

    @cached_property
    def _found(self) -> dict[tuple[tuple[SpeakerCell, ...], SpeakerStack], Mapping[SpeakerCell, Ends]]:
        return {}

    def agreeing(self, notes: Iterable[SpeakerStanding]) -> "SpeakerRooms":
        """The rooms that agree with these notes instead, nothing assumed."""
        return SpeakerRooms(self.frame, tuple(notes))

    @cached_property
    def fitted(self) -> "SpeakerRooms":
        """The rooms that agree with what went in, without how much was to spare, and with nothing that was read."""
        yeses = tuple(one.without_gap for one in self.notes if one.says == "goes in")
        return SpeakerRooms(self.frame, yeses, by_yes=True)

    @cached_property
    def measured(self) -> "SpeakerRooms":
        """The rooms that agree with every reading, and with every note that says by how much."""
        return self.agreeing(one for one in self.notes if one.says == "reading" or one.has_gap)


@dataclass(frozen=True)
class SpeakerPlace:
    """One place for a speaker with its evidence, and the rooms that agree with each largest consistent set of notes."""

    frame: SpeakerFrame
    evidence: SpeakerEvidence

    @cached_property
    def accounts(self) -> tuple[SpeakerRooms, ...]:
        """One set of rooms for each set of notes that can all be true together and cannot be added to."""
        rooms = SpeakerRooms(self.frame, self.evidence.standing)
        sets = maximal_consistent(rooms.notes, lambda notes: rooms.agreeing(notes).possible)
        return tuple(map(rooms.agreeing, sets))


def speaker_place_of(book: KnowledgeBase, vehicle: str, place: str) -> SpeakerPlace:
    """A place with its evidence, ready to be asked about. The vehicle must be in the book."""
    car = book.vehicles[vehicle]
    evidence = evidence_at(book, car, place)
    return SpeakerPlace(frame_of(book, car, place, [one.note for one in evidence.standing]), evidence)


def _cells(constraints: Iterable[Constraint]) -> frozenset[SpeakerCell]:
    """Every number that occurs in these bounds; at a place they are all cells."""
    return frozenset(cast("SpeakerCell", number) for number in numbers_of(constraints) if number is not None)


def _span(ends: Ends, shift: int) -> RoomSpan:
    least, most = nearest(ends[0]), ends[1]
    # Through something whose offset nobody knows, nothing at all is known.
    return RoomSpan(least + shift if least else 0, None if most is None else nearest(most) + shift)
