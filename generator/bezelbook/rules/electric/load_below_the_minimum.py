"""An amplifier is said to give power into a load that is lower than the lowest it is made for."""

from collections.abc import Iterator
from typing import Literal

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.amplifier.record import Amplifier
from bezelbook.reasoning.electric.amounts import between
from bezelbook.reasoning.electric.least_load import Least, may_see
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding an amplifier: the first line of its power that cannot be."""
    amplifier = scope.part
    if not isinstance(amplifier, Amplifier):
        return
    least = Least(amplifier.least_load, amplifier.least_load_bridged)
    for index, gives in enumerate(amplifier.power):
        how: Literal["single", "bridged"] = gives.bridged or "single"
        sight = may_see(between(gives.load), least, how)
        if sight.says == "below the minimum":
            limit = "least_load_bridged" if how == "bridged" and amplifier.least_load_bridged else "least_load"
            yield Finding(
                rule=RULE.name,
                key=f"{RULE.name}/{amplifier.id}",
                weight="stop",
                says=f"{amplifier.name}: {sight.why}",
                quotes=(
                    Quote(amplifier.id, f"{gives.watts.typed} into {gives.load.typed}", ("power", index), "amplifier"),
                    Quote(amplifier.id, f"{limit.replace('_', ' ')}", (limit,), "amplifier"),
                ),
                difference="the load",
                proposals=(
                    Proposal("one is wrong", "its printed lowest load stands; that it ran is no advice"),
                    Proposal("which thing", "one line is for one channel, the other for two bridged"),
                ),
                loss=NO_SOUND,
                question="What is the lowest load printed on it?",
                answers=("the lowest load stands", "the power line stands", "read it off again"),
            )
            return


RULE = Rule("load-below-the-minimum", "A load below the lowest", "conflict", __doc__ or "", PartScope, check)
