"""One job needed a load resistor and another did not, on cars that nothing on record tells apart."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.fitting import LoadResistor
from bezelbook.reasoning.circuits.resistors import WORKS
from bezelbook.reasoning.circuits.resistors_tried import tried_on_one_build
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle: the first pair of which one played without and the other did not."""
    for one, other in tried_on_one_build(scope.book, scope.vehicle):
        played = _without(one.resistor), _without(other.resistor)
        if None not in played and played[0] != played[1]:
            yield Finding(
                rule=RULE.name,
                key=f"{RULE.name}/{scope.vehicle}",
                weight="look first",
                says="a load resistor is needed, and is not",
                quotes=tuple(Quote.of(scope.book, note, ("resistors",)) for note in (one.note, other.note)),
                difference="whether it plays without a load",
                proposals=(
                    Proposal("package", "it goes by the sound package, which one of them did not write"),
                    Proposal("tool", "one was not left to play for ten minutes"),
                ),
                loss=NO_SOUND,
                question="Which package was each car?",
                answers=("the package differs", "needed in both", "unknown", "try it on the next car"),
                vehicle=scope.vehicle,
            )
            return


def _without(resistor: LoadResistor) -> bool | None:
    """Whether it played without; None where nobody tried."""
    said = resistor.without_it
    return None if said in (None, "not tried") else said == WORKS


RULE = Rule("load-needed-and-not", "A load, and none", "conflict", __doc__ or "", VehicleScope, check)
