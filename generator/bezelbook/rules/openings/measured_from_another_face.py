"""Two notes read the depths of one place the same amount apart wherever both looked, as from two faces."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.at_place import clashes_at
from bezelbook.reasoning.clashes.clash import Clash
from bezelbook.reasoning.clashes.telling import loss_of, quoted, slip_path
from bezelbook.reasoning.proposal import Proposal


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each state in which two notes read one place the same amount apart everywhere."""
    for clash in clashes_at(scope.book, scope.vehicle, scope.place):
        if clash.first.explained.why == "face":
            yield _finding(scope, clash)


def _finding(scope: PlaceScope, clash: Clash) -> Finding:
    slip = clash.first.explained
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{clash.state}/{clash.first.size}",
        weight="look first",
        says=f"the depths in these two notes lie {slip.meant} apart wherever both looked",
        quotes=tuple(Quote.of(scope.book, note, slip_path(clash, note)) for note in quoted(clash)),
        difference="the face they were measured from",
        proposals=(
            Proposal("datum", f"the two were measured from faces {slip.meant} apart"),
            Proposal("one is wrong", "one of them is wrong: measure it again"),
        ),
        loss=loss_of(clash),
        question="From which face was each of these measured?",
        answers=("the same face", "sub-dash face and finished bezel", "kit seat", "one of them is wrong", "ask"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("measured-from-another-face", "The same way apart everywhere", "slip", __doc__ or "", PlaceScope, check)
