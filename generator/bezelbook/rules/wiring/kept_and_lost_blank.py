"""Radios were fitted, and nobody wrote what works afterwards and what does not."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import After
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import SOUND_LOST
from bezelbook.reasoning.proposal import Proposal

SHOWN = 3


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle; only a write-back with an adapter or a module is of something with functions to lose."""
    afters = [note for note in unreplaced(scope.book.notes_of(scope.vehicle)) if isinstance(note, After)]
    blank = [note for note in afters if note.adapters and not note.kept and not note.lost]
    if blank:
        yield Finding(
            rule=RULE.name,
            key=f"{RULE.name}/{scope.vehicle}",
            weight="tidy up",
            says=f"of {len(blank)} write-back{'s' if len(blank) > 1 else ''} nobody knows what works afterwards",
            quotes=tuple(
                Quote(note.id, f"fitted with {', '.join(note.adapters)}", ("adapters",)) for note in blank[:SHOWN]
            ),
            difference="what works and what does not",
            proposals=(Proposal("scope", "ask at the write-back: is anything not working?"),),
            loss=SOUND_LOST,
            question="Is anything not working?",
            answers=("all works", "something does not: write it", "ask its author", "next car"),
            vehicle=scope.vehicle,
            place=blank[0].place,
        )


RULE = Rule("kept-and-lost-blank", "Fitted, and nobody wrote what works", "gap", __doc__ or "", VehicleScope, check)
