"""A speaker went into a door and nobody wrote whether the glass was run down."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import GLASS_HIT
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.speakers.cells import DOORS
from bezelbook.reasoning.speakers.evidence import is_about_speakers
from bezelbook.values.listed import counted
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding for all such notes of a vehicle."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: VehicleScope) -> list[Tried]:
    """What went into a door where the note says nothing of the glass."""
    places = scope.book.vehicles[scope.vehicle].places
    doors = {name for name, place in places.items() if place.kind in DOORS}
    notes = unreplaced(scope.book.notes_of(scope.vehicle))
    tried = [note for note in notes if isinstance(note, Tried) and note.verdict == "goes in" and note.sure in STRONG]
    return [
        note for note in tried if note.place in doors and note.glass is None and is_about_speakers(scope.book, note)
    ]


def _finding(scope: VehicleScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="look first",
        says=f"where the glass was is blank in {counted(found)} of what goes in",
        quotes=tuple(Quote.of(scope.book, note, ("verdict",)) for note in found[:MOST_QUOTES]),
        difference="the glass",
        proposals=(Proposal("glass", "the glass: run it all the way down, and watch it"),),
        loss=GLASS_HIT,
        question="Was the glass run all the way down?",
        answers=("run down", "stayed up", "ask its author", "the next car"),
        vehicle=scope.vehicle,
    )


RULE = Rule("glass-not-said", "Nobody wrote where the glass was", "gap", __doc__ or "", VehicleScope, check)
