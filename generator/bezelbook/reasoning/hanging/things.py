"""What was tried or asked about at a place, and how often somebody asked."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.asked.record import Asked
from bezelbook.kinds.note.record import Tried
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.differing.rooms_said import SIZE_OF, asked_for
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.reasoning.speakers.needs import needs_of_speaker
from bezelbook.values.span import Span


@dataclass(frozen=True, slots=True)
class Things:
    """The sizes of each thing ever tried or asked about, by name; `asked` are the names that somebody asked about."""

    sizes: Mapping[str, Mapping[str, Span]]
    asked: frozenset[str]
    times: int


def things_at(book: KnowledgeBase, vehicle: str, place: str) -> Things:
    """The things of one place of a vehicle; without a place, of the whole vehicle."""
    notes = book.notes_at(vehicle, place) if place else book.notes_of(vehicle)
    questions = [one for one in book.questions.values() if _about(one, vehicle, place)]
    wished = {_name(book, one.what) for one in questions if one.what}
    sizes = {_name(book, note.what): asked_for(book, note) for note in notes if isinstance(note, Tried)}
    for name in wished - sizes.keys():
        sizes[name] = dict(_sizes(book, name))
    return Things(sizes, frozenset(wished), sum(one.times for one in questions))


def _about(question: Asked, vehicle: str, place: str) -> bool:
    return question.vehicle == vehicle and (not place or question.place in (None, place))


def _name(book: KnowledgeBase, what: str) -> str:
    """One name for one thing, whatever people call it."""
    unit = book.head_unit_named(what) or book.named("speaker", what)
    return unit.id if unit else folded(what)


def _sizes(book: KnowledgeBase, name: str) -> Iterator[tuple[str, Span]]:
    """The sizes of a record; none where the words name no record."""
    unit, speaker = book.head_units.get(name), book.speakers.get(name)
    if unit:
        yield from ((str(need), span) for need, span in needs_of_unit(book, unit).spans.items() if need != "plug")
    elif speaker:
        spans = needs_of_speaker(book, speaker).spans.items()
        yield from ((SIZE_OF[need], span) for need, span in spans if need in SIZE_OF)
