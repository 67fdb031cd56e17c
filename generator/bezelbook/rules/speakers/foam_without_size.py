"""A note names foam of which nobody wrote how thick it is."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WHISTLE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.speakers.gasket import gasket_named
from bezelbook.values.listed import counted

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all notes of a place that used such foam."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """What was tried with a gasket that no foam of the book goes by, or one with no thickness."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    tried = [note for note in notes if isinstance(note, Tried) and note.gasket]
    return [note for note in tried if gasket_named(scope.book, note.gasket).held.high is None]


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="tidy up",
        says=f"foam whose thickness nobody wrote is used in {counted(found)}",
        quotes=tuple(Quote.of(scope.book, note, ("gasket",)) for note in found[:MOST_QUOTES]),
        difference="the foam",
        proposals=(Proposal("which thing", "the foam: caliper on the roll, with nothing pressing on it"),),
        loss=WHISTLE,
        question="Which foam was it, and how thick?",
        answers=("1.6 mm", "3 mm", "6 mm", "another", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("foam-without-size", "Foam without a size", "gap", __doc__ or "", PlaceScope, check)
