"""A size on a part's own record lies outside anything a shop meets, and would be usual in another unit."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.reasoning.losses import BOUGHT_TWICE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.slips.odd import Odd, odd_numbers


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding for each number of the record that looks mistyped."""
    for odd in odd_numbers(scope.part):
        yield _finding(scope, odd)


def _finding(scope: PartScope, odd: Odd) -> Finding:
    proposals = tuple(Proposal("unit", f"{odd.typed} was meant in {unit}: {value}") for unit, value in odd.meant)
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, scope.kind, scope.part.id, *map(str, odd.path))),
        weight="look first",
        says=f"{odd.field} {odd.typed} of {scope.part.id} is outside the usual {odd.usual}",
        quotes=(Quote(scope.part.id, f"{odd.field} {odd.typed}", odd.path, scope.kind),),
        difference="the unit",
        proposals=proposals or (Proposal("one is wrong", "the number was typed wrong: put it on the bench again"),),
        loss=BOUGHT_TWICE,
        question=f"What did {odd.typed} mean?",
        answers=(*(f"{unit}: {value}" for unit, value in odd.meant), "it stands as typed", "put it on the bench again"),
    )


RULE = Rule("unit-slip-on-a-part", "A part's size in the wrong unit", "slip", __doc__ or "", PartScope, check)
