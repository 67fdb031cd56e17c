"""What an answer about a speaker does not know: what is missing, where to look, and what it would change."""

from collections.abc import Iterator
from itertools import product

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.room_span import RoomSpan
from bezelbook.reasoning.speakers.cells import DOORS, WAYS, RoomSize, SpeakerDemand, SpeakerSetting, demands
from bezelbook.reasoning.speakers.evidence import SpeakerStanding, refused_reading
from bezelbook.reasoning.speakers.question import SpeakerAsked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, SpeakerRooms
from bezelbook.reasoning.speakers.verdict import judge, settled
from bezelbook.reasoning.unknowns import Missing, open_builds
from bezelbook.values.shown import show_length

BENCH = "caliper, 2 min on the bench"
HOLE = ("caliper across it, 2 min", "whether a basket goes through")
NOT_READ: dict[RoomSize, Missing] = {
    "long way": Missing("the hole was never measured the long way", *HOLE),
    "short way": Missing("the hole was never measured the short way", *HOLE),
    "fixed": Missing(
        "the depth behind to what does not move was never measured",
        "depth gauge or putty, 5 min",
        "how deep a speaker may be",
    ),
    "glass": Missing(
        "the depth to the glass was never measured on this side",
        "depth gauge or putty with the glass all the way down, 5 min",
        "how deep a speaker may be",
    ),
    "front": Missing(
        "the room in front was never measured", "putty under the lining, 5 min", "how far a ring may hold it out"
    ),
}
TRAVEL = Missing(
    "the worst point of the glass's way was not looked at",
    "putty on the magnet and run the glass, 5 min",
    "how deep a speaker may be",
)


def unknowns(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[Missing]:
    """Everything that this answer had to do without."""
    yield from _builds(place, question)
    yield from _thing(question)
    yield from gaps(place, question)
    yield from _playing(place, question)
    for one in place.evidence.standing:
        yield from _unsaid(place, one)
        yield from _refused(place, one)


def gaps(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[Missing]:
    """What nobody read on this side of all that a speaker asks of it; what was assumed was not read."""
    read = {
        demand.size
        for rooms in place.accounts
        for setting in question.settings
        for demand, room in _measured(rooms, question, setting)
        if room.read
    }
    asked = {
        demand.size
        for setting in question.settings
        for demand in demands(place.frame, question.needs, setting)
        if not (demand.size in ("long way", "short way") and not setting.stack.through)
    }
    missing, ways = asked - read, asked & {*WAYS}
    if ways and ways <= missing:
        yield Missing("the hole was never measured", *HOLE)
        missing -= ways
    yield from (NOT_READ[size] for size in NOT_READ if size in missing)
    where = place.frame.vehicle.places.get(place.frame.place)
    if "glass" in read and not place.frame.travel_read and where is not None and where.kind in DOORS:
        yield TRAVEL
    yield from _assumed(place)


def _measured(
    rooms: SpeakerRooms, question: SpeakerAsked, setting: SpeakerSetting
) -> Iterator[tuple[SpeakerDemand, RoomSpan]]:
    wanted = demands(rooms.frame, question.needs, setting)
    return zip(wanted, rooms.measured.spans(setting, wanted), strict=True)


def _assumed(place: SpeakerPlace) -> Iterator[Missing]:
    """The other side's notes that take this one to be the same."""
    frame = place.frame
    where = frame.vehicle.places.get(frame.place)
    other = where.other_side if where else None
    for note in frame.book.notes_at(frame.vehicle.id, other) if other else ():
        if getattr(note, "other_side", None) == "assumed the same":
            yield Missing(
                f"this side was only assumed to be the same, in {note.id}",
                "measure it, depth gauge or putty, 5 min",
                "everything on this side",
            )


def _builds(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[Missing]:
    return open_builds(
        place.frame.vehicle,
        place.frame.place,
        question.builds,
        lambda cars: judge(place, question.narrowed(builds=cars)).verdict,
    )


def _thing(question: SpeakerAsked) -> Iterator[Missing]:
    needs = question.needs
    if needs.printed:
        yield Missing(f"{', '.join(needs.printed)} of {needs.name}: printed only", BENCH, "whether it goes in at all")
    blank = [need for need, span in needs.spans.items() if need in needs.asked and not span.known]
    blank = [need for need in blank if need not in needs.printed]
    if blank:
        yield Missing(f"{', '.join(blank)} of {needs.name}: not looked", BENCH, "whether it goes in at all")


def _playing(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[Missing]:
    """Of what was seen to go in, whether its cone clears the grille, where no figure shows that it does."""
    further = question.needs.further
    if further == 0 or all(_clears(rooms, question, setting) for rooms, setting in _each(place, question)):
        return
    if settled(place, question) == "goes in":
        why = "its record has no excursion"
        if further is not None:
            why = f"it comes up to {show_length(further, place.frame.book.shop.units_first)} further out"
        yield Missing(
            f"no figure shows that its cone clears the grille when it plays: {why}",
            "putty inside the grille, play it loud, 3 min",
            "how thick a ring may be",
        )


def _each(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[tuple[SpeakerRooms, SpeakerSetting]]:
    return product(place.accounts, question.settings)


def _clears(rooms: SpeakerRooms, question: SpeakerAsked, setting: SpeakerSetting) -> bool:
    """Whether there is room in front for the cone at its furthest, by the figures."""
    wanted = [demand for demand in demands(rooms.frame, question.needs, setting) if demand.size == "front"]
    highest = question.needs.spans["front height"].high
    if not wanted or highest is None or question.needs.further is None:
        return not wanted
    return rooms.spans(setting, wanted)[0].least >= highest


def _unsaid(place: SpeakerPlace, one: SpeakerStanding) -> Iterator[Missing]:
    note = one.note
    if not isinstance(note, Tried):
        return
    blanks = ["which build the car was"] if len(one.builds) > 1 else []
    if note.mounts is None:
        blanks.append("which mounts were used")
    elif one.stack is not None and one.stack.gasket.key and note.gasket is None:
        blanks.append("whether there was a gasket")
    if one.says == "goes in" and note.cut is None:
        blanks.append("whether anything was cut")
    if note.glass is None and "glass" in place.frame.rears:
        blanks.append("where the glass was")
    if one.stack is not None and one.stack.has_tabs and note.tabs is None:
        blanks.append("whether the tabs were in or out")
    if blanks:
        yield Missing(
            f"{note.id} does not say {' or '.join(blanks)}",
            f"ask {note.author or 'its author'}",
            "how far that note carries",
        )


def _refused(place: SpeakerPlace, one: SpeakerStanding) -> Iterator[Missing]:
    if not isinstance(one.note, Measured) or one.stack is None:
        return
    where = place.frame.vehicle.places.get(place.frame.place)
    for reading in one.note.readings:
        why = refused_reading(where.kind if where else None, reading, one.stack, one.note.shape)
        if why:
            yield Missing(
                f"{reading.of} {reading.reads.typed} in {one.note.id} {why}",
                "depth gauge or putty from the face that the speaker sits on, 5 min",
                "whether that number can be used",
            )
