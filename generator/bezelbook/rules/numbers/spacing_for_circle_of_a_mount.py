"""A mount's bolt circle is smaller than the hole it stands round, and would not be if it was read hole to hole."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.mount.record import Mount
from bezelbook.reasoning.clashes.bolt_circles import instead
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.shown import show_length

MM = 1_000_000
# How far outside its hole a circle may be and still be that of the hole, in nanometres (common practice, no source).
ROUND_IT = 40 * MM


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding for each pattern of holes that is narrower than the hole inside it."""
    mount = scope.part
    if not isinstance(mount, Mount):
        return
    inside = max((size.base for size in (mount.inner, mount.tabs_in, mount.tabs_out, mount.basket) if size), default=0)
    for index, pattern in enumerate(mount.holes.patterns):
        circle = pattern.circle
        if circle is not None and pattern.holds in (None, "the part") and circle.base < inside:
            meant = instead(circle.base, pattern.count, inside + 2 * MM, inside + ROUND_IT)
            if meant is not None:
                path = ("holes", "patterns", index, "circle")
                quote = Quote(mount.id, f"{mount.name}: bolt circle {circle.typed}", path, "mount")
                yield _finding(quote, circle.typed, show_length(inside), show_length(meant))


def _finding(quote: Quote, typed: str, inside: str, meant: str) -> Finding:
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, "mount", quote.id, *map(str, quote.path))),
        weight="look first",
        says=f"a bolt circle of {typed} lies inside its own hole of {inside}",
        quotes=(quote,),
        difference="through the middles of all holes, or from hole to hole",
        proposals=(
            Proposal("unit", f"{typed} was read from hole to hole: a bolt circle of {meant}"),
            Proposal("one is wrong", "one of its sizes is wrong: put it on the bench again"),
        ),
        loss=SALE_LOST,
        question=f"Is {typed} the bolt circle, or from hole to hole?",
        answers=("bolt circle", "hole to hole", "put it on the bench again"),
    )


RULE = Rule(
    "spacing-for-circle-of-a-mount", "A bolt circle inside its own hole", "slip", __doc__ or "", PartScope, check
)
