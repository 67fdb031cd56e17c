"""The single things that a question or the book left blank, any one of which would make the answer a yes."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from bezelbook.reasoning.bounds import Constraint, Rise, exactly
from bezelbook.reasoning.cells import Demand, Setting, demands
from bezelbook.reasoning.evidence import ANY_CUT, Standing
from bezelbook.reasoning.needs import Needs, at_its_word
from bezelbook.reasoning.outlook import clearance, outlook
from bezelbook.reasoning.question import Asked, open_axes
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.reasoning.room_span import room_spans
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_length
from bezelbook.values.words import NINTHS


@dataclass(frozen=True, slots=True)
class Condition:
    """What would make it a yes, to be read after "goes in if", and how to find out, in the shop's words.

    `split` names the axis and value when the condition is a build; `narrowed` is the question with the condition
    filled in, when it is one that a question could have said.
    """

    words: str
    look: str
    split: tuple[str, str] | None = None
    narrowed: Asked | None = None


def conditions(place: Place, question: Asked) -> Iterator[Condition]:
    """Every single thing that would do, the cheapest to find out first."""
    yield from _builds(place, question)
    yield from _mountings(place, question)
    yield from _printed(place, question)
    yield from _plug(place, question)
    yield from _unmeasured(place, question, deep=True)
    yield from _unmeasured(place, question, deep=False)
    yield from _unsaid(place, question)
    yield from _cuts(place, question)


def always(place: Place, question: Asked) -> bool:
    """Whether the part fits in every room of every account."""
    return all(outlook(rooms, question.needs, question.settings) == "always" for rooms in place.accounts)


def _builds(place: Place, question: Asked) -> Iterator[Condition]:
    vehicle = place.frame.vehicle
    for axis in open_axes(vehicle, place.frame.place, question.builds):
        for value, split in vehicle.splits[axis].values.items():
            cars = tuple(build for build in question.builds if dict(build)[axis] == value)
            narrowed = question.narrowed(builds=cars)
            if cars and always(place, narrowed):
                tell = split.tell or "nobody has written how to tell"
                yield Condition(f"the {axis} is {value}", f"how to tell: {tell}", (axis, value), narrowed)


def _mountings(place: Place, question: Asked) -> Iterator[Condition]:
    for stack in question.stacks:
        narrowed = question.narrowed(stacks=(stack,))
        if always(place, narrowed):
            yield Condition(f"it is fitted with {stack.words}", "choose the mount", narrowed=narrowed)


def _printed(place: Place, question: Asked) -> Iterator[Condition]:
    if question.needs.printed and always(place, question.narrowed(needs=at_its_word(question.needs))):
        figures = ", ".join(f"{need} {show_length(size)}" for need, size in question.needs.printed.items())
        narrowed = question.narrowed(needs=at_its_word(question.needs))
        yield Condition(
            f"its printed sizes are true ({figures})", "put a caliper on it, 2 min on the bench", narrowed=narrowed
        )


def _plug(place: Place, question: Asked) -> Iterator[Condition]:
    needs, body = question.needs, question.needs.spans["depth"].high
    if "plug" not in needs.asked or needs.plug_over_body.high is not None or body is None:
        return
    spans = dict(needs.spans) | {"plug": needs.spans["depth"]}
    unplugged = question.narrowed(needs=replace(needs, key=f"{needs.key} without plug", spans=spans))
    if always(place, unplugged):
        room = _plug_room(place, unplugged, body)
        least = min(room.values())
        tight = [ninth for ninth in NINTHS if room.get(ninth) == least]
        roomier = max(room.values())
        words = f"its plug and bend need no more than {show_length(least)}"
        if roomier > least:
            words += f" (up to {show_length(roomier)} if it does not leave at the {listed(tight)})"
        yield Condition(words, "plug it in on the bench and rule it, 3 min", narrowed=unplugged)


def _plug_room(place: Place, question: Asked, body: int) -> dict[str, int]:
    """The nanometres left behind a body so deep at each ninth where the plug may leave."""
    room: dict[str, int] = {}
    for rooms in place.accounts:
        for setting in question.settings:
            _, plug = demands(rooms.frame, question.needs, setting)
            for demand, found in zip(plug, room_spans(rooms, setting, plug), strict=True):
                left = found.least - body - clearance(rooms.frame, "plug")
                room[str(demand.ninth)] = min(left, room.get(str(demand.ninth), left))
    return room


def _unmeasured(place: Place, question: Asked, *, deep: bool) -> Iterator[Condition]:
    """All ninths that nobody measured count as one thing; so do the width and height of the hole."""
    wanted = {
        demand: enough
        for rooms in place.accounts
        for setting in question.settings
        for demand, enough in _unknown_room(rooms, question.needs, setting, deep=deep)
    }
    assumed = [Rise(demand.cell, None, exactly(enough - demand.shift)) for demand, enough in wanted.items()]
    if not assumed or not _always_assuming(place, question, assumed):
        return
    if deep:
        ninths = [ninth for ninth in NINTHS if any(demand.ninth == ninth for demand in wanted)]
        words = f"it is at least {show_length(max(wanted.values()))} deep{_at(ninths)}"
        yield Condition(words, f"depth gauge from {_faces(question)}, 2 min with the hole open")
    else:
        sizes = sorted({f"{demand.need} at least {show_length(enough)}" for demand, enough in wanted.items()})
        yield Condition(
            f"the opening is clear for it: {', '.join(sizes)}", "caliper at three points, 2 min with the hole open"
        )


def _unknown_room(rooms: Rooms, needs: Needs, setting: Setting, *, deep: bool) -> Iterator[tuple[Demand, int]]:
    """The demands of a known size that nothing so far meets or refuses, with the room that is certainly enough.

    That room is seen from where the thing sits.
    """
    sure, plug = demands(rooms.frame, needs, setting)
    wanted = [demand for demand in sure + plug if (demand.ninth is not None) == deep]
    for demand, room in zip(wanted, room_spans(rooms, setting, wanted), strict=True):
        high = needs.spans[demand.need].high
        enough = None if high is None else high + clearance(rooms.frame, demand.need)
        if enough is not None and room.most is None and room.least < enough:
            yield demand, enough


def _faces(question: Asked) -> str:
    """From where a depth is measured that a thing has with these mounts."""
    seats = {"the kit seat" if stack.key else "the sub-dash face" for stack in question.stacks}
    return listed(sorted(seats), "or")


def _always_assuming(place: Place, question: Asked, assumed: list[Rise]) -> bool:
    bounds: tuple[Constraint, ...] = tuple(assumed)
    return all(
        outlook(rooms.assuming(bounds, question.stacks), question.needs, question.settings) == "always"
        for rooms in place.accounts
    )


def _unsaid(place: Place, question: Asked) -> Iterator[Condition]:
    """A strong yes that left exactly one thing unsaid, read as made the way the question asks."""
    for one in place.evidence.standing:
        filled = _filled(one, question)
        if filled is None:
            continue
        reading, words = filled
        rooms = (
            account.agreeing((*(other for other in account.notes if other is not one), reading))
            for account in place.accounts
        )
        if all(outlook(room, question.needs, question.settings) == "always" for room in rooms):
            yield Condition(
                f"the note {one.note.id} was made {words}", f"ask its author ({one.note.author or 'not signed'})"
            )


def _filled(one: Standing, question: Asked) -> tuple[Standing, str] | None:
    if one.says != "goes in":
        return None
    blanks = []
    if one.stack is None and len(question.stacks) == 1:
        blanks.append((replace(one, stack=question.stacks[0]), f"with {question.stacks[0].words}"))
    if one.cut == ANY_CUT:
        blanks.append((replace(one, cut=question.cut), f"with {question.cut} cut"))
    if len(one.builds) > 1 and len(question.builds) == 1 and question.builds[0] in one.builds:
        build = " ".join(value for _, value in question.builds[0])
        blanks.append((replace(one, builds=question.builds), f"in a car of this build ({build})"))
    return blanks[0] if len(blanks) == 1 else None


def _cuts(place: Place, question: Asked) -> Iterator[Condition]:
    cuts = {one.cut for one in place.evidence.standing if one.says == "goes in"} - {ANY_CUT, question.cut}
    for cut in sorted(cuts):
        narrowed = question.narrowed(cut=cut)
        if always(place, narrowed):
            yield Condition(f"this may be cut: {cut}", "agree it in writing with the customer first", narrowed=narrowed)


def _at(ninths: Sequence[str]) -> str:
    """Where, said the short way round; nothing when it is everywhere."""
    others = [ninth for ninth in NINTHS if ninth not in ninths]
    if not others:
        return ""
    return f" everywhere but at the {listed(others)}" if len(others) < len(ninths) else f" at the {listed(ninths)}"
