"""Radios were changed in a car, and nobody has looked whether a factory amplifier is there."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import After, Seen, Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted
from bezelbook.values.words import STRONG


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle in which a radio was fitted, or resistors were used; silent once somebody has looked."""
    notes = unreplaced(scope.book.notes_of(scope.vehicle))
    if any(isinstance(note, Seen) and note.amplifier in ("there", "not there") for note in notes):
        return
    found = [note for note in notes if _of_a_radio(scope, note)]
    if not found:
        return
    packaged = any(split.differs_in == "audio" for split in scope.book.vehicles[scope.vehicle].splits.values())
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="look first" if packaged else "tidy up",
        says=f"nobody has looked whether a factory amplifier is there, and {counted(found)} had a radio fitted",
        quotes=tuple(Quote.of(scope.book, note, ("form",)) for note in found[:3]),
        difference="whether it is there",
        proposals=(Proposal("package", "look under the seats and behind the linings, 5 min; count the speakers"),),
        loss=NO_SOUND,
        question="Is one there?",
        answers=("there", "not there", "look next car"),
        vehicle=scope.vehicle,
    )


def _of_a_radio(scope: VehicleScope, note: object) -> bool:
    """Whether a radio of the book was fitted for good, or a load was put in its place."""
    if isinstance(note, Tried):
        return note.sure == STRONG[0] and note.verdict != "does not" and bool(scope.book.head_unit_named(note.what))
    return isinstance(note, After) and bool(note.resistors)


RULE = Rule("amplifier-not-looked", "Nobody looked for an amplifier", "gap", __doc__ or "", VehicleScope, check)
