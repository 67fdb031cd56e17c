"""Something goes into the hole and takes away something the customer had."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import COVERED
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all yeses of a place that lost something."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """What is said to go in, with something no longer working or out of reach."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    yeses = [note for note in notes if isinstance(note, Tried) and note.verdict == "goes in" and note.sure in STRONG]
    return [note for note in yeses if IN_THE_WAY & set(note.lost)]


# What a screen covers or a box leaves no room for; the wiring loses the rest.
IN_THE_WAY = {"hazard switch", "climate readout", "outlet", "clock"}


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="look first",
        says=f"in the way though it goes in: {listed(sorted({lost for note in found for lost in note.lost}))}",
        quotes=tuple(Quote.of(scope.book, note, ("lost",)) for note in found[:MOST_QUOTES]),
        difference="the hole, or the use",
        proposals=(Proposal("scope", "the hole takes it, the use does not: say goes in if"),),
        loss=COVERED,
        question="Does it go in, or does it go in but?",
        answers=("goes in, but", "goes in", "did not look"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("in-but-in-the-way", "It goes in, but", "conflict", __doc__ or "", PlaceScope, check)
