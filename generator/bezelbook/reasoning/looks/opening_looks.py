"""The looks that an opening invites: what nobody read, what a note left blank, and what its notes argue over."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.evidence import Standing, standing_of
from bezelbook.reasoning.looks.look import CHASSIS, Look, Todo, look_of
from bezelbook.reasoning.looks.pair import Pair, is_firm
from bezelbook.reasoning.looks.readings import TRIED, Unread, read_as, unread
from bezelbook.reasoning.question import Asked, usual_stacks
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.values.listed import listed
from bezelbook.values.words import NINTHS

FRONT, DEPTH = "width and height of the opening", "depth from the sub-dash face"
CALIPER, GAUGE = "caliper", "depth gauge"
EACH_MINUTES = 2
ASK_MINUTES = 1
OFFER_MINUTES = 5


def opening_looks(place: Place, still_open: Mapping[Pair, Asked]) -> Iterator[Look]:
    """Every look at a place that may settle any of its open pairs."""
    for build in place.frame.builds:
        mine = {pair: question for pair, question in still_open.items() if pair.build == build}
        if mine:
            yield from _readings(place, build, mine)
    yield from _blanks(place, still_open)
    yield from _argument(place, still_open)


def _readings(place: Place, build: Build, pairs: Mapping[Pair, Asked]) -> Iterator[Look]:
    """Reading the front, reading the depth, and doing both in one go."""
    blank = unread(place, build)
    front = [one for one in blank if one.ninth is None]
    depth = [one for one in blank if one.ninth is not None]
    ways = [
        (f"{listed([one.size for one in front])} of the opening", CALIPER, front) if front else None,
        (f"{DEPTH}: {_where(depth)}", GAUGE, depth) if depth else None,
        (f"{FRONT}, and {DEPTH}: {_where(depth)}", f"{CALIPER} and {GAUGE}", blank) if front and depth else None,
    ]
    for what, tool, sizes in (way for way in ways if way):
        minutes = EACH_MINUTES * (2 if sizes is blank else 1)
        todo = Todo(place.frame.vehicle.id, place.frame.place, (build,), what, tool, minutes, CHASSIS)
        yield from _one(place, todo, [_with(place, build, sizes, number) for number in range(TRIED)], pairs)


def _where(depth: Sequence[Unread]) -> str:
    if len(depth) == len(NINTHS):
        return "all nine ninths"
    return listed([str(one.ninth) for one in depth])


def _with(place: Place, build: Build, sizes: Sequence[Unread], number: int) -> list[Rooms]:
    """The accounts of a place that agree with what somebody read. Width and depth do not go up and down together."""
    numbers = {"width": number, "height": (2 * number) % TRIED, "depth": (3 * number + 1) % TRIED}
    note = read_as(place, build, sizes, numbers)
    read = standing_of(place.frame.book, place.frame.vehicle, note)
    return [found for rooms in place.accounts if (found := rooms.reading(read)).possible]


def _blanks(place: Place, pairs: Mapping[Pair, Asked]) -> Iterator[Look]:
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
            )
            yield from _one(place, todo, [_instead(place, one, way) for way in ways], pairs)


def _could_be(place: Place, one: Standing) -> tuple[str, list[Standing]] | None:
    if one.stack is None:
        stacks = usual_stacks(place.frame, place.evidence, one.builds)
        return "which mounts were used", [replace(one, stack=stack) for stack in stacks]
    if len(one.builds) > 1:
        return "which build the car was", [replace(one, builds=(build,)) for build in one.builds]
    return None


def _by(note: AnyNote) -> str:
    return f"{note.author or 'somebody'}, {note.date or 'no date'}"


def _instead(place: Place, one: Standing, other: Standing) -> list[Rooms]:
    """The accounts of a place once a note says more."""
    said = (tuple(other if each is one else each for each in rooms.notes) for rooms in place.accounts)
    return [found for notes in said if (found := place.all_notes.agreeing(notes)).possible]


def _argument(place: Place, pairs: Mapping[Pair, Asked]) -> Iterator[Look]:
    """Offering it up again where notes cannot all be true: one account or the other turns out right."""
    accounts = place.accounts
    if len(accounts) == 1:
        return
    doubtful = [one for one in place.evidence.standing if any(one not in rooms.notes for rooms in accounts)]
    what = f"who is right: {listed([_by(one.note) for one in doubtful], 'or')}"
    tool = "offer it up again, and read the room"
    todo = Todo(place.frame.vehicle.id, place.frame.place, (), what, tool, OFFER_MINUTES, CHASSIS)
    yield from _one(place, todo, [[rooms] for rooms in accounts], pairs)


def _one(place: Place, todo: Todo, ways: Sequence[Sequence[Rooms]], pairs: Mapping[Pair, Asked]) -> Iterator[Look]:
    """A look by its outcomes, each the accounts that would be left; one that leaves none is not possible any more."""
    settled = [[pair for pair, question in pairs.items() if is_firm(question, way)] for way in ways if way]
    look = look_of(place.frame.book, todo, settled)
    if look:
        yield look
