"""How a question is settled: each answer that a team may give, with the command that writes it down."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import get_args

from bezelbook.finding import Finding, Sort
from bezelbook.kinds.note.record import After, AnyNote, Bench, Measured, Metered, Seen, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import known_splits
from bezelbook.reasoning.differing.axes import SPLIT_AXES, said_on
from bezelbook.reasoning.proposal import Proposal
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
# Where two notes differ and there are two values, what the one says leaves the other for the other.
PAIRS: tuple[Axis, ...] = ("loom", "glass", "tabs", "plugs", "view", "build", "package", "body", "hand", "display")
WEAK = ("told", "eyeballed")
PLAIN = frozenset("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_./=")


@dataclass(frozen=True, slots=True)
class Way:
    """One way to settle a question: the answer as a person gives it, the line to type, whether a finding proposes it."""

    words: str
    line: str
    proposed: bool = True


@dataclass(frozen=True, slots=True)
class _Blank:
    """Something that notes leave blank: the field, what the other notes say there, and what there is to say."""

    axis: Axis
    name: str
    field: str
    notes: tuple[str, ...]
    said: frozenset[str]
    values: tuple[str, ...]

    @property
    def value(self) -> str:
        """What a blank must be for the notes to differ; open where more than one value would do, or nobody can tell."""
        left = [value for value in self.values if value not in self.said]
        sure = self.axis in PAIRS and len(self.notes) == len(left) == 1
        return left[0] if sure else OPEN


def ways_to_settle(book: KnowledgeBase, finding: Finding, sort: Sort, folder: str = "") -> tuple[Way, ...]:
    """Every way to settle a question, the likeliest first, and at the end to go and look or to leave it as it is.

    Where nobody looked there is no loser. `folder` is the book's, where it is not the one that commands take by themselves.
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
    else:
        for blank in _blanks(book, proposal.axis, [note for note in notes if not isinstance(note, Bench)]):
            if blank.notes:
                yield _filled(finding, blank, differ=sort == "conflict")


def _blanks(book: KnowledgeBase, axis: Axis, notes: Sequence[CarNote]) -> Iterator[_Blank]:
    """What these notes leave blank of an axis; a vehicle may have several splits that make up its build."""
    if axis in VALUES:
        every = {note.id: said_on(None, note) for note in notes}
        said = {note: on[axis] for note, on in every.items() if axis in on}
        yield _blank(axis, axis, FIELDS.get(axis, axis), said, VALUES[axis])
    vehicle = book.vehicles.get(notes[0].vehicle) if notes else None
    if vehicle is None:
        return
    for name, split in vehicle.splits.items():
        if axis in ("build", SPLIT_AXES.get(split.differs_in or "build")):
            known = {note.id: known_splits(vehicle, note.splits, note.year).get(name) for note in notes}
            yield _blank(axis, name, f"splits.{name}", known, tuple(split.values))


def _blank(axis: Axis, name: str, field: str, said: Mapping[str, str | None], values: tuple[str, ...]) -> _Blank:
    told = frozenset(value for value in said.values() if value is not None)
    return _Blank(axis, name, field, tuple(note for note, value in said.items() if value is None), told, values)


def _filled(finding: Finding, blank: _Blank, *, differ: bool) -> Way:
    """Blanks filled: with what they must have been for both notes to be true, or with what the team knows."""
    reads = [word for note in blank.notes for word in ("--read", note, f"{blank.field}={blank.value}")]
    of = listed(list(blank.notes))
    choice = listed(list(blank.values), "or")
    words = f"the {blank.name} in {of}: {choice if blank.value == OPEN else blank.value}"
    differs = ("--differs", blank.axis) if differ else ()
    return Way(words, _line(finding, "both-true", *differs, *reads))


def _strike(finding: Finding, note: str) -> Way:
    return Way(f"{note} is wrong: it is struck and stays readable", _line(finding, "one-stands", "--strike", note))


def _weakest_first(notes: Iterable[AnyNote]) -> list[AnyNote]:
    return sorted(notes, key=lambda note: getattr(note, "sure", "") not in WEAK)


def _line(finding: Finding, *words: str) -> str:
    return " ".join(("bezelbook decide", _quoted(finding.key), *map(_quoted, words)))


def _quoted(word: str) -> str:
    """A word as a shell takes it: in double quotes, which every shell knows, where it has more than plain signs."""
    if word and PLAIN.issuperset(word):
        return word
    return f'"{word}"' if not set(word) & set('"$`\\!') else "'" + word.replace("'", "'\"'\"'") + "'"
