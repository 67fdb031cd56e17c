"""The builds of a vehicle are told by model year, and no build lists one of the years."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding for each split whose values list years and leave some out."""
    car = scope.book.vehicles[scope.vehicle]
    for axis, split in car.splits.items():
        seen = {year for value in split.values.values() for year in value.years}
        holes = [year for year in range(1, car.model_years + 1) if year not in seen]
        if seen and holes:
            yield _finding(scope, axis, listed([f"year {year}" for year in holes]))


def _finding(scope: VehicleScope, axis: str, holes: str) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{axis}",
        weight="tidy up",
        says=f"nobody has seen which {axis} a car of {holes} is",
        quotes=(Quote(scope.vehicle, f"{axis}: no build lists {holes}", ("splits", axis), "vehicle"),),
        difference="the build",
        proposals=(Proposal("build", f"the build: look at any car of {holes}"),),
        loss=WRONG_HARNESS,
        question=f"Who looks at a car of {holes}?",
        answers=("the next car", "somebody remembers", "leave it"),
        vehicle=scope.vehicle,
    )


RULE = Rule("year-hole", "A model year nobody has seen", "gap", __doc__ or "", VehicleScope, check)
