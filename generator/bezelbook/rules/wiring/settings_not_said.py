"""A module with something to set was fitted, and nobody wrote how it was left."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.module.record import Module
from bezelbook.kinds.note.record import After
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import SOUND_LOST
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle, for all write-backs that name a module with settings and leave them blank."""
    done = [note for note in unreplaced(scope.book.notes_of(scope.vehicle)) if isinstance(note, After)]
    found = [note for note in done if not note.settings and any(_settable(scope, words) for words in note.adapters)]
    if not found:
        return
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="tidy up",
        says=f"how the module was set is blank in {counted(found)}",
        quotes=tuple(Quote.of(scope.book, note, ("adapters",)) for note in found[:3]),
        difference="the settings",
        proposals=(Proposal("scope", "a photo of its switches before the dash closes"),),
        loss=SOUND_LOST,
        question="How was it set?",
        answers=("as printed", "ask its author", "photo next time"),
        vehicle=scope.vehicle,
    )


def _settable(scope: VehicleScope, words: str) -> bool:
    module = scope.book.named("module", words)
    return isinstance(module, Module) and bool(module.settings)


RULE = Rule("settings-not-said", "Nobody wrote the settings", "gap", __doc__ or "", VehicleScope, check)
