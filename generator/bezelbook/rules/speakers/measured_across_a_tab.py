"""Two notes read the two diameters of one bracket, with its tabs in and with them broken out."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.at_place import clashes_at
from bezelbook.reasoning.clashes.clash import Clash
from bezelbook.reasoning.clashes.telling import loss_of, quoted, slip_path
from bezelbook.reasoning.proposal import Proposal


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each state in which the notes of a hole read both diameters of a bracket with tabs."""
    for clash in clashes_at(scope.book, scope.vehicle, scope.place):
        if clash.first.explained.why == "tabs":
            yield _finding(scope, clash)


def _finding(scope: PlaceScope, clash: Clash) -> Finding:
    slip = clash.first.explained
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{clash.state}/{clash.first.size}",
        weight="look first",
        says=f"two notes of one hole differ as the tabs do: {slip.meant}",
        quotes=tuple(Quote.of(scope.book, note, slip_path(clash, note)) for note in quoted(clash)),
        difference="tabs in, or tabs out",
        proposals=(
            Proposal("tabs", f"{slip.typed} in {slip.note} was read with the tabs in, the other with them out"),
            Proposal("one is wrong", "one of them is wrong: measure it again"),
        ),
        loss=loss_of(clash),
        question="Were the tabs in or out when each was read?",
        answers=("in, then out", "no tabs there", "go and look"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("measured-across-a-tab", "Measured across a tab", "slip", __doc__ or "", PlaceScope, check)
