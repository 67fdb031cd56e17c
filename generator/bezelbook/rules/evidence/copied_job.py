"""Two notes tell of one job, which makes one witness and not two."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WALK
from bezelbook.reasoning.proposal import Proposal

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all notes of a place that tell again of a job."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """Each note with one that came before it about the very same job, thing, verdict and state."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    tried = [note for note in notes if isinstance(note, Tried)]
    groups: dict[tuple[object, ...], list[Tried]] = {}
    for note in tried:
        if note.job:
            groups.setdefault((note.job, note.what, note.verdict, note.mounts), []).append(note)
    return [note for group in groups.values() if len(group) > 1 for note in group]


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="tidy up",
        says="these notes have one job tag and say the same, so that they count as one witness",
        quotes=tuple(Quote.of(scope.book, note, ("job",)) for note in found[:MOST_QUOTES]),
        difference="one job or two",
        proposals=(Proposal("which thing", "one job, told twice: it counts once"),),
        loss=WALK,
        question="Are these one job, or two?",
        answers=("same job", "two jobs"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("copied-job", "One job told twice", "gap", __doc__ or "", PlaceScope, check)
