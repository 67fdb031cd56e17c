"""Load resistors of different value, or rated for less, were used in cars of one build."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.fitting import LoadResistor
from bezelbook.reasoning.circuits.cars import cars_of
from bezelbook.reasoning.circuits.one_car import must_be_one
from bezelbook.reasoning.circuits.resistors_tried import Tried, tried_on_one_build
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.quantity import Quantity


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle: the first pair that differs."""
    pairs = [pair for pair in tried_on_one_build(scope.book, scope.vehicle) if _one_build(scope, *pair)]
    for one, other in [pair for pair in pairs if _differ(pair[0].resistor, pair[1].resistor)][:1]:
        said = [_said(one.resistor), _said(other.resistor)]
        yield Finding(
            rule=RULE.name,
            key=f"{RULE.name}/{scope.vehicle}",
            weight="tidy up",
            says=f"a load resistor of {said[0]}, and one of {said[1]}",
            quotes=tuple(Quote.of(scope.book, note, ("resistors",)) for note in (one.note, other.note)),
            difference="the resistor",
            proposals=(
                Proposal("which thing", "both work: the one with a result written down stands, the other worked too"),
                Proposal("package", "the packages differ"),
            ),
            loss=NO_SOUND,
            question="Which one do we use?",
            answers=(said[0], said[1], "either", "the packages differ"),
            vehicle=scope.vehicle,
        )


def _one_build(scope: VehicleScope, one: Tried, other: Tried) -> bool:
    """Whether both cars were of one package and no other; where that is blank, the blank is the question."""
    cars = cars_of(scope.book, scope.book.vehicles[scope.vehicle], one.note.place)
    return must_be_one(cars, one.note, other.note, "amplifier")


def _differ(one: LoadResistor, other: LoadResistor) -> bool:
    rated = one.rated is not None and other.rated is not None and _apart(one.rated, other.rated)
    return _apart(one.value, other.value) or rated


def _apart(one: Quantity, other: Quantity) -> bool:
    """Whether two quantities differ by more than both their ± allow."""
    return abs(one.base - other.base) > (one.give or 0) + (other.give or 0)


def _said(resistor: LoadResistor) -> str:
    return resistor.value.typed + (f", {resistor.rated.typed}" if resistor.rated else "")


RULE = Rule("resistor-values-differ", "Two resistors", "conflict", __doc__ or "", VehicleScope, check)
