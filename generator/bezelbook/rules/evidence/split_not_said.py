"""A note does not say which build the car was, where builds are known to differ at this place."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.builds import bearing_axes, known_splits
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.quote import quote

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all notes of a place that leave a split open that bears on it."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried | Measured]:
    """The notes about room that do not say, and whose model year does not tell, which car it was."""
    car = scope.book.vehicles[scope.vehicle]
    axes = bearing_axes(car, scope.place, "room")
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    room = [
        note
        for note in notes
        if isinstance(note, Measured) or (isinstance(note, Tried) and note.verdict != "not tried")
    ]
    return [note for note in room if not set(axes) <= set(known_splits(car, note.splits, note.year))]


def _finding(scope: PlaceScope, found: list[Tried | Measured]) -> Finding:
    more = f", and {len(found) - MOST_QUOTES} more" if len(found) > MOST_QUOTES else ""
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says=f"{len(found)} of the notes here do not say which build the car was{more}",
        quotes=tuple(Quote(note.id, quote(scope.book, note), ("form",)) for note in found[:MOST_QUOTES]),
        difference="the build",
        proposals=(Proposal("build", "the build: look for the tell, or ask the author within the week"),),
        loss=WRONG_HARNESS,
        question="Which build was the car?",
        answers=("ask its author", "leave it unknown", "look at the next car"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("split-not-said", "Nobody wrote which build", "gap", __doc__ or "", PlaceScope, check)
