"""Connectors look alike, and nobody has looked at the keys of both."""

from collections.abc import Iterator

from bezelbook.finding import BookScope, Finding, Quote, Rule
from bezelbook.reasoning.circuits.look_alikes import look_alikes
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal


def check(scope: BookScope) -> Iterator[Finding]:
    """One finding a pair of one shape of which one has its keying left blank."""
    records = scope.book.connectors
    for name, one in records.items():
        for alike in look_alikes(scope.book, name):
            other = records[alike.connector]
            blank = [half for half in (one, other) if half.keying in (None, "not looked", ())]
            if name < other.id and not alike.difference and blank:
                yield Finding(
                    rule=RULE.name,
                    key=f"{RULE.name}/{name}/{other.id}",
                    weight="tidy up",
                    says=f"{one.name} and {other.name} look alike, and nobody has looked at both keys",
                    quotes=tuple(
                        Quote(half.id, f"{half.name}: keying not looked", ("shell",), "connector") for half in blank
                    ),
                    difference="the keying",
                    proposals=(Proposal("which thing", "lay both side by side and take a picture of both faces"),),
                    loss=WRONG_HARNESS,
                    question="Same key?",
                    answers=("same", "different", "next car"),
                )


RULE = Rule("key-not-looked", "Nobody looked at the keys", "gap", __doc__ or "", BookScope, check)
