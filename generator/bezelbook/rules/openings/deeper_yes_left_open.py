"""Something deeper goes in where something shallower did not, and only what one note left blank can explain it."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.ladder import Rung, leave_it_open, reversed_pairs
from bezelbook.reasoning.clashes.telling import blanks_of
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for a place: the first pair that can only both be true by something nobody wrote down."""
    car = scope.book.vehicles[scope.vehicle]
    for yes, no in reversed_pairs(scope.book, car, scope.place):
        blanks = (*_strange(yes), *_strange(no), *blanks_of(scope.book, car, scope.place, (yes.note, no.note)))
        if blanks and leave_it_open(scope.book, car, scope.place, yes, no):
            yield _finding(scope, yes, no, blanks)
            return


def _strange(one: Rung) -> tuple[Proposal, ...]:
    """A mount in words that no record has may have held it out any way."""
    words = one.state.stack.strange if one.state.stack else ()
    return tuple(
        Proposal("mount", f'the mount: nobody has written how far "{mount}" holds a thing out') for mount in words
    )


def _finding(scope: PlaceScope, yes: Rung, no: Rung, proposals: tuple[Proposal, ...]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/depth",
        weight="look first",
        says="a strong note has something deeper in than another could get in, and leaves open how",
        quotes=tuple(Quote.of(scope.book, one.note, ("verdict",)) for one in (yes, no)),
        difference=proposals[0].words,
        proposals=proposals,
        loss=TOO_DEEP,
        question="What was different that nobody wrote down?",
        answers=("the mount", "the build", "what was cut", "where the loom was", "plugs on or off", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("deeper-yes-left-open", "Deeper goes in, and nobody wrote how", "gap", __doc__ or "", PlaceScope, check)
