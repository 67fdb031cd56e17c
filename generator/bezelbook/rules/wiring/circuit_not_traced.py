"""A lead is there in an adapter, and nobody has traced what it carries."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.adapter.record import Adapter
from bezelbook.reasoning.circuits.metered_through import does
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import BOUGHT_TWICE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding an adapter, for all circuits of its record that are unknown and that no meter has told since."""
    adapter = scope.part
    if not isinstance(adapter, Adapter):
        return
    metered = {name for note in unreplaced(scope.book.bench_notes(adapter.id)) for name in note.circuits}
    said = [name for name, way in adapter.circuits.items() if way.does == "unknown"]
    open_ = [name for name in said if name not in metered or does(scope.book, adapter, name) == "unknown"]
    if not open_:
        return
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{adapter.id}",
        weight="tidy up",
        says=f"{adapter.name}: nobody has traced {listed(open_)}",
        quotes=(Quote(adapter.id, f"{open_[0]}: unknown", ("circuits", open_[0]), "adapter"),),
        difference="what becomes of it",
        proposals=(Proposal("tool", "meter on the bench, 3 min"),),
        loss=BOUGHT_TWICE,
        question="What does the meter say?",
        answers=("passes", "not there", "broken out", "meter next"),
    )


RULE = Rule("circuit-not-traced", "Nobody traced it", "gap", __doc__ or "", PartScope, check)
