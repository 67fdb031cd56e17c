"""The other side was assumed to be the same, and readings of both sides differ by more than their ±."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Measured, RoomReading
from bezelbook.reasoning.builds import known_splits
from bezelbook.reasoning.claims import reading_span
from bezelbook.reasoning.evidence import UNCUT, unreplaced
from bezelbook.reasoning.losses import GLASS_HIT
from bezelbook.reasoning.proposal import Proposal


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding for each pair of sides of which one note assumes what two readings contradict."""
    told: set[frozenset[str]] = set()
    for note in unreplaced(scope.book.notes_of(scope.vehicle)):
        of = scope.book.vehicles[scope.vehicle].places.get(note.place) if isinstance(note, Measured) else None
        if not isinstance(note, Measured) or of is None or not of.other_side or note.other_side != "assumed the same":
            continue
        sides = frozenset({note.place, of.other_side})
        other = _otherwise(scope, note, of.other_side)
        if other is not None and sides not in told:
            told.add(sides)
            yield _finding(scope, note, other)


def _otherwise(scope: VehicleScope, note: Measured, place: str) -> Measured | None:
    """A note of the other side with a reading of the same thing from the same face that cannot be the same number."""
    for other in unreplaced(scope.book.notes_at(scope.vehicle, place)):
        if isinstance(other, Measured) and _one_state(scope, note, other) and _differ(scope, note, other):
            return other
    return None


def _one_state(scope: VehicleScope, note: Measured, other: Measured) -> bool:
    """Whether both were read in the same state, on cars that may be of one build."""
    car = scope.book.vehicles[scope.vehicle]
    ours, theirs = (known_splits(car, one.splits, one.year) for one in (note, other))
    alike = (other.mounts, other.cut or UNCUT) == (note.mounts, note.cut or UNCUT)
    return alike and all(theirs.get(axis, value) == value for axis, value in ours.items())


def _differ(scope: VehicleScope, note: Measured, other: Measured) -> bool:
    return any(_apart(scope, one, two) for one in note.readings for two in other.readings)


def _apart(scope: VehicleScope, one: RoomReading, other: RoomReading) -> bool:
    if (one.of, one.datum, one.zones) != (other.of, other.datum, other.zones) or "eye" in (one.tool, other.tool):
        return False
    ours, theirs = (reading_span(scope.book.shop.tools, reading) for reading in (one, other))
    return (ours.high or 0) < (theirs.low or 0) or (theirs.high or 0) < (ours.low or 0)


def _finding(scope: VehicleScope, note: Measured, other: Measured) -> Finding:
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, scope.vehicle, *sorted({note.place, other.place}))),
        weight="look first",
        says=f"{note.place} was said to be as the other side, and {other.place} was read otherwise",
        quotes=tuple(Quote.of(scope.book, one, ("readings",)) for one in (note, other)),
        difference="the side",
        proposals=(Proposal("side", "the side: each counts for itself, and what was assumed is cleared"),),
        loss=GLASS_HIT,
        question="The sides differ. Is what was assumed cleared?",
        answers=("yes, each side for itself", "one of them is wrong", "measure both again"),
        vehicle=scope.vehicle,
        place=note.place,
    )


RULE = Rule("sides-not-the-same", "Assumed the same, and measured otherwise", "gap", __doc__ or "", VehicleScope, check)
