"""A hole is written as the size that a speaker is sold as, which no hole is, and other notes say otherwise."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.at_place import clashes_at
from bezelbook.reasoning.clashes.clash import Clash
from bezelbook.reasoning.clashes.telling import loss_of, quoted, slip_path
from bezelbook.reasoning.proposal import Proposal


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each state in which a disputed hole is a size that speakers are sold as."""
    for clash in clashes_at(scope.book, scope.vehicle, scope.place):
        if clash.first.explained.why == "nominal":
            yield _finding(scope, clash)


def _finding(scope: PlaceScope, clash: Clash) -> Finding:
    slip = clash.first.explained
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{clash.state}/{clash.first.size}",
        weight="look first",
        says=f"{slip.typed} in {slip.note} is {slip.meant}, and the other note says that the hole is not",
        quotes=tuple(Quote.of(scope.book, note, slip_path(clash, note)) for note in quoted(clash)),
        difference="a size that was measured, or a name",
        proposals=(
            Proposal("unit", f"{slip.typed} in {slip.note} is {slip.meant}: no size of the hole"),
            Proposal("one is wrong", "one of them is wrong: measure it again"),
        ),
        loss=loss_of(clash),
        question=f"Was {slip.typed} measured, or is it the size it is sold as?",
        answers=("measured", "the size it is sold as", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("nominal-for-cut-out", "The size it is sold as, not the hole", "slip", __doc__ or "", PlaceScope, check)
