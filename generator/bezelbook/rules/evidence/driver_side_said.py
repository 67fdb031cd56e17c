"""A note speaks of the driver or passenger side, and does not say on which side the wheel was."""

import re
from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Seen, Tried
from bezelbook.reasoning.builds import known_splits
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import GLASS_HIT
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all such notes of a place, where cars of both hands were built."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried | Measured | Seen]:
    """The notes that name a side by who sits there, where the hand of the car is left open."""
    car = scope.book.vehicles[scope.vehicle]
    hands = {axis for axis, split in car.splits.items() if split.differs_in == "hand" or axis == "hand"}
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    said = [note for note in notes if isinstance(note, Tried | Measured | Seen) and SPOKEN.search(note.words or "")]
    return [note for note in said if hands and not hands <= set(known_splits(car, note.splits, note.year))]


SPOKEN = re.compile(r"(?i)\b(?:driver|passenger)(?:'s)?[- ](?:side|door)\b")


def _finding(scope: PlaceScope, found: list[Tried | Measured | Seen]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says=f"a side is named by who sits there, and the wheel may be on either side, in {counted(found)}",
        quotes=tuple(Quote.of(scope.book, note, ("words",)) for note in found[:MOST_QUOTES]),
        difference="the hand",
        proposals=(Proposal("hand", "the hand: on which side the wheel was"),),
        loss=GLASS_HIT,
        question="Left or right, sitting in the car facing forward?",
        answers=("left", "right", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("driver-side-said", "Driver side, not left or right", "gap", __doc__ or "", PlaceScope, check)
