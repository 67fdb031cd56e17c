"""Several speakers went in here and nobody wrote how much room there is in front."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.evidence import job_key, unreplaced
from bezelbook.reasoning.losses import GRILLE_BUZZ
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.speakers.cells import SPEAKER_PLACES
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for a place with three jobs and no front clearance."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """What went in, where no note reads the room in front and none was stopped by the grille."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    yeses = [note for note in notes if isinstance(note, Tried) and note.verdict == "goes in" and note.sure in STRONG]
    if place is None or place.kind not in SPEAKER_PLACES or len({job_key(note) for note in yeses}) < LEAST:
        return []
    read = any(
        reading.of == "front clearance" for note in notes if isinstance(note, Measured) for reading in note.readings
    )
    return [] if read else yeses


# Fewer than this is no habit yet.
LEAST = 3


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="tidy up",
        says=f"{len(found)} speakers went in here, and nobody wrote how much room there is in front",
        quotes=tuple(Quote.of(scope.book, note, ("verdict",)) for note in found[:MOST_QUOTES]),
        difference="the room in front",
        proposals=(Proposal("one is wrong", "the room in front: putty on the guard once, with the panel on"),),
        loss=GRILLE_BUZZ,
        question="Who reads the room in front, on which car?",
        answers=("the next car", "somebody remembers", "leave it"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("front-not-looked", "Nobody measured the front", "gap", __doc__ or "", PlaceScope, check)
