"""One side was looked at and the other was only assumed to be the same."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Measured, Seen
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import GLASS_HIT
from bezelbook.reasoning.proposal import Proposal


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding for each side that is only assumed to be as the other, until somebody measures there."""
    told: set[str] = set()
    for note in unreplaced(scope.book.notes_of(scope.vehicle)):
        if isinstance(note, Measured | Seen) and note.other_side == "assumed the same":
            of = scope.book.vehicles[scope.vehicle].places.get(note.place)
            other = of.other_side if of else None
            if other and other not in told and not _measured(scope, other):
                told.add(other)
                yield _finding(scope, note, other)


def _measured(scope: VehicleScope, place: str) -> bool:
    return any(isinstance(note, Measured) for note in scope.book.notes_at(scope.vehicle, place))


def _finding(scope: VehicleScope, note: Measured | Seen, other: str) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{other}",
        weight="look first",
        says=f"{other} was only assumed to be the same as {note.place}",
        quotes=(Quote.of(scope.book, note, ("other_side",)),),
        difference="the side",
        proposals=(Proposal("side", f"the side: measure {other} while the door is open"),),
        loss=GLASS_HIT,
        question=f"{other} assumed the same as {note.place}. Has anybody seen it?",
        answers=("the same", "not the same", "the next car"),
        vehicle=scope.vehicle,
        place=other,
    )


RULE = Rule("other-side-assumed", "The other side was assumed", "gap", __doc__ or "", VehicleScope, check)
