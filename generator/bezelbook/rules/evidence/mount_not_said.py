"""A note does not say which mount was used, so that it says little of the place."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import ROOM_REASONS as ROOM
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted

MOST_QUOTES = 3


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding for all notes of a vehicle that leave the mount blank."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: VehicleScope) -> list[Tried]:
    """The notes of something tried that say goes in or does not, and nothing of a mount."""
    notes = unreplaced(scope.book.notes_of(scope.vehicle))
    tried = [note for note in notes if isinstance(note, Tried) and note.verdict in ("goes in", "does not")]
    return [note for note in tried if note.mounts is None and note.reason in ROOM]


def _finding(scope: VehicleScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="tidy up",
        says=f"which mount was used, or that there was none, is blank in {counted(found)}",
        quotes=tuple(Quote.of(scope.book, note, ("verdict",)) for note in found[:MOST_QUOTES]),
        difference="the mount",
        proposals=(Proposal("mount", "the mount: the word none, or which one"),),
        loss=TOO_DEEP,
        question="Which mount was it, or none?",
        answers=("none", "ask its author", "leave it unknown"),
        vehicle=scope.vehicle,
    )


RULE = Rule("mount-not-said", "Nobody wrote which mount", "gap", __doc__ or "", VehicleScope, check)
