"""A note names a ring or a spacer of which no record says how thick it is."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import GLASS_HIT
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.speakers.cells import SPEAKER_PLACES
from bezelbook.values.listed import counted

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all notes of a place that used such a ring."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """What was tried on a ring whose thickness is not on record, or in words that no record goes by."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    if place is None or place.kind not in SPEAKER_PLACES:
        return []
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    tried = [note for note in notes if isinstance(note, Tried) and note.mounts not in (None, "none")]
    return [note for note in tried if any(_unmeasured(scope, words) for words in note.mounts or ())]


def _unmeasured(scope: PlaceScope, words: str) -> bool:
    mount = scope.book.mount_named(words)
    if mount is None:
        return True
    return mount.mount_kind == "spacer" and mount.thickness is None and mount.proud is None


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says=f"a ring whose thickness nobody wrote is used in {counted(found)}",
        quotes=tuple(Quote.of(scope.book, note, ("mounts",)) for note in found[:MOST_QUOTES]),
        difference="the ring",
        proposals=(Proposal("mount", "the ring: put the one from the shelf under the caliper"),),
        loss=GLASS_HIT,
        question="Which ring was it, and how thick?",
        answers=("10 mm", "12.7 mm", "18 mm", "another", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("ring-thickness-blank", "A ring nobody measured", "gap", __doc__ or "", PlaceScope, check)
