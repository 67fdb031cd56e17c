"""Two connectors of one shape are keyed differently, and neither record says not to take one for the other."""

from collections.abc import Iterator

from bezelbook.finding import BookScope, Finding, Quote, Rule
from bezelbook.reasoning.circuits.look_alikes import look_alikes
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal


def check(scope: BookScope) -> Iterator[Finding]:
    """One finding a pair whose keys were looked at and differ; a pair that a record warns of is no fault."""
    records = scope.book.connectors
    for name, one in records.items():
        warned = {like.connector for like in one.looks_like}
        for alike in look_alikes(scope.book, name):
            other = records[alike.connector]
            theirs = {like.connector for like in other.looks_like}
            if name < other.id and alike.difference and other.id not in warned and name not in theirs:
                yield Finding(
                    rule=RULE.name,
                    key=f"{RULE.name}/{name}/{other.id}",
                    weight="look first",
                    says=f"{one.name} and {other.name} have one shape, and each keeps out of the other's hole",
                    quotes=tuple(
                        Quote(half.id, f"{half.name}: {half.shell}", ("keying",), "connector") for half in (one, other)
                    ),
                    difference=alike.difference,
                    proposals=(Proposal("which thing", "two connectors: say so in both records, with pictures"),),
                    loss=WRONG_HARNESS,
                    question="Same key, or two that must not be confused?",
                    answers=("different: write it in both", "the same", "next car"),
                )


RULE = Rule("keyed-differently", "Looks the same, keyed differently", "conflict", __doc__ or "", BookScope, check)
