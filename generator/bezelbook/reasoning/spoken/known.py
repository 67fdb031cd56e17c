"""What the book knows of a place for a speaker, told where a question leaves open which speaker, or which side."""

from collections.abc import Callable, Iterator
from dataclasses import replace

from bezelbook.kinds.note.record import Seen, Tried
from bezelbook.reasoning.quote import quote, reading_words
from bezelbook.reasoning.speakers.answer import SpeakerAnswer
from bezelbook.reasoning.speakers.needs import needs_of_sizes
from bezelbook.reasoning.speakers.question import SpeakerQuestion, asked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace
from bezelbook.reasoning.speakers.unknowns import gaps
from bezelbook.reasoning.spoken.found import Choice, spoken
from bezelbook.values.quantity import read_quantity

# Any speaker at all: only what it asks about matters here.
ANY_SIZES = {
    name: read_quantity("1 mm", "length") for name in ("basket", "basket_short", "mounting_depth", "front_height")
}
NOTHING = "nobody has noted anything here"


def known_of(
    choice: Choice, place_of: Callable[[str, str], SpeakerPlace], answer: Callable[[SpeakerQuestion], SpeakerAnswer]
) -> Choice:
    """A choice with what is known of its places: the answer at each where only the place is open, else the notes."""
    lines: list[str] = []
    for vehicle, id_ in choice.at:
        place = place_of(vehicle, id_)
        name = place_name(place)
        if choice.question is not None:
            lines.append(f"{name}: {short_answer(answer(replace(choice.question, place=id_)))}")
        else:
            lines += [f"{name}: {line}" for line in known_at(place)]
    return replace(choice, known=tuple(lines))


def place_name(place: SpeakerPlace) -> str:
    """What the shop calls a place."""
    return place.frame.vehicle.places[place.frame.place].name or spoken(place.frame.place)


def short_answer(answer: SpeakerAnswer) -> str:
    """A verdict in one line: with its condition, or with how sure it is."""
    condition = f" {answer.needs[0]}" if answer.conditions else ""
    sure = f" ({answer.sure})" if answer.sure and not answer.conditions else ""
    return f"{answer.verdict}{condition}{sure}"


def known_at(place: SpeakerPlace) -> Iterator[str]:
    """What went in and what did not, what the car came with, what was measured, and what to look at."""
    told = [*_noted(place)]
    yield from told or [NOTHING]
    question = asked(place, SpeakerQuestion(place.frame.vehicle.id, place.frame.place, mounts=()))
    for one in gaps(place, question.narrowed(needs=needs_of_sizes(ANY_SIZES))):
        yield f"not known: {one.what} (look: {one.look})"


def _noted(place: SpeakerPlace) -> Iterator[str]:
    book = place.frame.book
    for one in place.evidence.standing:
        note = one.note
        if isinstance(note, Tried):
            yield f"{quote(book, note)} ({note.sure}, {note.author or 'not signed'}, {note.date or 'no date'})"
        else:
            yield from (f"measured: {reading_words(reading)}" for reading in note.readings)
    for seen in book.notes_at(place.frame.vehicle.id, place.frame.place):
        if isinstance(seen, Seen) and seen.factory_speaker and seen.factory_speaker.nominal:
            yield f"the car came with a {seen.factory_speaker.nominal} ({seen.author or 'not signed'})"
