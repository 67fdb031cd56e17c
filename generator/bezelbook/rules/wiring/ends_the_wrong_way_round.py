"""An adapter's end for the car is shaped like the car's loom, and its end for the radio like the radio."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.adapter.record import Adapter
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal

GOES_BETWEEN = ("plug-in", "T")
ENDS = {"a": "vehicle side", "b": "unit side"}


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding an adapter that goes between car and radio and whose two ends are swapped on paper."""
    adapter = scope.part
    if not isinstance(adapter, Adapter) or adapter.adapter_kind not in GOES_BETWEEN:
        return
    if {name: adapter.ends[name].side for name in ENDS if name in adapter.ends} == ENDS:
        yield Finding(
            rule=RULE.name,
            key=f"{RULE.name}/{adapter.id}",
            weight="look first",
            says=f"{adapter.name}: its end for the car cannot mate with the car",
            quotes=tuple(
                Quote(adapter.id, f"end {name}: {side}", ("ends", name, "side"), "adapter")
                for name, side in ENDS.items()
            ),
            difference="which half each end is",
            proposals=(
                Proposal("side", "the two ends were swapped in writing: a takes the car's plug"),
                Proposal("which thing", "it goes the other way: a reverse adapter"),
            ),
            loss=WRONG_HARNESS,
            question="Which end takes the car's plug?",
            answers=("end a: swap them", "end b", "it is a reverse adapter", "look at it"),
        )


RULE = Rule("ends-the-wrong-way-round", "Ends swapped", "conflict", __doc__ or "", PartScope, check)
