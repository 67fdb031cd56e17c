"""How a question is settled: each answer that a team may give, with the command that writes it down."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import get_args

from bezelbook.finding import Finding, Sort
from bezelbook.kinds.note.record import After, AnyNote, Bench, Measured, Metered, Seen, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import known_splits
from bezelbook.reasoning.differing.axes import SPLIT_AXES, said_on
from bezelbook.reasoning.proposal import NEW_SPLIT, Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import Axis, Datum, PlugView

CarNote = Tried | Measured | Seen | Metered | After
# What stands in a line where the team's own words go; bezelbook decide refuses a line that still has it.
OPEN = "…"
# What a decision may fill in, with the few values there are or the word that is always one of them.
VALUES: Mapping[Axis, tuple[str, ...]] = {
    "loom": ("behind", "aside"),
    "glass": ("up", "down"),
    "tabs": ("in", "out"),
    "plugs": ("on", "off"),
    "view": get_args(PlugView),
    "datum": get_args(Datum),
    "cut": ("nothing", "what"),
    "mount": ("none", "which"),
}
FIELDS: Mapping[Axis, str] = {"mount": "mounts"}
# At which value of these there is the more room: what went in must have had it, if that is what differs.
ROOMY: Mapping[Axis, str] = {"loom": "aside", "glass": "up", "tabs": "out", "plugs": "off"}
# Of these a note must have had the one value that the others leave, if that is what differs.
BUILDS: tuple[Axis, ...] = ("build", "package", "body", "hand", "display")
WEAK = ("told", "eyeballed")
PLAIN = frozenset("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_./=")


@dataclass(frozen=True, slots=True)
class Way:
    """One way to settle a question: the answer in words, the line to type, and whether the finding proposes it."""

    words: str
    line: str
    proposed: bool = True


@dataclass(frozen=True, slots=True)
class _Blank:
    """Something that notes leave blank: the field, what it must have been in each of them, what there is to say."""

    axis: Axis
    name: str
    field: str
    fills: Mapping[str, str]
    values: tuple[str, ...]


def ways_to_settle(book: KnowledgeBase, finding: Finding, sort: Sort, folder: str = "") -> tuple[Way, ...]:
    """Every way to settle a question, the likeliest first, and at the end to go and look or to leave it as it is.

    Where nobody looked there is no loser. `folder` is the book's, where commands do not take it by themselves.
    """
    notes = [book.notes[note] for note in dict.fromkeys(finding.notes) if note in book.notes]
    read = [way for proposal in finding.proposals for way in _likely(book, finding, proposal, notes, sort)]
    lost = [_strike(finding, note.id) for note in _weakest_first(notes)] if sort != "gap" and len(notes) > 1 else []
    look = Way(
        "nobody knows yet: go and look", _line(finding, "go-and-look", "--look", OPEN, "--who", OPEN), proposed=False
    )
    leave = Way("it is no problem: leave it as it is", _line(finding, "no-problem"), proposed=False)
    known = dict.fromkeys((*read, *lost, look, leave))
    at = f" --book {_quoted(folder)}" if folder else ""
    return tuple(Way(way.words, f"{way.line}{at} --reason {_quoted(OPEN)}", way.proposed) for way in known)


def likeliest(ways: Sequence[Way]) -> Way | None:
    """The way that a list names first; None where all that is left is to look, or to leave it."""
    return next((way for way in ways if way.proposed), None)


def _likely(
    book: KnowledgeBase, finding: Finding, proposal: Proposal, notes: Sequence[AnyNote], sort: Sort
) -> Iterator[Way]:
    """The ways that one proposal comes to."""
    if proposal.reads:
        note, reading = proposal.reads
        yield Way(proposal.words, _line(finding, "both-true", "--read", note, reading))
    elif proposal.axis == "how sure":
        yield from (_strike(finding, note.id) for note in notes if getattr(note, "sure", "") in WEAK)
    elif proposal.axis == "scope" and sort == "conflict":
        yield Way(proposal.words, _line(finding, "no-problem"))
    elif proposal.split == NEW_SPLIT:
        yield from _new_split(finding, proposal, notes)
    else:
        cars = [note for note in notes if not isinstance(note, Bench)]
        for blank in _blanks(book, proposal, cars, known=sort != "gap"):
            if blank.fills:
                yield _filled(finding, blank, differ=sort == "conflict")


def _new_split(finding: Finding, proposal: Proposal, notes: Sequence[AnyNote]) -> Iterator[Way]:
    """The line that gives a vehicle a split it has not got, once somebody has seen what tells the cars apart."""
    one, other = f"one{OPEN}", f"other{OPEN}"
    split = ("--new-split", finding.vehicle, f"name{OPEN}", f"{one}=tell{OPEN}", f"{other}=tell{OPEN}")
    cars = zip(notes, (one, other), strict=False)
    reads = [word for note, car in cars for word in ("--read", note.id, f"splits.name{OPEN}={car}")]
    if finding.vehicle and len(notes) > 1:
        told = "give the vehicle a split that it has not got, and say which each car was"
        yield Way(told, _line(finding, "both-true", "--differs", proposal.axis, *split, *reads))


def _blanks(book: KnowledgeBase, proposal: Proposal, notes: Sequence[CarNote], *, known: bool) -> Iterator[_Blank]:
    """What these notes leave blank of what a proposal turns on, a split of the vehicle or something else.

    Only where it is `known` that they cannot all be true does that say what a blank must have been.
    """
    axis = proposal.axis
    if axis in VALUES:
        every = {note.id: said_on(None, note) for note in notes}
        said = {note: on[axis] for note, on in every.items() if axis in on}
        fills = _differing(axis, said, VALUES[axis], _roomy(notes)) if known else _open(said)
        yield _Blank(axis, axis, FIELDS.get(axis, axis), fills, VALUES[axis])
    vehicle = book.vehicles.get(notes[0].vehicle) if notes else None
    if vehicle is None:
        return
    for name, split in vehicle.splits.items():
        if proposal.split == name or (
            proposal.split is None and axis in ("build", SPLIT_AXES.get(split.differs_in or "build"))
        ):
            said = {note.id: known_splits(vehicle, note.splits, note.year).get(name) for note in notes}
            values = tuple(split.values)
            yield _Blank(axis, name, f"splits.{name}", _differing(axis, said, values) if known else _open(said), values)


def _open(said: Mapping[str, str | None]) -> Mapping[str, str]:
    return {note: OPEN for note, value in said.items() if value is None}


def _differing(
    axis: Axis,
    said: Mapping[str, str | None],
    values: tuple[str, ...],
    roomy: Mapping[str, bool] = MappingProxyType({}),
) -> Mapping[str, str]:
    """What each blank must have been, if that is what the notes differ in; nothing when then they would not differ."""
    fills = _open(said)
    told = {value for value in said.values() if value is not None}
    if axis in ROOMY:
        mean = next(value for value in values if value != ROOMY[axis])
        fills = {note: (ROOMY[axis] if roomy[note] else mean) if note in roomy else OPEN for note in fills}
        return fills if len({*fills.values(), *told}) > 1 or OPEN in fills.values() else {}
    left = [value for value in values if value not in told]
    return dict.fromkeys(fills, left[0]) if axis in BUILDS and len(fills) == len(left) == 1 else fills


def _roomy(notes: Iterable[CarNote]) -> Mapping[str, bool]:
    """Which of these notes speak for the more room, which for the less; a reading is against what it is quoted with."""
    tried = {note.id: note.verdict.startswith("goes in") for note in notes if isinstance(note, Tried)}
    against = {not one for one in tried.values()}
    read = [note.id for note in notes if isinstance(note, Measured)]
    return tried | (dict.fromkeys(read, against.pop()) if len(against) == 1 else {})


def _filled(finding: Finding, blank: _Blank, *, differ: bool) -> Way:
    """Blanks filled: with what they must have been for both notes to be true, or with what the team knows."""
    reads = [word for note, value in blank.fills.items() for word in ("--read", note, f"{blank.field}={value}")]
    if OPEN in blank.fills.values():
        told = f"say the {blank.name} in {listed(list(blank.fills))}: {listed(list(blank.values), 'or')}"
    else:
        told = listed([f"in {note} the {blank.name} was {value}" for note, value in blank.fills.items()])
    differs = ("--differs", blank.axis) if differ else ()
    return Way(told, _line(finding, "both-true", *differs, *reads))


def _strike(finding: Finding, note: str) -> Way:
    return Way(f"strike {note}: it stays readable, with the reason", _line(finding, "one-stands", "--strike", note))


def _weakest_first(notes: Iterable[AnyNote]) -> list[AnyNote]:
    return sorted(notes, key=lambda note: getattr(note, "sure", "") not in WEAK)


def _line(finding: Finding, *words: str) -> str:
    return " ".join(("bezelbook decide", _quoted(finding.key), *map(_quoted, words)))


def _quoted(word: str) -> str:
    """A word as a shell takes it: in double quotes, which every shell knows, where it has more than plain signs."""
    if word and PLAIN.issuperset(word):
        return word
    return f'"{word}"' if not set(word) & set('"$`\\!') else "'" + word.replace("'", "'\"'\"'") + "'"
