"""Load resistors were used, and nobody wrote which sound package the car had."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import After
from bezelbook.reasoning.electric.package import package_axes, package_of
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle that has packages, for all write-backs with resistors that leave it open."""
    car = scope.book.vehicles[scope.vehicle]
    used = [
        note for note in unreplaced(scope.book.notes_of(scope.vehicle)) if isinstance(note, After) and note.resistors
    ]
    found = [note for note in used if package_axes(car) and package_of(car, note.splits, note.year) is None]
    if not found:
        return
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="look first",
        says=f"which package the car had is blank in {counted(found)} with resistors",
        quotes=tuple(Quote.of(scope.book, note, ("resistors",)) for note in found[:3]),
        difference="the package",
        proposals=(Proposal("package", "ask its author, or count the speakers in a photo"),),
        loss=NO_SOUND,
        question="Which package was the car?",
        answers=("ask its author", "a photo shows it", "unknown"),
        vehicle=scope.vehicle,
    )


RULE = Rule("resistor-without-package", "Resistors, and no package", "gap", __doc__ or "", VehicleScope, check)
