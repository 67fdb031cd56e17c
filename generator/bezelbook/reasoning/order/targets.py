"""Which pieces have to be off for a place to be open: what every list has, what only some have, what is but a habit."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.kinds.note.record import Seen
from bezelbook.reasoning.evidence import job_key
from bezelbook.reasoning.order.graph import Befores, befores, closure
from bezelbook.reasoning.order.precedence import Before, habits, musts, shared_screws
from bezelbook.reasoning.order.step import Stands


@dataclass(frozen=True, slots=True)
class Targets:
    """The pieces that an order takes off, how each stands, and the habits that it leaves out.

    `lists` has the pieces that each independent job listed, in the order in which they came off.
    """

    stands: Mapping[str, Stands]
    habits: tuple[Before, ...]
    lists: tuple[tuple[str, ...], ...]

    def listed(self, piece: str) -> int:
        """How many of the lists have a piece."""
        return sum(piece in one for one in self.lists)

    @property
    def as_done(self) -> tuple[str, ...]:
        """The pieces as the oldest list has them, then what the next ones add."""
        return tuple(dict.fromkeys(piece for one in self.lists for piece in one))


def targets_at(notes: Sequence[Seen], place: str) -> Targets:
    """What these notes of a vehicle, oldest first, have coming off to open a place; nothing where nobody wrote any.

    A piece that some lists have and others have not stays in: a step too many costs minutes, one too few a clip. A
    habit is left out, unless something asks for the piece or it is the last of a list, which is what one came for.
    """
    here = [note for note in notes if note.place == place]
    graph = _graph(notes)
    lists = _lists(here)
    if not lists:
        return Targets(_layers(here, graph), (), ())
    by_habit = _by_habit(here, lists)
    kept = {piece for one in lists for piece in one} - by_habit
    off = closure(graph, kept)
    # What only some lists have may lie over nothing that all have: then nobody knows whether it is needed.
    needed = closure(graph, [piece for piece in off if all(piece in one for one in lists)])
    stands: dict[str, Stands] = {piece: "needed" if piece in needed else "asked" for piece in off}
    return Targets(stands, _left_out(notes, off, off | by_habit), lists)


def targets_for(notes: Sequence[Seen], piece: str) -> Targets:
    """What these notes of a vehicle have coming off to get one piece off; nothing where none names it."""
    named = {one for note in notes for one in _named(note)}
    if piece not in named:
        return Targets({}, (), ())
    off = closure(_graph(notes), [piece])
    stands: dict[str, Stands] = dict.fromkeys(off, "needed")
    return Targets(stands, _left_out(notes, off, off), ())


def _left_out(notes: Iterable[Seen], off: frozenset[str], then: frozenset[str]) -> tuple[Before, ...]:
    """The habits before these pieces that take off something which nothing asks for."""
    return tuple(one for one in habits(notes) if one.then in then and one.first not in off)


def _graph(notes: Iterable[Seen]) -> Befores:
    return befores((one.first, one.then) for one in musts(notes))


def _lists(here: Iterable[Seen]) -> tuple[tuple[str, ...], ...]:
    """Each independent job's list; two notes of one job make one list."""
    found: dict[object, list[str]] = {}
    for note in here:
        if note.pieces:
            found.setdefault(job_key(note), []).extend(off.piece for off in note.pieces)
    return tuple(tuple(dict.fromkeys(pieces)) for pieces in found.values())


def _by_habit(here: Iterable[Seen], lists: tuple[tuple[str, ...], ...]) -> set[str]:
    came_for = {one[-1] for one in lists}
    return {one.first for one in habits(here)} - came_for


def _layers(here: Sequence[Seen], graph: Befores) -> dict[str, Stands]:
    """The layers that were seen where nobody listed what came off; the lowest may be what one came for, or may not."""
    seen = closure(graph, {piece for note in here for piece in _named(note)})
    over_something = {first for then in seen for first in graph.get(then, frozenset())}
    return {piece: "needed" if piece in over_something else "a layer" for piece in seen}


def _named(note: Seen) -> Iterator[str]:
    """The pieces that a note names, in whatever way."""
    for overlap in note.lies_over:
        yield from (overlap.piece, overlap.over)
    for off in note.pieces:
        yield off.piece
        yield from (first.piece for first in off.first)
    for shared in shared_screws([note]):
        yield from shared.pieces
