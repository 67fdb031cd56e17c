"""The single things that a question about a speaker left open, any one of which would make the answer a yes."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.bounds import Constraint, Rise, exactly
from bezelbook.reasoning.evidence import ANY_CUT
from bezelbook.reasoning.question import open_axes
from bezelbook.reasoning.speakers.cells import Presented, RoomSize, SpeakerDemand, demands
from bezelbook.reasoning.speakers.evidence import SpeakerStanding
from bezelbook.reasoning.speakers.needs import at_its_word
from bezelbook.reasoning.speakers.outlook import clearance, outlook
from bezelbook.reasoning.speakers.question import SpeakerAsked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, SpeakerRooms
from bezelbook.reasoning.speakers.stacks import BARE, SpeakerStack
from bezelbook.reasoning.speakers.thickness import thickness
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_length
from bezelbook.values.span import Span

LOOKS: dict[RoomSize, tuple[str, str]] = {
    "long way": ("the hole is at least {} the long way", "caliper across it, 2 min with the lining off"),
    "short way": ("the hole is at least {} across", "caliper across it, 2 min with the lining off"),
    "fixed": ("there is at least {} to the first thing that does not move", "depth gauge or putty, 5 min"),
    "glass": ("there is at least {} to the glass, all the way down", "putty on the magnet and run the glass, 5 min"),
    "front": ("there is at least {} to the grille", "putty under the lining, 5 min"),
}
RING = "it sits on a ring from {} to {} thick"


@dataclass(frozen=True, slots=True)
class SpeakerCondition:
    """What would make it a yes, to be read after "goes in if", and how to find out, in the shop's words.

    `narrowed` is the question with the condition filled in, when it is one that a question could have said. Where the
    words name lengths that go with the size asked about, `template` has {} in their place and `lengths` has them in nm.
    """

    words: str
    look: str
    narrowed: SpeakerAsked | None = None
    template: str = ""
    lengths: tuple[int, ...] = ()


def conditions(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    """Every single thing that would do, the cheapest to find out first."""
    yield from _builds(place, question)
    yield from _mountings(place, question)
    yield from a_ring(place, question)
    yield from _printed(place, question)
    yield from _tabs(place, question)
    # Of many mountings that were left open, the plainest is the one to find out about.
    yield from _unmeasured(place, question.narrowed(stacks=question.stacks[:1]))
    yield from _unsaid(place, question)
    yield from _cuts(place, question)


def always(place: SpeakerPlace, question: SpeakerAsked) -> bool:
    """Whether the speaker fits in every room of every account."""
    return all(outlook(rooms, question.needs, question.settings) == "always" for rooms in place.accounts)


def _builds(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    vehicle = place.frame.vehicle
    for axis in open_axes(vehicle, place.frame.place, question.builds):
        for value, split in vehicle.splits[axis].values.items():
            cars = tuple(build for build in question.builds if dict(build)[axis] == value)
            narrowed = question.narrowed(builds=cars)
            if cars and always(place, narrowed):
                tell = split.tell or "nobody has written how to tell"
                yield SpeakerCondition(f"the {axis} is {value}", f"how to tell: {tell}", narrowed)


def _mountings(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    for stack in question.stacks:
        narrowed = question.narrowed(stacks=(stack,))
        if always(place, narrowed):
            yield SpeakerCondition(f"it is fitted with {stack.words}", "choose the mount", narrowed)


def a_ring(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    """A ring that the book does not hold, where the mounts were left open: how thick it would have to be."""
    if not question.any_mount:
        return
    low, high = thickness(place, question.narrowed(stacks=(BARE,)))
    if low is None or high is None or not 0 < low.at <= high.at:
        return
    middle = (low.at + high.at) // 2 + (question.gasket.held.low or 0)
    made = SpeakerStack(("a ring",), offset=Span(middle, middle))
    if always(place, question.narrowed(stacks=(made,))):
        first = place.frame.book.shop.units_first
        yield _measured(RING, "make or order the ring", first, low.at, high.at)


def _printed(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    narrowed = question.narrowed(needs=at_its_word(question.needs))
    if question.needs.printed and always(place, narrowed):
        figures = ", ".join(f"{need} {show_length(size)}" for need, size in question.needs.printed.items())
        yield SpeakerCondition(
            f"its printed sizes are true ({figures})", "put a caliper on it, 2 min on the bench", narrowed
        )


def _tabs(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    if question.tabs is not None or not any(stack.has_tabs for stack in question.stacks):
        return
    narrowed = question.narrowed(tabs="out", stacks=tuple(stack for stack in question.stacks if stack.has_tabs))
    if always(place, narrowed):
        words = f"the tabs of {narrowed.mount_words} are broken out, which cannot be undone"
        yield SpeakerCondition(words + _limit(place, narrowed), "agree it in writing with the customer first", narrowed)


def _limit(place: SpeakerPlace, question: SpeakerAsked) -> str:
    """The largest basket that the holes with tabs still take, where only one stack is asked about."""
    frame = place.frame
    holes = [mount for stack in question.stacks for mount, tabs in stack.holes if tabs]
    size = frame.book.mounts[holes[0]].tabs_out if len(holes) == 1 else None
    if size is None:
        return ""
    most = size.base - frame.book.shop.clearances.width.base
    return f", and then it takes a basket of up to {show_length(most, frame.book.shop.units_first)}"


def _unmeasured(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    """The one size of the room that nobody measured, as large as it has to be."""
    missing = {demand for rooms in place.accounts for demand in _unknown(rooms, question)}
    wanted = {demand: _wanted(place, question, demand) for demand in missing}
    sizes = {demand.size for demand in missing}
    if len(sizes) != 1 or None in wanted.values():
        return
    bounds = [Rise(demand.cell, None, exactly(room)) for demand, room in wanted.items() if room is not None]
    if _always_assuming(place, question, tuple(bounds)):
        size = sizes.pop()
        least = max(_bare(demand, question, room) for demand, room in wanted.items() if room is not None)
        words, look = LOOKS[size]
        yield _measured(words, look, place.frame.book.shop.units_first, least)


def _measured(template: str, look: str, first: str, *lengths: int) -> SpeakerCondition:
    words = template.format(*(show_length(length, first) for length in lengths))
    return SpeakerCondition(words, look, template=template, lengths=lengths)


def _unknown(rooms: SpeakerRooms, question: SpeakerAsked) -> Iterator[SpeakerDemand]:
    """The demands that nothing so far meets or refuses, and that no reading bears on."""
    needs = question.needs
    for setting in question.settings:
        wanted = demands(rooms.frame, needs, setting)
        for demand, room in zip(wanted, rooms.spans(setting, wanted), strict=True):
            high = needs.spans[demand.need].high
            if not room.read and (high is None or room.least < high + clearance(rooms.frame, needs, demand)):
                yield demand


def _wanted(place: SpeakerPlace, question: SpeakerAsked, demand: SpeakerDemand) -> int | None:
    high = question.needs.spans[demand.need].high
    return None if high is None else high - demand.shift + clearance(place.frame, question.needs, demand)


def _bare(demand: SpeakerDemand, question: SpeakerAsked, room: int) -> int:
    """A room as it would be read with no mount, where the stack it is met through says enough."""
    if not isinstance(demand.cell, Presented):
        return room
    offsets = [stack.offset for stack in question.stacks if stack.key == demand.cell.stack]
    seen = room + demand.shift
    if demand.size == "front":
        return max(seen + (offset.high or 0) for offset in offsets)
    return max(seen - (offset.low or 0) for offset in offsets)


def _always_assuming(place: SpeakerPlace, question: SpeakerAsked, assumed: tuple[Constraint, ...]) -> bool:
    supposing = (replace(rooms, assumed=assumed, through=question.stacks) for rooms in place.accounts)
    return all(outlook(rooms, question.needs, question.settings) == "always" for rooms in supposing)


def _unsaid(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    """A strong yes that left things unsaid, read as made the way the question asks: its author knows all of them."""
    for one in place.evidence.standing:
        mounts = one.stack.mounts if one.stack else question.stacks[0].mounts
        stacks = tuple(stack for stack in question.stacks if stack.mounts == mounts)
        like = question.narrowed(stacks=stacks)
        filled = _filled(place, one, like) if stacks and one.says == "goes in" else None
        if filled is None:
            continue
        reading, words = filled
        rooms = (
            account.agreeing((*(other for other in account.notes if other is not one), reading))
            for account in place.accounts
        )
        if all(outlook(room, like.needs, like.settings) == "always" for room in rooms):
            author = one.note.author or "not signed"
            yield SpeakerCondition(f"the note {one.note.id} was made {words}", f"ask its author ({author})")


def _filled(place: SpeakerPlace, one: SpeakerStanding, question: SpeakerAsked) -> tuple[SpeakerStanding, str] | None:
    note, stack = one.note, question.stacks[0]
    filled, said = replace(one, stack=stack), []
    if one.stack is None:
        said.append(f"with {stack.words}")
    if isinstance(note, Tried) and not note.gasket and (one.stack is None or one.stack.gasket.key):
        said.append(f"with {question.gasket.name or 'no gasket'}")
    elif one.stack is not None:
        filled = one
    if one.cut == ANY_CUT:
        filled = replace(filled, cut=question.cut, note=note.model_copy(update={"cut": question.cut}))
        said.append(f"with {question.cut} cut")
    if stack.has_tabs and not note.tabs and question.tabs:
        filled = replace(filled, tabs=question.tabs)
        said.append(f"with the tabs {question.tabs}")
    if note.glass is None and "glass" in place.frame.rears:
        filled = replace(filled, glass="run")
        said.append("with the glass run all the way")
    if len(one.builds) > 1 and len(question.builds) == 1 and question.builds[0] in one.builds:
        filled = replace(filled, builds=question.builds)
        said.append(f"in a car of this build ({' '.join(value for _, value in question.builds[0])})")
    return (filled, listed(said)) if said else None


def _cuts(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[SpeakerCondition]:
    cuts = {one.cut for one in place.evidence.standing if one.says == "goes in"} - {ANY_CUT, question.cut}
    for cut in sorted(cuts):
        narrowed = question.narrowed(cut=cut)
        if always(place, narrowed):
            words = f"this may be cut: {cut}"
            yield SpeakerCondition(words, "agree it in writing with the customer first", narrowed)
