"""What a speaker is screwed to at its place: which holes meet, which do not, and how long the screws must be."""

from collections.abc import Iterator

from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.note.record import Measured
from bezelbook.kinds.pieces import HolePattern
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.reasoning.claims import reading_span
from bezelbook.reasoning.speakers.bolts import Meeting, Pattern, circle_of, meeting, turned_by
from bezelbook.reasoning.speakers.needs import house_span
from bezelbook.reasoning.speakers.question import SpeakerAsked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace
from bezelbook.reasoning.speakers.screws import lengths, under_the_head
from bezelbook.reasoning.speakers.stacks import SpeakerStack
from bezelbook.values.quantity import Quantity
from bezelbook.values.shown import show_length, show_mm


def fastening(place: SpeakerPlace, question: SpeakerAsked, speaker: Speaker) -> Iterator[str]:
    """What the screws of a speaker need there, line by line; nothing where they meet, or nobody looked at either."""
    for stack in question.stacks[:1]:
        ours, theirs = pattern_of(place, speaker), held_by(place, stack)
        found = meeting(ours, theirs)
        if found.word == "does not meet":
            yield f"a plate, or new holes: {found.why}"
        elif found.word == "not looked" and theirs.count is not None and ours.count is not None:
            yield f"look at the screw holes first: {found.why}"
        yield from _turned(found, ours, theirs)
        yield from _screws(place, stack, speaker)


def typed_circle(place: SpeakerPlace, question: SpeakerAsked, circle: Quantity) -> str:
    """What a bolt circle that somebody typed meets there, the number of its holes being unsaid."""
    give = circle.give or 0
    ours = Pattern(None, circle.base - give, circle.base + give)
    return f"bolt circle {circle.typed}: {meeting(ours, held_by(place, question.stacks[0])).why}"


def pattern_of(place: SpeakerPlace, speaker: Speaker) -> Pattern:
    """The holes of a speaker, as far as a caliper was on them."""
    bolts = speaker.bolts
    if bolts is None:
        return Pattern()
    least, most = bolts.circle_least or bolts.circle, bolts.circle_most or bolts.circle
    return _pattern(place, bolts, least, most)


def held_by(place: SpeakerPlace, stack: SpeakerStack) -> Pattern:
    """The holes that a speaker is screwed to: those of the mount on top that hold the part, else the car's own.

    Screws go through a plain ring into whatever is under it. The car's are taken where all that was read agrees on one
    count and one circle.
    """
    book = place.frame.book
    under = [key for key in stack.mounts if not _is_plain_ring(book.mounts.get(key))]
    if not under:
        return _of_car(place)
    return _of_mount(place, book.mounts[under[-1]]) if under[-1] in book.mounts else Pattern()


def _is_plain_ring(mount: Mount | None) -> bool:
    return mount is not None and mount.mount_kind == "spacer" and not mount.holes.patterns


def _of_mount(place: SpeakerPlace, mount: Mount) -> Pattern:
    ready = [one for one in mount.holes.patterns if one.state == "ready" and one.holds in (None, "the part")]
    return _pattern(place, ready[0], ready[0].circle, ready[0].circle) if len(ready) == 1 else Pattern()


def _of_car(place: SpeakerPlace) -> Pattern:
    notes = [one.note for one in place.evidence.standing if isinstance(one.note, Measured)]
    seen = [note.bolt_holes for note in notes if note.bolt_holes is not None]
    counts = {holes.count for holes in seen if holes.count}
    firsts = {holes.first for holes in seen if holes.first}
    count = counts.pop() if len(counts) == 1 else None
    circles = [circle for note in notes for circle in _circles(place, note, count)]
    if not circles:
        return Pattern(count)
    low, high = max(low for low, _ in circles), min(high for _, high in circles)
    if low > high:
        return Pattern(count)
    return Pattern(count, low, high, first=firsts.pop() if len(firsts) == 1 else None)


def _circles(place: SpeakerPlace, note: Measured, count: int | None) -> Iterator[tuple[int, int]]:
    for reading in note.readings:
        if reading.tool == "eye" or reading.of not in ("bolt circle", "hole spacing"):
            continue
        span = reading_span(place.frame.book.shop.tools, reading)
        low, high = span.low or 0, span.high or 0
        if reading.of == "bolt circle":
            yield low, high
        elif count is not None and count > 2:
            yield circle_of(low, count)[0], circle_of(high, count)[1]


def _pattern(place: SpeakerPlace, holes: HolePattern, least: Quantity | None, most: Quantity | None) -> Pattern:
    def middle(size: Quantity | None) -> int | None:
        return None if size is None or not house_span(place.frame.book, size).known else size.base

    return Pattern(
        holes.count, middle(least), middle(most), middle(holes.long_way), middle(holes.short_way), holes.first
    )


def _turned(found: Meeting, ours: Pattern, theirs: Pattern) -> Iterator[str]:
    """How far it is turned for its screws to meet, which moves its terminals and any flat with it."""
    same = found.word == "meets" and ours.count == theirs.count
    turn = turned_by(ours.first, theirs.first, ours.count) if same and ours.count else None
    if turn:
        yield f"turn it by {turn}° so that the screws meet; its terminals turn with it"


def _screws(place: SpeakerPlace, stack: SpeakerStack, speaker: Speaker) -> Iterator[str]:
    """How long the screws are, where the car says what they bite and the layers under their heads are known."""
    kinds = {
        one.note.bolt_holes.kind
        for one in place.evidence.standing
        if isinstance(one.note, Measured) and one.note.bolt_holes and one.note.bolt_holes.kind
    }
    flange = house_span(place.frame.book, speaker.flange_thickness)
    layers = under_the_head(flange, stack.offset)
    if len(kinds) != 1 or not layers.known:
        return
    (kind,) = kinds
    first = place.frame.book.shop.units_first
    found = lengths(layers, kind)
    if found is None:
        return
    shortest, longest = found
    upto = f" up to {show_length(longest, first)}" if longest is not None else ""
    yield f"screws from {show_length(shortest, first)}{upto} ({kind}; {show_mm(layers.high or 0)} lies under the head)"
