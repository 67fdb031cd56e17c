"""A write-back names two things that each make the same supply, so that both may have been joined."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.module.record import Module
from bezelbook.kinds.note.record import After
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import FLAT_BATTERY
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import Circuit

SUPPLIES: tuple[Circuit, ...] = ("constant", "accessory", "ignition", "illumination")


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle and supply: the first write-back that names two sources of it."""
    notes = [note for note in unreplaced(scope.book.notes_of(scope.vehicle)) if isinstance(note, After)]
    for circuit in SUPPLIES:
        sources = {note.id: _sources(scope.book, note, circuit) for note in notes}
        first = next((note for note in notes if len(sources[note.id]) > 1), None)
        if first:
            yield _finding(scope, circuit, first, sources[first.id])


def _sources(book: KnowledgeBase, note: After, circuit: Circuit) -> list[str]:
    """The names of what makes it; a module that sits in an adapter named as well is one and the same source."""
    adapters = [found for words in note.adapters if isinstance(found := book.named("adapter", words), Adapter)]
    modules = [found for words in note.adapters if isinstance(found := book.named("module", words), Module)]
    making = {one.name: one.circuits[circuit] for one in adapters if circuit in one.circuits}
    making = {name: way for name, way in making.items() if way.does == "makes"}
    inside = {way.made_by for way in making.values()}
    return [*making, *(one.name for one in modules if circuit in one.outputs and one.id not in inside)]


def _finding(scope: VehicleScope, circuit: Circuit, note: After, sources: list[str]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{circuit}",
        weight="look first",
        says=f"{circuit} comes from {listed(sources)} at once",
        quotes=(Quote.of(scope.book, note, ("adapters",)),),
        difference=f"where {circuit} comes from",
        proposals=(Proposal("which thing", "one of them was capped and not written: choose one, cap the other"),),
        loss=FLAT_BATTERY,
        question="Which one is joined?",
        answers=(*sources[:2], "both: call that car back", "ask its author"),
        vehicle=scope.vehicle,
    )


RULE = Rule("two-sources-joined", "Two sources of one supply", "conflict", __doc__ or "", VehicleScope, check)
