"""Fasteners of one kind on one piece were counted differently."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.losses import CLIPS_GONE
from bezelbook.reasoning.order.accounts import accounts_of
from bezelbook.reasoning.order.fixings import Fixing, fixings
from bezelbook.reasoning.order.step import name_of, offs, path_of
from bezelbook.reasoning.proposal import Proposal


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a piece and kind whose counts in notes of builds that may be the same differ."""
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    accounts = accounts_of(book, vehicle).counting
    notes = [one.note for one in accounts]
    known = {one.note.id: one for one in accounts}
    for piece in sorted({off.piece for note in notes for off in note.pieces}):
        rows = [(row, note.id) for off, note in offs(notes, piece) for row in off.fasteners]
        for fixing in fixings(book, rows):
            least, most = _ends(fixing)
            if least != most and known[least].may_be_like(known[most]):
                yield _finding(book, vehicle, piece, fixing, (known[least].note, known[most].note))


def _ends(fixing: Fixing) -> tuple[str, str]:
    """The note that counted fewest and the one that counted most; the same one twice where all agree."""
    counts = sorted(fixing.counts, key=lambda said: said.what)
    return (counts[0].notes[0], counts[-1].notes[0]) if counts else ("", "")


def _finding(book: KnowledgeBase, vehicle: Vehicle, piece: str, fixing: Fixing, notes: tuple[Seen, Seen]) -> Finding:
    counts = sorted(said.what for said in fixing.counts)
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, vehicle.id, piece, fixing.record or fixing.name, fixing.where or "anywhere")),
        weight="tidy up",
        says=f"{counts[0]} or {counts[-1]} {fixing.name} on the {name_of(vehicle, piece)}",
        quotes=tuple(
            Quote.of(book, note, path_of(note, off)) for off, note in (offs((note,), piece)[0] for note in notes)
        ),
        difference="the count",
        proposals=(
            Proposal("scope", "one of them counted only those that he saw: the larger number is safe for ordering"),
            Proposal("build", "the cars differ"),
        ),
        loss=CLIPS_GONE,
        question=f"{counts[0]} or {counts[-1]}?",
        answers=(f"{counts[-1]} for ordering", "count them on the next car", "the cars differ"),
        vehicle=vehicle.id,
        place=notes[0].place,
    )


RULE = Rule("clips-counted-differently", "Counted twice, differently", "conflict", __doc__ or "", VehicleScope, check)
