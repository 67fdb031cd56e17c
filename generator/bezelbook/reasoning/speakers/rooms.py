"""The rooms for a speaker that a place may still have, given its notes: what fits in all of them, and what in none."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import cast

from bezelbook.kinds.note.record import Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.bounds import Constraint, Rise, Search, before_choices, nearest, numbers_of
from bezelbook.reasoning.extremes import Ends, ends_of
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

    def _system(self, extra: Iterable[Constraint], stacks: Iterable[SpeakerStack]) -> list[Constraint]:
        """What is known and assumed here and these bounds, with the ties between all numbers that occur in them."""
        constraints = [*self._claims, *self.assumed, *extra]
        cells = {cast("SpeakerCell", number) for number in numbers_of(constraints) if number is not None}
        return [*constraints, *self._ties(frozenset(cells), tuple(stacks))]

    def _ties(self, cells: frozenset[SpeakerCell], stacks: tuple[SpeakerStack, ...]) -> Sequence[Constraint]:
        """What always holds between these numbers, worked out once for each set of them."""
        found = self._tied.get((cells, stacks))
        if found is None:
            seen = (one.stack for one in self.notes if one.stack is not None)
            every, varying = (*seen, *self.through, *stacks), self._varying.values()
            found = structure(self.frame.book, set(cells), every, varying, holes_unread=self.by_yes)
            self._tied[cells, stacks] = found
        return found

    @cached_property
    def _tied(self) -> dict[tuple[frozenset[SpeakerCell], tuple[SpeakerStack, ...]], Sequence[Constraint]]:
        return {}

    def _consistent(self, extra: Iterable[Constraint], *stacks: SpeakerStack) -> bool:
        return Search().consistent(self._system(extra, stacks))

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
        named = [Rise(demand.cell, None, 0) for demand in wanted]  # which holds of every room
        ends = ends_of(before_choices(self._system(named, (setting.stack,))), [demand.cell for demand in wanted])
        return tuple(_span(ends[demand.cell], demand.shift) for demand in wanted)

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


def _span(ends: Ends, shift: int) -> RoomSpan:
    least, most = ends
    # Through something whose offset nobody knows, nothing at all is known.
    return RoomSpan(nearest(least) + shift if nearest(least) else 0, None if most is None else nearest(most) + shift)
