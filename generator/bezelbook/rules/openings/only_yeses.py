"""Several things went in here and nobody wrote what would not, or how much was left."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.reasoning.evidence import job_key, unreplaced
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.vocabulary import OPENINGS
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for an opening where three or more went in and nothing says where it ends."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """What went in, where no depth was read, nothing was refused for depth and nobody wrote what was to spare."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    yeses = [note for note in notes if isinstance(note, Tried) and note.verdict == "goes in" and note.sure in STRONG]
    if place is None or place.kind not in OPENINGS or len({job_key(note) for note in yeses}) < LEAST:
        return []
    return [] if any(_ends(note) for note in notes) else yeses


def _ends(note: AnyNote) -> bool:
    """Whether a note says where the room ends."""
    if isinstance(note, Measured):
        return any(reading.of == "depth" for reading in note.readings)
    return isinstance(note, Tried) and (note.to_spare is not None or note.verdict == "does not")


# Fewer than this is no habit yet.
LEAST = 3


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="tidy up",
        says=f"{len(found)} things went in here, and nothing says how deep it goes",
        quotes=tuple(Quote.of(scope.book, note, ("verdict",)) for note in found[:MOST_QUOTES]),
        difference="the depth",
        proposals=(Proposal("one is wrong", "the depth: write what was left over at the next one"),),
        loss=SALE_LOST,
        question="Who reads the depth the next time it is open?",
        answers=("the next car", "somebody remembers", "leave it"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("only-yeses", "Nothing ever stopped anything", "gap", __doc__ or "", PlaceScope, check)
