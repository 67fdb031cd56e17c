"""The looks that an opening invites: what nobody read, what a note left blank, and what its notes argue over."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from functools import partial

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.evidence import Standing
from bezelbook.reasoning.looks.look import CHASSIS, Todo
from bezelbook.reasoning.looks.met import Spot
from bezelbook.reasoning.looks.readings import Unread
from bezelbook.reasoning.looks.way import Way
from bezelbook.reasoning.question import usual_stacks
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.values.listed import listed
from bezelbook.values.ninths import ninths_said
from bezelbook.values.span import Span
from bezelbook.values.words import NINTHS

FRONT, DEPTH = "{} of the opening", "depth from the sub-dash face: {}"
CALIPER, GAUGE = "caliper", "depth gauge"
EACH_MINUTES = 2
ASK_MINUTES = 1
OFFER_MINUTES = 5
Accounts = tuple[Rooms, ...]


def reading_ways(place: Place, build: Build, blank: Sequence[Unread]) -> tuple[Way, ...]:
    """Reading what is blank of the front of a build of an opening, and of its depth."""
    front = [one for one in blank if one.ninth is None]
    depth = [one for one in blank if one.ninth is not None]
    ways = []
    if front:
        todo = _todo(place, build, FRONT.format(listed([one.size for one in front])), CALIPER)
        ways.append(Way(todo, partial(_told, front)))
    if depth:
        ways.append(Way(_todo(place, build, DEPTH.format(_where(depth)), GAUGE), partial(_told, depth)))
    return tuple(ways)


def _told(sizes: Sequence[Unread], number: int) -> Mapping[Spot, Span]:
    return {one.ninth or one.size: one.reading(number) for one in sizes}


def _todo(place: Place, build: Build, what: str, tool: str) -> Todo:
    return Todo(place.frame.vehicle.id, place.frame.place, (build,), what, tool, EACH_MINUTES, CHASSIS)


def _where(depth: Sequence[Unread]) -> str:
    if len(depth) == len(NINTHS):
        return "all nine ninths"
    return ninths_said(one.ninth for one in depth if one.ninth is not None)


def asking_ways(place: Place) -> Iterator[tuple[Todo, tuple[Accounts, ...]]]:
    """Asking the author of a note which build his car was, or which mounts he used."""
    for one in place.evidence.standing:
        asks = _could_be(place, one)
        if asks:
            what, ways = asks
            todo = Todo(
                place.frame.vehicle.id,
                place.frame.place,
                (),
                f"{what} in the note of {_by(one.note)}",
                f"ask {one.note.author or 'its author'}",
                ASK_MINUTES,
                CHASSIS,
                one.note.id,
            )
            yield todo, tuple(_instead(place, one, way) for way in ways)


def _could_be(place: Place, one: Standing) -> tuple[str, list[Standing]] | None:
    if one.stack is None:
        stacks = usual_stacks(place.frame, place.evidence, one.builds)
        return "which mounts were used", [replace(one, stack=stack) for stack in stacks]
    if len(one.builds) > 1:
        return "which build the car was", [replace(one, builds=(build,)) for build in one.builds]
    return None


def _by(note: AnyNote) -> str:
    return f"{note.author or 'somebody'}, {note.date or 'no date'}"


def _instead(place: Place, one: Standing, other: Standing) -> Accounts:
    """The accounts of a place once a note says more."""
    said = (tuple(other if each is one else each for each in rooms.notes) for rooms in place.accounts)
    return tuple(found for notes in said if (found := place.all_notes.agreeing(notes)).possible)


def argument_ways(place: Place) -> Iterator[tuple[Todo, tuple[Accounts, ...]]]:
    """Offering it up again where notes cannot all be true: one account or the other turns out right."""
    accounts = place.accounts
    if len(accounts) == 1:
        return
    doubtful = [one for one in place.evidence.standing if any(one not in rooms.notes for rooms in accounts)]
    what = f"who is right: {listed([_by(one.note) for one in doubtful], 'or')}"
    tool = "offer it up again, and read the room"
    todo = Todo(place.frame.vehicle.id, place.frame.place, (), what, tool, OFFER_MINUTES, CHASSIS)
    yield todo, tuple((rooms,) for rooms in accounts)
