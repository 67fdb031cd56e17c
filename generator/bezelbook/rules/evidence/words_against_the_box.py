"""The words of a note tell of cutting or trimming, and its own field says that nothing was cut."""

import re
from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import CUT_WRONG
from bezelbook.reasoning.proposal import Proposal

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all such notes of a place."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """What was tried with nothing cut, by notes whose words tell of a cut."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    tried = [note for note in notes if isinstance(note, Tried) and note.cut == "nothing"]
    return [
        note for note in tried if CUT.search(" ".join((note.words or "", note.differed or "", note.condition or "")))
    ]


# Somebody did it, had to do it, or it was done; not "no cutting", and not "would have to be cut".
CUT = re.compile(
    r"(?i)\b(?:had to|i|we|and|then) (?:cut|trim|trimmed|file|filed|drill|drilled|grind|ground|saw|sawed)\b"
)


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says="the words of the note tell of a cut, and its field says that nothing was cut",
        quotes=tuple(Quote.of(scope.book, note, ("cut",)) for note in found[:MOST_QUOTES]),
        difference="what was cut",
        proposals=(Proposal("cut", "what was cut: take it from the words"),),
        loss=CUT_WRONG,
        question="Was anything cut?",
        answers=("yes, as the words say", "nothing was cut", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule(
    "words-against-the-box", "The words say cut, the box says nothing", "conflict", __doc__ or "", PlaceScope, check
)
