"""What comes off first to reach a place or a piece, for each build that differs, as all its notes together have it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build, bearing_axes, builds
from bezelbook.reasoning.order.accounts import Account, accounts_of
from bezelbook.reasoning.order.fixings import Fixing, fixings
from bezelbook.reasoning.order.graph import Befores, befores, circles, reduced, untied, within
from bezelbook.reasoning.order.precedence import Before, Shared, musts, shared_screws
from bezelbook.reasoning.order.saying import Said, gathered
from bezelbook.reasoning.order.sequence import least_moves
from bezelbook.reasoning.order.step import Step, step_of
from bezelbook.reasoning.order.targets import Targets, targets_at, targets_for
from bezelbook.values.words import Safety


@dataclass(frozen=True, slots=True)
class Circle:
    """Pieces of which each is said to be off before the next, and the last before the first: argued over."""

    befores: tuple[Before, ...]

    @property
    def pieces(self) -> tuple[str, ...]:
        """The pieces, going round."""
        return tuple(one.first for one in self.befores)


@dataclass(frozen=True, slots=True)
class Removal:
    """An order for the builds it holds for, first step first; no steps means that nobody wrote what comes off.

    `over` are the pairs that a drawing of it needs: no more than from which the rest follows. `loose` and `hidden` were
    seen on the way there by somebody who did not say on which piece. `open_notes` do not say what build their car was.
    """

    builds: tuple[Build, ...]
    steps: tuple[Step, ...]
    over: tuple[tuple[str, str], ...]
    argued: tuple[Circle, ...]
    habits: tuple[Before, ...]
    loose: tuple[Fixing, ...]
    hidden: tuple[Said[str], ...]
    safety: Safety | None
    notes: tuple[str, ...]
    open_notes: tuple[str, ...]

    @property
    def written(self) -> bool:
        """Whether anybody wrote what comes off."""
        return bool(self.steps)

    @property
    def lists(self) -> int:
        """How many independent jobs listed what came off."""
        return self.steps[0].out_of if self.steps else 0


def removals_at(book: KnowledgeBase, vehicle: Vehicle, place: str) -> tuple[Removal, ...]:
    """The orders that open a place: one for all builds of which the notes say the same, in the vehicle's own order."""
    counting = accounts_of(book, vehicle).counting
    record = vehicle.places.get(place)
    found: list[Removal] = []
    for build in builds(vehicle, _axes(vehicle, place)):
        mine = _of_build(counting, build)
        notes = [one.note for one in mine]
        made = _removal(book, vehicle, mine, targets_at(notes, place), place, build)
        _add(found, replace(made, safety=record.safety if record else None), build)
    return tuple(found)


def removal_of(book: KnowledgeBase, vehicle: Vehicle, piece: str, build: Build = ()) -> Removal:
    """The order that gets one piece off a car of this build; a build that leaves axes out may be either on them."""
    mine = _of_build(accounts_of(book, vehicle).counting, build)
    made = _removal(book, vehicle, mine, targets_for([one.note for one in mine], piece), None, build)
    return replace(made, builds=(build,))


def _axes(vehicle: Vehicle, place: str) -> tuple[str, ...]:
    return bearing_axes(vehicle, place, "trim")


def _of_build(accounts: Sequence[Account], build: Build) -> list[Account]:
    return [one for one in accounts if one.may_be(build)]


def _add(found: list[Removal], made: Removal, build: Build) -> None:
    """Keep an order under the builds that share it."""
    for number, one in enumerate(found):
        if replace(one, builds=()) == made:
            found[number] = replace(one, builds=(*one.builds, build))
            return
    found.append(replace(made, builds=(build,)))


def _removal(
    book: KnowledgeBase, vehicle: Vehicle, mine: Sequence[Account], targets: Targets, place: str | None, build: Build
) -> Removal:
    notes = [one.note for one in mine]
    off = frozenset(targets.stands)
    all_musts = tuple(one for one in musts(notes) if {one.first, one.then} <= off)
    graph = within(befores((one.first, one.then) for one in all_musts), off)
    plain = untied(graph)
    sides = {piece: vehicle.trim[piece].side if piece in vehicle.trim else None for piece in off}
    order = least_moves(plain, sides, targets.as_done)
    here = [note for note in notes if note.place == place]
    used = [one for one in mine if one.note.place == place or _names_any(one.note, off, all_musts)]
    return Removal(
        builds=(),
        steps=tuple(_steps(book, vehicle, notes, targets, order, all_musts)),
        over=_over(plain, order),
        argued=tuple(_circle(circle, all_musts) for circle in circles(graph)),
        habits=targets.habits,
        loose=fixings(book, [(one, note.id) for note in here for one in note.fasteners]),
        hidden=gathered((note.hidden, note.id) for note in here if note.hidden),
        safety=None,
        notes=tuple(one.note.id for one in used),
        open_notes=tuple(one.note.id for one in used if one.leaves_open(build)),
    )


def _names_any(note: Seen, off: frozenset[str], among: Sequence[Before]) -> bool:
    return any(one.piece in off for one in note.pieces) or any(note.id in one.notes for one in among)


def _steps(
    book: KnowledgeBase,
    vehicle: Vehicle,
    notes: Sequence[Seen],
    targets: Targets,
    order: Sequence[str],
    among: Sequence[Before],
) -> list[Step]:
    screws = shared_screws(notes)
    return [
        step_of(
            book,
            vehicle,
            piece,
            notes,
            stands=targets.stands[piece],
            lists=(targets.listed(piece), len(targets.lists)),
            first=tuple(one for one in among if one.then == piece),
            shares=_shares(screws, piece),
        )
        for piece in order
    ]


def _shares(screws: Sequence[Shared], piece: str) -> tuple[str, ...]:
    return tuple(
        dict.fromkeys(one for screw in screws if piece in screw.pieces for one in screw.pieces if one != piece)
    )


def _over(plain: Befores, order: Sequence[str]) -> tuple[tuple[str, str], ...]:
    fewest = reduced(plain)
    return tuple((first, then) for then in order for first in order if first in fewest[then])


def _circle(pieces: tuple[str, ...], among: Sequence[Before]) -> Circle:
    pairs = pairwise((*pieces, pieces[0]))
    return Circle(tuple(next(one for one in among if (one.first, one.then) == pair) for pair in pairs))
