"""What went in and what did not lie far apart in depth, and nobody has looked in between."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.clashes.ladder import Rung
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for an opening whose deepest yes and shallowest no leave a wide gap and no depth was read."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


# Common practice, no source: a gap this wide is what customers ask for, in nanometres.
WIDE = 40_000_000


def _found(scope: PlaceScope) -> list[Tried]:
    """The deepest thing that went in and the shallowest that did not, where they lie far apart."""
    car = scope.book.vehicles[scope.vehicle]
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    if any(reading.of == "depth" for note in notes if isinstance(note, Measured) for reading in note.readings):
        return []
    strong = [note for note in notes if isinstance(note, Tried) and note.sure in STRONG]
    rungs = [Rung(scope.book, car, note) for note in strong]
    yeses = [one for one in rungs if one.note.verdict == "goes in" and one.depth.known]
    noes = [one for one in rungs if one.note.verdict == "does not" and one.note.reason == "depth" and one.depth.known]
    if not yeses or not noes:
        return []
    deepest = max(yeses, key=lambda one: one.depth.high or 0)
    shallowest = min(noes, key=lambda one: one.depth.low or 0)
    gap = (shallowest.depth.low or 0) - (deepest.depth.high or 0)
    return [deepest.note, shallowest.note] if gap > WIDE else []


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="tidy up",
        says="nothing was tried or read between what went in and what did not",
        quotes=tuple(Quote.of(scope.book, note, ("verdict",)) for note in found[:MOST_QUOTES]),
        difference="the depth",
        proposals=(Proposal("one is wrong", "the depth: read it, or offer up a box in between"),),
        loss=SALE_LOST,
        question="Who reads the depth, or tries a box in between?",
        answers=("the next car", "somebody remembers", "leave it"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("ladder-hole-too-wide", "A wide gap between yes and no", "gap", __doc__ or "", PlaceScope, check)
