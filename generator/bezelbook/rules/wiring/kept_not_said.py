"""A radio or an adapter was written back, and nobody wrote what still works."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import After
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import SOUND_LOST
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle, for all write-backs with an adapter or a module that say nothing of what works."""
    done = [
        note for note in unreplaced(scope.book.notes_of(scope.vehicle)) if isinstance(note, After) and note.adapters
    ]
    found = [note for note in done if not note.kept and not note.lost]
    if not found:
        return
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="tidy up",
        says=f"what still works is blank in {counted(found)} with an adapter",
        quotes=tuple(Quote.of(scope.book, note, ("adapters",)) for note in found[:3]),
        difference="what is kept and what is lost",
        proposals=(Proposal("scope", "ask at the next write-back: anything not working?"),),
        loss=SOUND_LOST,
        question="Anything not working?",
        answers=("all works", "something is lost: write it", "ask its author", "unknown"),
        vehicle=scope.vehicle,
    )


RULE = Rule("kept-not-said", "Nobody wrote what works", "gap", __doc__ or "", VehicleScope, check)
