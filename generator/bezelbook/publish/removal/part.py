"""One order as its part of the page shows it: cautions, the stack, the steps, what is asked, and whose word it is."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from bezelbook.kinds.note.record import After, AnyNote, Seen, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.builds_words import Which, which_builds
from bezelbook.publish.drawing.stack import Card, stack
from bezelbook.publish.notes import newest_first, said
from bezelbook.publish.removal.cautions import Caution, all_stopped, cautions, place_name
from bezelbook.publish.removal.fixing_lines import fixing_words
from bezelbook.publish.removal.glance import Glance, glance
from bezelbook.publish.removal.step_lines import StepLines, step_lines
from bezelbook.publish.removal.trade_words import FirstUse
from bezelbook.publish.wording import counted
from bezelbook.reasoning.evidence import witnesses
from bezelbook.reasoning.order.asking import asked_of
from bezelbook.reasoning.order.graph import befores, depths
from bezelbook.reasoning.order.near import RESTRAINT
from bezelbook.reasoning.order.precedence import Before
from bezelbook.reasoning.order.removal import Removal
from bezelbook.reasoning.order.step import Step, name_of
from bezelbook.reasoning.unknowns import Missing
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_minutes

# A word of a piece's name that is this long or longer says which piece is meant.
A_NAME = 5


@dataclass(frozen=True, slots=True)
class Quoted:
    """A note beside the order: its words, who and when, and where it stands in full.

    The words are left out where they may tell of a piece with a restraint near.
    """

    words: str
    by: str
    at: str


@dataclass(frozen=True, slots=True)
class Part:
    """An order ready for the page. `loose` and `hidden` are on no piece that anybody named.

    `stopped` orders are nothing but pieces with a restraint near; `stays` are the pieces that no list has.
    """

    which: Which
    written: bool
    stopped: bool
    glance: Glance
    basis: str
    cautions: tuple[Caution, ...]
    no_class: str
    drawing: Markup | str
    steps: tuple[StepLines, ...]
    stays: str
    loose: tuple[str, ...]
    hidden: tuple[str, ...]
    habits: tuple[str, ...]
    refit: tuple[tuple[str, str], ...]
    time: str
    asked: tuple[Missing, ...]
    notes: tuple[Quoted, ...]


def part_of(vehicle: Vehicle, place: str, removal: Removal, stays: Sequence[str], told: FirstUse, to: Links) -> Part:
    """An order for the builds it holds for, as a page at `to` shows it; `stays` are the pieces to leave on."""
    told.begin()
    book = to.book
    named = [*vehicle.trim, *(step.piece for step in removal.steps)]
    names = {piece: name_of(vehicle, piece) for piece in named}
    argued = _argued(removal)
    which = which_builds(vehicle, place, removal.builds)
    return Part(
        which,
        removal.written,
        all_stopped(removal),
        glance(which.words, removal),
        _basis(book, removal),
        tuple(cautions(vehicle, place, removal)),
        _no_class(vehicle, place, removal),
        _drawing(removal, argued),
        tuple(
            step_lines(book, number, step, names, told, argued.get(step.piece, frozenset()))
            for number, step in enumerate(removal.steps, 1)
        ),
        listed(stays) if stays else "",
        tuple(words for one in removal.loose for words in fixing_words(book, one)),
        tuple(one.what for one in removal.hidden),
        tuple(_habit(vehicle, one) for one in removal.habits),
        tuple((step.name, one.what) for step in _ours(removal) for one in step.refit),
        _time(removal),
        asked_of(book, vehicle, removal),
        tuple(_quoted(book, [*removal.notes, *_differed(book, vehicle, place)], _silent(book, removal), to)),
    )


def _ours(removal: Removal) -> Iterator[Step]:
    """The steps that a page tells of, the last one first."""
    return (step for step in reversed(removal.steps) if RESTRAINT not in step.safety)


def _argued(removal: Removal) -> Mapping[str, frozenset[str]]:
    """For each piece that is argued over, all pieces that go round in a circle with it."""
    found: dict[str, frozenset[str]] = {}
    for circle in removal.argued:
        for piece in circle.pieces:
            found[piece] = found.get(piece, frozenset()) | frozenset(circle.pieces)
    return found


def _basis(book: KnowledgeBase, removal: Removal) -> str:
    notes = [book.notes[id_] for id_ in removal.notes]
    days = sorted({note.date for note in notes if note.date})
    day = f", {'of' if len(days) == 1 else 'the newest of'} {days[-1]}" if days else ""
    return f"From {counted(witnesses(notes), 'job')}{day}. Check on this car first."


def _no_class(vehicle: Vehicle, place: str, removal: Removal) -> str:
    """What nobody wrote of whether anything near it could hurt someone; empty when there is nothing such."""
    names = [step.name for step in removal.steps if not step.safety]
    if not removal.steps and removal.safety is None:
        names.append(place_name(vehicle, place))
    return listed(names) if names else ""


def _drawing(removal: Removal, argued: Iterable[str]) -> Markup | str:
    if len(removal.steps) == 1 or not removal.steps:
        return ""
    deep = depths(befores(removal.over, [step.piece for step in removal.steps]))
    doubtful = set(argued)
    cards = [
        Card(step.piece, step.name, deep[step.piece], step.piece in doubtful or step.stands != "needed")
        for step in removal.steps
    ]
    return stack(cards, removal.over, "What lies over what, the first to come off on top")


def _habit(vehicle: Vehicle, one: Before) -> str:
    return f"{name_of(vehicle, one.first)} before {name_of(vehicle, one.then)}"


def _time(removal: Removal) -> str:
    """The sum of the times of the pieces that were clocked; empty when none was."""
    times = [step.took for step in removal.steps if step.took]
    if not times:
        return ""
    whole = sum((time.median for time in times), start=Fraction(0))
    thin = "; thin, from fewer than three jobs" if any(time.thin for time in times) else ""
    steps = len(removal.steps)
    of = "" if len(times) == steps else f" for {len(times)} of its {steps} steps"
    return f"Clocked: about {show_minutes(round(whole))}{of}{thin}."


def _differed(book: KnowledgeBase, vehicle: Vehicle, place: str) -> Iterator[str]:
    """Notes of the place that say what was not as the page had it; they move nothing and are quoted."""
    for note in book.notes_at(vehicle.id, place):
        if isinstance(note, Tried | After) and note.differed:
            yield note.id


def _silent(book: KnowledgeBase, removal: Removal) -> frozenset[str]:
    """The notes whose words may tell how a piece with a restraint near comes off: of nothing else, or by its name."""
    near = [step for step in removal.steps if RESTRAINT in step.safety]
    pieces = {step.piece for step in near}
    names = {word for step in near for word in step.name.casefold().split() if len(word) >= A_NAME}
    return frozenset(id_ for id_ in removal.notes if _tells_of(book.notes[id_], pieces, names))


def _tells_of(note: AnyNote, pieces: set[str], names: set[str]) -> bool:
    own = {off.piece for off in note.pieces} if isinstance(note, Seen) else set()
    said = (note.words or "").casefold()
    return bool(own and own <= pieces) or any(name in said for name in names)


def _quoted(book: KnowledgeBase, ids: Iterable[str], silent: frozenset[str], to: Links) -> Iterator[Quoted]:
    for one in newest_first(said(book, book.notes[id_]) for id_ in ids):
        differed: Mapping[str, str] = {"differed": getattr(one.note, "differed", None) or ""}
        words = differed["differed"] or one.note.words or ""
        yield Quoted("" if one.note.id in silent else words, one.by, to.note(one.note))
