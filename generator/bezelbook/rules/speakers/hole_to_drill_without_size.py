"""A mount has holes to drill, and nobody wrote how large."""

import re
from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.mount.record import Mount
from bezelbook.reasoning.losses import CUT_WRONG
from bezelbook.reasoning.proposal import Proposal


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding for a mount with a hole to drill that has no size."""
    mount = scope.part
    if isinstance(mount, Mount):
        unsized = any(pattern.state == "to drill" and pattern.hole is None for pattern in mount.holes.patterns)
        if unsized or any(not re.search("[0-9]", words) for words in mount.holes.to_drill):
            yield _finding(mount)


def _finding(mount: Mount) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{mount.id}",
        weight="tidy up",
        says=f"{mount.name} has a hole to drill of which nobody wrote the size",
        quotes=(Quote(mount.id, f"{mount.name}: hole to drill, no size", ("holes",), "mount"),),
        difference="the size of the hole",
        proposals=(Proposal("which thing", "the size of the hole: measure the next bracket"),),
        loss=CUT_WRONG,
        question="How large is the hole to drill?",
        answers=("measure the next one", "ask who drilled it", "leave it"),
    )


RULE = Rule("hole-to-drill-without-size", "A hole to drill, and no size", "gap", __doc__ or "", PartScope, check)
