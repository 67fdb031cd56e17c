"""A note does not say which mount was used, so that it says little of the place."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import ROOM_REASONS as ROOM
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.quote import quote

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all notes of a place that leave the mount blank."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """The notes of something tried that say goes in or does not, and nothing of a mount."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    tried = [note for note in notes if isinstance(note, Tried) and note.verdict in ("goes in", "does not")]
    return [note for note in tried if note.mounts is None and note.reason in ROOM]


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    more = f", and {len(found) - MOST_QUOTES} more" if len(found) > MOST_QUOTES else ""
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says=f"{len(found)} of the notes here do not say which mount was used, or that there was none{more}",
        quotes=tuple(Quote(note.id, quote(scope.book, note), ("verdict",)) for note in found[:MOST_QUOTES]),
        difference="the mount",
        proposals=(Proposal("mount", "the mount: the word none, or which one"),),
        loss=TOO_DEEP,
        question="Which mount was it, or none?",
        answers=("none", "ask its author", "leave it unknown"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("mount-not-said", "Nobody wrote which mount", "gap", __doc__ or "", PlaceScope, check)
