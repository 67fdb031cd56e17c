"""One and the same thing is said to go in and not to go in, in one state of one place."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.at_place import clashes_at
from bezelbook.reasoning.clashes.clash import Clash
from bezelbook.reasoning.clashes.telling import loss_of, path_of, proposals_of, quoted

ANSWERS = ("the mount", "the build", "tabs, loom or plugs", "what was cut", "one of them is wrong", "go and look")


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each state in which a thing does both; for want of depth, the ladder tells it."""
    for clash in clashes_at(scope.book, scope.vehicle, scope.place):
        if clash.first.explained.why == "same thing":
            yield _finding(scope, clash)


def _finding(scope: PlaceScope, clash: Clash) -> Finding:
    proposals = proposals_of(scope.book, scope.vehicle, scope.place, clash.first)
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{clash.state}/{clash.first.size}",
        weight="stop",
        says="one and the same thing is said to go in and not to go in",
        quotes=tuple(Quote.of(scope.book, note, path_of(note)) for note in quoted(clash)),
        difference=proposals[0].words,
        proposals=proposals,
        loss=loss_of(clash),
        question="Both of these cannot be true. What differs?",
        answers=ANSWERS,
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("goes-in-and-does-not", "It goes in, and it does not", "conflict", __doc__ or "", PlaceScope, check)
