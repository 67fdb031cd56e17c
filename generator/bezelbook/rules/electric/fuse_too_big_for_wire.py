"""The fuses on an amplifier come to more than the thickest wire that its terminal takes may carry."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.amplifier.record import Amplifier
from bezelbook.reasoning.electric.amounts import amount
from bezelbook.reasoning.electric.conductor import conductor
from bezelbook.reasoning.electric.fuse import largest, on_wire
from bezelbook.reasoning.losses import SOMEONE_HURT
from bezelbook.reasoning.proposal import Proposal


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding an amplifier: a fuse is there to keep the wire from burning, so the wire rules."""
    amplifier = scope.part
    if not isinstance(amplifier, Amplifier) or amplifier.fuses is None or amplifier.largest_wire is None:
        return
    usual = largest(conductor(amplifier.largest_wire))
    says, why = on_wire(amount(amplifier.fuses), usual) if usual else ("unknown", "")
    if says == "the wire is too thin":
        yield Finding(
            rule=RULE.name,
            key=f"{RULE.name}/{amplifier.id}",
            weight="stop",
            says=f"{amplifier.name}: {amplifier.fuses.typed} of fuses on {amplifier.largest_wire} wire: {why}",
            quotes=(
                Quote(amplifier.id, f"fuses: {amplifier.fuses.typed}", ("fuses",), "amplifier"),
                Quote(amplifier.id, f"largest wire: {amplifier.largest_wire}", ("largest_wire",), "amplifier"),
            ),
            difference="the fuse against the wire",
            proposals=(
                Proposal("one is wrong", "one was read off wrongly: read both again; a smaller fuse guards the wire"),
                Proposal("which thing", "it has two power terminals, and each takes a wire of that size"),
            ),
            loss=SOMEONE_HURT,
            question="Which is it: the fuses or the wire?",
            answers=("the fuses are less", "the wire is thicker", "two terminals", "call that car back"),
        )


RULE = Rule("fuse-too-big-for-wire", "Too much fuse for the wire", "conflict", __doc__ or "", PartScope, check)
