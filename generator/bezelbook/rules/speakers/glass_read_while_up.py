"""A note reads how far the glass is when it is down, and says that the glass was up."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import GLASS_HIT
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.speakers.cells import GLASS

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all such notes of a place."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Measured]:
    """The notes that read the glass down and say that it was up."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    read = [note for note in notes if isinstance(note, Measured) and note.glass == "up"]
    return [note for note in read if any(reading.of in GLASS for reading in note.readings)]


def _finding(scope: PlaceScope, found: list[Measured]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says="the room to the glass when it is down was read with the glass up",
        quotes=tuple(Quote.of(scope.book, note, ("readings",)) for note in found[:MOST_QUOTES]),
        difference="the glass",
        proposals=(Proposal("glass", "the glass: read it again fully down, and at its worst"),),
        loss=GLASS_HIT,
        question="Was the glass up or down when it was read?",
        answers=("down", "up, read it again", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("glass-read-while-up", "To the glass, read with it up", "conflict", __doc__ or "", PlaceScope, check)
