"""An opening is written higher than wide, which no opening for a radio is."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WALK
from bezelbook.reasoning.proposal import Proposal

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all such notes of a place."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Measured]:
    """The notes that read an opening for a radio a good deal higher than wide."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    read = [note for note in notes if isinstance(note, Measured) and note.numbers != "read back"]
    return [note for note in read if place is not None and place.kind in LYING and _standing(note)]


# Common practice, no source: these take boxes that are wider than high.
LYING = ("plain opening", "opening behind a bezel")


def _standing(note: Measured) -> bool:
    wide = [reading.reads.base for reading in note.readings if reading.of == "width"]
    high = [reading.reads.base for reading in note.readings if reading.of == "height"]
    return bool(wide and high) and min(high) * 4 > max(wide) * 5


def _finding(scope: PlaceScope, found: list[Measured]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says="the opening is written higher than wide",
        quotes=tuple(Quote.of(scope.book, note, ("readings",)) for note in found[:MOST_QUOTES]),
        difference="which is which",
        proposals=(Proposal("unit", "width and height were swapped when they were written"),),
        loss=WALK,
        question="Which of the two is the width?",
        answers=("they were swapped", "as written", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("width-and-height-swapped", "Width and height swapped", "slip", __doc__ or "", PlaceScope, check)
