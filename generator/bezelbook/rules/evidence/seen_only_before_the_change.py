"""Builds are told by model year, and all that was noted here was seen on cars older than the newest build."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.builds import bearing_axes, known_splits
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for a place of which every strong note is of a build that ended."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried | Measured]:
    """The strong notes of a place, where none may be of the newest build."""
    car = scope.book.vehicles[scope.vehicle]
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    room = [note for note in notes if isinstance(note, Measured) or (isinstance(note, Tried) and note.sure in STRONG)]
    for axis in bearing_axes(car, scope.place, "room"):
        values = car.splits[axis].values
        lasts = {value: max(one.years) for value, one in values.items() if one.years}
        said = [known_splits(car, note.splits, note.year).get(axis) for note in room]
        if room and len(lasts) > 1 and all(value in lasts and lasts[value] < max(lasts.values()) for value in said):
            return room
    return []


def _finding(scope: PlaceScope, found: list[Tried | Measured]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="tidy up",
        says="all that was noted here is of cars older than the newest build",
        quotes=tuple(Quote.of(scope.book, note, ("form",)) for note in found[:MOST_QUOTES]),
        difference="the build",
        proposals=(Proposal("build", "the build: look at the next new one"),),
        loss=SALE_LOST,
        question="Is it still so on the newest build?",
        answers=("still good", "no longer", "look at the next one"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("seen-only-before-the-change", "Not looked at since it changed", "gap", __doc__ or "", PlaceScope, check)
