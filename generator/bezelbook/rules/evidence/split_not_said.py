"""A note does not say which build the car was, where builds are known to differ."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.builds import bearing_axes, known_splits
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted

MOST_QUOTES = 3


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding for all notes of a vehicle that leave a split open that bears on it."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: VehicleScope) -> list[Tried | Measured]:
    """The notes about room that do not say, and whose model year does not tell, which car it was."""
    car = scope.book.vehicles[scope.vehicle]
    notes = unreplaced(scope.book.notes_of(scope.vehicle))
    room = [
        note
        for note in notes
        if isinstance(note, Measured) or (isinstance(note, Tried) and note.verdict != "not tried")
    ]
    return [note for note in room if not _axes(car, note) <= set(known_splits(car, note.splits, note.year))]


def _axes(car: Vehicle, note: Tried | Measured) -> set[str]:
    return set(bearing_axes(car, note.place, "room"))


def _finding(scope: VehicleScope, found: list[Tried | Measured]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="tidy up",
        says=f"which build the car was is blank in {counted(found)}",
        quotes=tuple(Quote.of(scope.book, note, ("form",)) for note in found[:MOST_QUOTES]),
        difference="the build",
        proposals=(Proposal("build", "the build: look for the tell, or ask the author within the week"),),
        loss=WRONG_HARNESS,
        question="Which build was the car?",
        answers=("ask its author", "leave it unknown", "look at the next car"),
        vehicle=scope.vehicle,
    )


RULE = Rule("split-not-said", "Nobody wrote which build", "gap", __doc__ or "", VehicleScope, check)
