"""The impedance of a speaker is no usual one, and a little less than one: it was read with a meter."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.reasoning.losses import TWEETER_GONE
from bezelbook.reasoning.proposal import Proposal

# Common practice, no source: what speakers are sold as, in micro-ohms, and what a meter reads of that, in percent.
SOLD = tuple(ohms * 1_000_000 for ohms in (2, 3, 4, 6, 8, 16))
LEAST, MOST = 78, 93


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding for a speaker whose nominal impedance is what a meter would read of a usual one."""
    speaker = scope.part
    if isinstance(speaker, Speaker) and speaker.impedance is not None and speaker.impedance.base % 1_000_000:
        base = speaker.impedance.base
        for sold in SOLD:
            if LEAST * sold <= 100 * base <= MOST * sold:
                yield _finding(speaker, speaker.impedance.typed, sold // 1_000_000)
                return


def _finding(speaker: Speaker, typed: str, sold: int) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{speaker.id}",
        weight="look first",
        says=f"{typed} of {speaker.name} is what a meter reads of {sold} ohm",
        quotes=(Quote(speaker.id, f"{speaker.name}: impedance {typed}", ("impedance",), "speaker"),),
        difference="printed, or read with a meter",
        proposals=(Proposal("unit", f"{typed} was read with a meter: nominal {sold} ohm"),),
        loss=TWEETER_GONE,
        question=f"Is {typed} printed on it, or read with a meter?",
        answers=("read with a meter", "printed on it", "put it on the bench"),
    )


RULE = Rule("dc-reading-for-nominal", "A meter reading for the nominal", "slip", __doc__ or "", PartScope, check)
