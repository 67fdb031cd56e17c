"""What to have ready for a job at a place of a vehicle: clips, packs, what gets used up, and how long it takes."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import After, Bench
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.builds_words import which_builds
from bezelbook.publish.counts.clip_words import ClipRow, clip_row
from bezelbook.publish.wording import counted
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.counts.by_build import ClipsFor, clips_by_build
from bezelbook.reasoning.counts.lost import Tally
from bezelbook.reasoning.counts.minutes import Minutes, minutes
from bezelbook.reasoning.counts.used_up import used_up


@dataclass(frozen=True, slots=True)
class TimeRow:
    """One scope: the time in words, and what has to be said with it."""

    scope: str
    words: str
    also: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class UsedRow:
    """One thing that jobs there used up: what, how much a job, and in how many jobs."""

    name: str
    at: str
    words: str
    jobs: str


@dataclass(frozen=True, slots=True)
class ClipTable:
    """The clips for some builds; `which` is empty where it is the same in every build."""

    which: str
    rows: tuple[ClipRow, ...]


@dataclass(frozen=True, slots=True)
class ReadyPart:
    """What one place wants."""

    place: str
    at: str
    clips: tuple[ClipTable, ...]
    used: tuple[UsedRow, ...]
    times: tuple[TimeRow, ...]


def ready_parts(
    book: KnowledgeBase, vehicle: Vehicle, everywhere: Mapping[str, Tally], to: Links, today: str
) -> tuple[ReadyPart, ...]:
    """One part for each place of which a note tells any of it, in the vehicle's order.

    `everywhere` has what became of each kind of clip in all jobs of the book.
    """
    noted = {note.place for note in book.notes_of(vehicle.id) if not isinstance(note, Bench)}
    order = [*vehicle.places, *sorted(noted - set(vehicle.places))]
    clips = {place: clips_by_build(book, vehicle.id, place, everywhere, today) for place in order}
    parts = (_part(book, vehicle, place, clips[place], to) for place in order)
    return tuple(part for part in parts if part.clips or part.used or part.times)


def _part(book: KnowledgeBase, vehicle: Vehicle, place: str, clips: Iterable[ClipsFor], to: Links) -> ReadyPart:
    notes = book.notes_at(vehicle.id, place)
    replaced = {note.replaces for note in notes if note.replaces}
    after = [note for note in notes if isinstance(note, After) and note.id not in replaced]
    record = vehicle.places.get(place)
    used = [
        UsedRow(one.name, to.record("supply", one.what), one.words(book.shop.units_first), counted(one.jobs, "job"))
        for one in used_up(book, after)
    ]
    return ReadyPart(
        (record.name if record else None) or place.replace("-", " "),
        to.place(vehicle.id, place),
        tuple(_tables(vehicle, place, clips, to)),
        tuple(used),
        tuple(_time(one) for one in minutes(after)),
    )


def _tables(vehicle: Vehicle, place: str, clips: Iterable[ClipsFor], to: Links) -> Iterator[ClipTable]:
    """One table for all builds of which a page says the same."""
    found: dict[tuple[ClipRow, ...], list[Build]] = {}
    for one in clips:
        if one.needs:
            found.setdefault(tuple(clip_row(need, to) for need in one.needs), []).extend(one.builds)
    return (ClipTable(which_builds(vehicle, place, tuple(mine)).words, rows) for rows, mine in found.items())


def _time(one: Minutes) -> TimeRow:
    also = [f"Thin: {counted(len(one.usual), 'job')} so far."] if one.thin and one.usual else []
    if one.unsaid:
        also.append(f"{counted(one.unsaid, 'note')} of these did not say whether it was a first time.".capitalize())
    also += [f"Ask {spent.note.author or 'its author'} what {spent.note.id} covered." for spent in one.ask_scope]
    return TimeRow(one.scope, one.words, tuple(also))
