"""There are notes of an opening, and none of them gives a depth or a thing of known depth."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.needs import needs_of_note
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.vocabulary import OPENINGS
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for an opening of which no note tells a depth."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried | Measured]:
    """The strong notes of an opening where none gives a depth."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    if place is None or place.kind not in OPENINGS:
        return []
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    room = [note for note in notes if isinstance(note, Measured) or (isinstance(note, Tried) and note.sure in STRONG)]
    return [] if any(_has_depth(scope, note) for note in room) else room


def _has_depth(scope: PlaceScope, note: Tried | Measured) -> bool:
    if isinstance(note, Measured):
        return any(reading.of == "depth" for reading in note.readings)
    needs = needs_of_note(scope.book, note)
    return needs.spans["depth"].high is not None or "depth" in needs.printed


def _finding(scope: PlaceScope, found: list[Tried | Measured]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says="no note of this opening gives a depth",
        quotes=tuple(Quote.of(scope.book, note, ("form",)) for note in found[:MOST_QUOTES]),
        difference="the depth",
        proposals=(
            Proposal("one is wrong", "the depth: a wire to the first thing it meets, two minutes, and name the face"),
        ),
        loss=TOO_DEEP,
        question="Who reads the depth, on which car?",
        answers=("the next car", "somebody remembers", "leave it"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("no-depth-looked", "Nobody wrote how deep", "gap", __doc__ or "", PlaceScope, check)
