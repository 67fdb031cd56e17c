"""A load resistor is proven for one sound package, and in another nobody tried with and without."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.electric.resistor_rule import resistor_rules
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle, naming the packages in which nobody tried; silent where nobody ever tried anything."""
    rules = resistor_rules(scope.book, scope.book.vehicles[scope.vehicle])
    proven = [proof.note for rule in rules for proof in (*rule.proven, *rule.against)]
    unknown = [_said(rule.package) for rule in rules if rule.says == "unknown"]
    if not proven or not unknown:
        return
    note = proven[0]
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="tidy up",
        says=f"whether {listed(unknown)} wants a load resistor, nobody has tried",
        quotes=(Quote.of(scope.book, note, ("resistors",)),),
        difference="the package",
        proposals=(Proposal("package", "ten minutes with the speaker off, with a resistor and without"),),
        loss=NO_SOUND,
        question="Who tries it, on which car?",
        answers=("a person and a car", "somebody here knows: write it down", "next time"),
        vehicle=scope.vehicle,
    )


def _said(package: Build) -> str:
    return ", ".join(value for _, value in package)


RULE = Rule("load-not-tried", "Nobody tried the load in one package", "gap", __doc__ or "", VehicleScope, check)
