"""An adapter's record says one thing of a circuit, and a meter on the bench another.

A lead may be there and end in an empty cavity; what was metered counts until the record is mended.
"""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.circuits import Does
from bezelbook.kinds.note.record import Bench
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import FLAT_BATTERY, NO_SOUND
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import CIRCUITS, Circuit

POWER = ("constant", "accessory", "ignition", "ground")
SHOWN = 3


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding an adapter, for all circuits whose record and bench notes cannot all be true."""
    adapter = scope.part
    if not isinstance(adapter, Adapter):
        return
    notes = unreplaced(scope.book.bench_notes(adapter.id))
    argued = [circuit for circuit in CIRCUITS if len(_words(adapter, notes, circuit)) > 1]
    if argued:
        yield _finding(adapter, argued, [note for note in notes if set(argued) & set(note.circuits)], scope)


def _words(adapter: Adapter, notes: list[Bench], circuit: Circuit) -> set[Does]:
    way = adapter.circuits.get(circuit)
    metered = [note.circuits[circuit].does for note in notes if circuit in note.circuits]
    return {word for word in (*([way.does] if way else []), *metered) if word != "unknown"}


def _finding(adapter: Adapter, argued: list[Circuit], notes: list[Bench], scope: PartScope) -> Finding:
    first = argued[0]
    way = adapter.circuits.get(first)
    own = [Quote(adapter.id, f"{first}: {way.does}", ("circuits", first), "adapter")] if way else []
    benches = [Quote.of(scope.book, note, ("circuits",)) for note in notes[:SHOWN]]
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{adapter.id}",
        weight="look first",
        says=f"{adapter.name}: record and meter differ in {listed(argued[:SHOWN])}",
        quotes=(*own, *benches),
        difference=f"whether {first} comes through",
        proposals=(
            Proposal("one is wrong", "a lead is there and its cavity is empty: the meter stands, mend the record"),
            Proposal("which thing", "two adapters that look alike, under one name"),
        ),
        loss=FLAT_BATTERY if first in POWER else NO_SOUND,
        question=f"Is {first} there at the far end?",
        answers=("there", "not there", "two adapters under one name", "meter next"),
    )


RULE = Rule("adapter-and-meter-differ", "The record and the meter", "conflict", __doc__ or "", PartScope, check)
