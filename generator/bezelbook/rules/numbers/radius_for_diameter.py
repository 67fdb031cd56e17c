"""A hole is written half as wide as another note says, or as what went in asks: it was measured to the middle."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.at_place import clashes_at
from bezelbook.reasoning.clashes.clash import Clash
from bezelbook.reasoning.clashes.telling import loss_of, quoted, slip_path
from bezelbook.reasoning.proposal import Proposal


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each state in which twice a hole agrees with the other notes and the hole does not."""
    for clash in clashes_at(scope.book, scope.vehicle, scope.place):
        if clash.first.explained.why == "radius":
            yield _finding(scope, clash)


def _finding(scope: PlaceScope, clash: Clash) -> Finding:
    slip = clash.first.explained
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{clash.state}/{clash.first.size}",
        weight="look first",
        says=f"{slip.typed} in {slip.note} is half of what the other note says of the hole",
        quotes=tuple(Quote.of(scope.book, note, slip_path(clash, note)) for note in quoted(clash)),
        difference="across, or to the middle",
        proposals=(
            Proposal(
                "unit",
                f"{slip.typed} in {slip.note} was measured to the middle: {slip.meant} across",
                (slip.note, "measured_to=to the middle"),
            ),
            Proposal("one is wrong", "one of them is wrong: measure it again"),
        ),
        loss=loss_of(clash),
        question=f"Is {slip.typed} across, or to the middle?",
        answers=("across", "to the middle", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("radius-for-diameter", "Measured to the middle, not across", "slip", __doc__ or "", PlaceScope, check)
