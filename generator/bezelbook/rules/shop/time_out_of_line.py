"""One time of a job is more than twice what the others took, so that it may have covered something else."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import After
from bezelbook.reasoning.counts.minutes import Spent, minutes
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import QUOTED_SHORT
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.shown import show_minutes


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each scope of work at the place; a first time is allowed to take long."""
    notes = [note for note in unreplaced(scope.book.notes_at(scope.vehicle, scope.place)) if isinstance(note, After)]
    for one in minutes(notes):
        if one.ask_scope:
            longest, usual = one.ask_scope[-1], one.usual[-1]
            yield Finding(
                rule=RULE.name,
                key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{one.scope}",
                weight="tidy up",
                says=f"{one.scope} took {show_minutes(longest.seconds)} once and {one.words} otherwise",
                quotes=tuple(Quote(spent.note.id, _words(spent, one.scope), ("times",)) for spent in (longest, usual)),
                difference="what the time covers",
                proposals=(
                    Proposal("scope", "the long one covered something else, such as a screen or the doors"),
                    Proposal("unit", "one of them is in hours and the other in minutes"),
                ),
                loss=QUOTED_SHORT,
                question="Was it the same work?",
                answers=("no, split it", "yes, count it", "first time", "ask its author"),
                vehicle=scope.vehicle,
                place=scope.place,
            )


def _words(spent: Spent, scope: str) -> str:
    return f"{scope}: {show_minutes(spent.seconds)}"


RULE = Rule("time-out-of-line", "Far longer than the others", "conflict", __doc__ or "", PlaceScope, check)
