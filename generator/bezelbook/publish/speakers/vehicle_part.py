"""A place for a speaker as the vehicle's page shows it: readings, what goes in, the rings, what nobody knows."""

from collections.abc import Iterator
from dataclasses import dataclass

from markupsafe import Markup

from bezelbook.kinds.note.record import Measured
from bezelbook.publish.address import Links
from bezelbook.publish.drawing.window import Lane, windows
from bezelbook.publish.speakers.place import PlaceForSpeakers, Places
from bezelbook.publish.wording import VERDICTS, sure_words
from bezelbook.reasoning.quote import reading_words
from bezelbook.reasoning.speakers.answer import SpeakerAnswer
from bezelbook.reasoning.speakers.evidence import DEPTHS, HOLE
from bezelbook.reasoning.speakers.needs import needs_of_sizes
from bezelbook.reasoning.speakers.question import SpeakerQuestion, asked
from bezelbook.reasoning.speakers.unknowns import gaps
from bezelbook.reasoning.speakers.window import Window, for_both
from bezelbook.reasoning.unknowns import Missing
from bezelbook.values.listed import listed
from bezelbook.values.quantity import read_quantity
from bezelbook.values.shown import show_length, show_mm
from bezelbook.values.words import AnswerVerdict

# Any speaker at all: only what it asks about matters here.
ANY_SIZES = {
    name: read_quantity("1 mm", "length") for name in ("basket", "basket_short", "mounting_depth", "front_height")
}


@dataclass(frozen=True, slots=True)
class SpeakerRow:
    """A speaker with its answer here: the verdict, the few words under it, and the number that decides."""

    name: str
    at: str
    verdict: AnswerVerdict
    words: str
    reason: str
    number: str


@dataclass(frozen=True, slots=True)
class RingLine:
    """One speaker and its rings in words: from where to where, which of the book do here, and which on both sides."""

    name: str
    at: str
    words: str


@dataclass(frozen=True, slots=True)
class SpeakerPart:
    """Everything about one side: what was read, what goes in, what nobody looked at and how to look."""

    argued: bool
    readings: tuple[str, ...]
    rows: tuple[SpeakerRow, ...]
    untried: int
    drawing: Markup | None
    rings: tuple[RingLine, ...]
    ring_names: tuple[str, ...]
    missing: tuple[Missing, ...]


def speaker_part(here: PlaceForSpeakers, places: Places, to: Links) -> SpeakerPart:
    """One place, with the windows of the other side beside its own."""
    told = {speaker: answer for speaker, answer in here.answers.items() if answer.verdict != "nobody has tried"}
    record = here.room.frame.vehicle.places[here.id]
    other = places.get((here.vehicle, record.other_side or ""))
    return SpeakerPart(
        len(here.room.accounts) > 1,
        tuple(_readings(here)),
        tuple(_row(here, speaker, answer, to) for speaker, answer in told.items()),
        len(here.book.speakers) - len(told),
        windows([_lane(here, speaker, one) for speaker, one in here.windows.items()], f"Rings at the {here.name}"),
        tuple(_ring_line(here, other, speaker, one, to) for speaker, one in here.windows.items()),
        tuple(_ring_names(here)),
        tuple(_missing(here)),
    )


def _readings(here: PlaceForSpeakers) -> Iterator[str]:
    """What was read of this side, in the words of whoever read it; what was read of the other says so."""
    for one in here.room.evidence.standing:
        if isinstance(one.note, Measured):
            beside = "" if one.note.place == here.id else ", read on the other side and said to be measured the same"
            for reading in one.note.readings:
                if reading.of in (*DEPTHS, *HOLE, "bolt circle", "hole spacing"):
                    yield reading_words(reading) + beside


def _row(here: PlaceForSpeakers, speaker: str, answer: SpeakerAnswer, to: Links) -> SpeakerRow:
    decides = answer.plain()["number"]
    number = decides["words"] if decides else ""
    name = here.book.speakers[speaker].name
    return SpeakerRow(
        name, to.record("speaker", speaker), answer.verdict, VERDICTS[answer.verdict], reason_of(answer), number
    )


def reason_of(answer: SpeakerAnswer) -> str:
    """The few words under a verdict; empty when there is nothing to add."""
    if answer.conditions:
        return answer.conditions[0].words
    if answer.until_settled:
        return f"until settled: {answer.until_settled}"
    return sure_words(answer.sure, answer.witnesses) if answer.sure else ""


def _lane(here: PlaceForSpeakers, speaker: str, found: Window) -> Lane:
    low, high = found.low, found.high
    return Lane(
        here.book.speakers[speaker].name,
        None if low is None else (low.at, low.give),
        None if high is None else (high.at, high.give),
        tuple((ring.name, ring.thickness, ring.verdict) for ring in found.rings),
    )


def _ring_names(here: PlaceForSpeakers) -> Iterator[str]:
    rings = {(ring.thickness, ring.name) for one in here.windows.values() for ring in one.rings}
    yield from (f"{name} {show_mm(thickness)}" for thickness, name in sorted(rings))


def _ring_line(
    here: PlaceForSpeakers, other: PlaceForSpeakers | None, speaker: str, found: Window, to: Links
) -> RingLine:
    said = [window_words(found, here.book.shop.units_first)]
    good = [ring.name for ring in found.good]
    said.append(f"of the book's rings {listed(good)} would do here" if good else "no ring of the book does for certain")
    both = for_both([found, other.windows[speaker]]) if other and speaker in other.windows else None
    if both is not None:
        names = [here.book.mounts[ring].name for ring in both]
        said.append(f"the same on both sides: {listed(names)}" if names else "no one ring does for both sides")
    elif other is not None:
        said.append(f"too little is known of the {other.name} to name one ring for both sides")
    return RingLine(here.book.speakers[speaker].name, to.record("speaker", speaker), "; ".join(said))


def window_words(found: Window, first: str) -> str:
    """From where to where a ring would do, each end with its ±."""
    low, high = found.low, found.high
    if found.empty:
        return "no ring does: what is wanted behind is more than there is in front"
    ends = []
    if low is not None and low.at > 0:
        ends.append(f"a ring of at least {show_length(low.at, first)} ± {show_mm(low.give)}")
    elif low is not None:
        ends.append("no ring is needed for what is behind")
    else:
        ends.append("nobody measured behind")
    if high is None:
        ends.append("nobody measured in front")
    elif high.at < 0:
        ends.append("it stands out too far even without a ring")
    else:
        ends.append(f"at most {show_length(high.at, first)} ± {show_mm(high.give)}")
    return ", ".join(ends)


def _missing(here: PlaceForSpeakers) -> Iterator[Missing]:
    """What nobody read here that any speaker would ask about."""
    question = asked(here.room, SpeakerQuestion(here.vehicle, here.id, mounts=(), sizes=ANY_SIZES))
    return gaps(here.room, question.narrowed(needs=needs_of_sizes(ANY_SIZES)))
