"""The body of a head unit is measured, and nobody ruled its plug and bend."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.reasoning.losses import LAST_BIT
from bezelbook.reasoning.needs import record_size
from bezelbook.reasoning.proposal import Proposal


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding for a unit with a depth and no plug and bend, on its record or on the bench."""
    unit = scope.part
    known = not isinstance(unit, HeadUnit) or record_size(scope.book, unit, "plug_and_bend") is not None
    if isinstance(unit, HeadUnit) and unit.body_depth is not None and not known:
        yield _finding(unit)


def _finding(unit: HeadUnit) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{unit.id}",
        weight="tidy up",
        says=f"nobody ruled how far the plug of {unit.name} and its bend stand out",
        quotes=(Quote(unit.id, f"{unit.name}: plug and bend not looked", ("body_depth",), "head_unit"),),
        difference="the plug",
        proposals=(Proposal("plugs", "the plug: plug it in on the bench and rule it"),),
        loss=LAST_BIT,
        question=f"Who plugs in {unit.name} on the bench?",
        answers=("today", "when the next one comes", "leave it"),
    )


RULE = Rule("no-plug-allowance", "A unit without its plug", "gap", __doc__ or "", PartScope, check)
