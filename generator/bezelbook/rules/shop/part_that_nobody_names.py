"""Things lie about that no note, no job and no other part names, and that nobody says what they are for."""

from collections.abc import Iterator

from bezelbook.finding import BookScope, Finding, Quote, Rule
from bezelbook.kinds.record import Named, Record, kind_of
from bezelbook.reasoning.losses import BOUGHT_TWICE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed

KINDS = ("mount", "adapter", "module", "speaker", "head_unit", "amplifier")
SHOWN = 3


def check(scope: BookScope) -> Iterator[Finding]:
    """One finding for all of them; what was made for a vehicle has its reason, used or not."""
    lonely = [
        part
        for kind in KINDS
        for part in scope.book.records.get(kind, {}).values()
        if not scope.book.pointers_to(kind, part.id) and not getattr(part, "made_for", ())
    ]
    if lonely:
        names = [part.name if isinstance(part, Named) else part.id for part in lonely]
        more = [f"{len(names) - SHOWN} more"] if len(names) > SHOWN else []
        yield Finding(
            rule=RULE.name,
            key=f"{RULE.name}/book",
            weight="tidy up",
            says=f"nobody names {listed([*names[:SHOWN], *more], 'or')}",
            quotes=tuple(_quote(part) for part in lonely[:SHOWN]),
            difference="what it is for",
            proposals=(Proposal("which thing", "it goes by another name in a note, or it is only in the way"),),
            loss=BOUGHT_TWICE,
            question="What is it for?",
            answers=("write down what it is for", "take it out", "leave it"),
        )


def _quote(part: Record) -> Quote:
    return Quote(part.id, part.name if isinstance(part, Named) else part.id, ("name",), kind_of(type(part)))


RULE = Rule("part-that-nobody-names", "Lies about, and nobody uses it", "gap", __doc__ or "", BookScope, check)
