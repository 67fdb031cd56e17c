"""A bolt circle disagrees with another note just as the way from hole to hole does."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.bolt_circles import Apart, circles_apart
from bezelbook.reasoning.clashes.clash import state_of
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.proposal import Proposal


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each note whose circle is a spacing."""
    told: set[str] = set()
    for apart in circles_apart(scope.book, scope.vehicle, scope.place):
        if apart.meant and apart.first.note.id not in told:
            told.add(apart.first.note.id)
            yield _finding(scope, apart)


def _finding(scope: PlaceScope, apart: Apart) -> Finding:
    one, other = apart.first, apart.other
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, scope.vehicle, scope.place, state_of(apart.builds), one.note.id)),
        weight="look first",
        says=f"a bolt circle of {one.typed} is what holes on the circle of the other note are apart",
        quotes=(
            Quote.of(scope.book, one.note, one.path),
            Quote.of(scope.book, other.note, other.path),
        ),
        difference="through the middles of all holes, or from hole to hole",
        proposals=(
            Proposal(
                "unit",
                f"{one.typed} was read from hole to hole: a bolt circle of {apart.meant}",
                (one.note.id, "measured_to=hole spacing"),
            ),
            Proposal("one is wrong", "one of them is wrong: measure it again"),
        ),
        loss=SALE_LOST,
        question=f"Is {one.typed} the bolt circle, or from hole to hole?",
        answers=("bolt circle", "hole to hole", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("spacing-for-bolt-circle", "Hole to hole, not the bolt circle", "slip", __doc__ or "", PlaceScope, check)
