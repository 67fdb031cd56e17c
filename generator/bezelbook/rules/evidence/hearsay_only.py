"""All that is noted of what goes in here was told, eyeballed or worked out."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for a place of which nobody has fitted, tried or measured anything."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """The weak notes of a place that has no strong one."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    tried = [note for note in notes if isinstance(note, Tried) and note.verdict != "not tried"]
    strong = any(isinstance(note, Measured) for note in notes) or any(note.sure in STRONG for note in tried)
    return [] if strong else tried


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says=f"nobody has fitted or measured anything here, only {listed(sorted({note.sure for note in found}))}",
        quotes=tuple(Quote.of(scope.book, note, ("sure",)) for note in found[:MOST_QUOTES]),
        difference="how sure",
        proposals=(Proposal("how sure", "how sure: measure it before it is sold"),),
        loss=TOO_DEEP,
        question="Who measures it, on which car?",
        answers=("measure the next car", "ask which mount and loom", "leave it as told"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("hearsay-only", "Nothing but hearsay", "gap", __doc__ or "", PlaceScope, check)
