"""Two notes of one place cannot be of one bolt circle, and no spacing explains it."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.bolt_circles import Apart, circles_apart
from bezelbook.reasoning.clashes.clash import state_of
from bezelbook.reasoning.differing.explaining import explained
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.proposal import Proposal

# More proposals or quotes than this nobody reads aloud.
MOST = 5
MOST_QUOTES = 6


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each state in which the circles differ."""
    by_state: dict[str, list[Apart]] = {}
    for apart in circles_apart(scope.book, scope.vehicle, scope.place):
        if not apart.meant:
            by_state.setdefault(state_of(apart.builds), []).append(apart)
    for state, found in by_state.items():
        yield _finding(scope, state, found)


def _finding(scope: PlaceScope, state: str, found: list[Apart]) -> Finding:
    one, other = found[0].first, found[0].other
    circles = {circle.note.id: circle for apart in found for circle in (apart.first, apart.other)}
    wrong = Proposal("one is wrong", "one of them is wrong: measure it again")
    vehicle = scope.book.vehicles[scope.vehicle]
    why = explained(scope.book, vehicle, scope.place, (one.note, other.note), weighed=True)[: MOST - 1]
    proposals = (*(one.proposal for one in why), wrong)
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{state}/bolt circle",
        weight="look first",
        says="no one bolt circle makes both of these notes true",
        quotes=tuple(Quote.of(scope.book, circle.note, circle.path) for circle in [*circles.values()][:MOST_QUOTES]),
        difference=proposals[0].words,
        proposals=proposals,
        loss=SALE_LOST,
        question="Both of these cannot be true. What differs?",
        answers=("the build", "a bracket", "tabs in or out", "one of them is wrong", "go and look"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("bolt-circles-differ", "Two bolt circles at one place", "conflict", __doc__ or "", PlaceScope, check)
