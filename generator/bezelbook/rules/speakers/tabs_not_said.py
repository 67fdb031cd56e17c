"""A bracket with tabs was used, and a note does not say whether they were in or broken out."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import CUT_WRONG
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all notes of a place that leave the tabs blank."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """What was tried through a bracket with tabs, where the note says nothing of them."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    tried = [note for note in notes if isinstance(note, Tried) and note.verdict != "not tried" and note.sure in STRONG]
    return [note for note in tried if note.tabs is None and any(_has_tabs(scope, words) for words in note.mounts or ())]


def _has_tabs(scope: PlaceScope, words: str) -> bool:
    mount = scope.book.mount_named(words)
    return mount is not None and bool(mount.tabs_in or mount.tabs_out)


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says=f"whether the tabs were in or broken out is blank in {counted(found)}",
        quotes=tuple(Quote.of(scope.book, note, ("verdict",)) for note in found[:MOST_QUOTES]),
        difference="the tabs",
        proposals=(Proposal("tabs", "the tabs: in, or broken out, which cannot be undone"),),
        loss=CUT_WRONG,
        question="Were the tabs in or broken out?",
        answers=("in", "broken out", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("tabs-not-said", "Nobody wrote whether the tabs were in", "gap", __doc__ or "", PlaceScope, check)
