"""A pillar, a seat or another piece with a restraint likely near came off, and nobody wrote its safety class."""

import re
from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.losses import SOMEONE_HURT
from bezelbook.reasoning.order.accounts import accounts_of
from bezelbook.reasoning.order.step import name_of, offs, path_of
from bezelbook.reasoning.proposal import Proposal

_NEAR = re.compile(r"\b(?:pillar|seat|headliner|roof lining|knee|steering|column|airbag|air bag)s?\b", re.IGNORECASE)
_APART = re.compile(r"\bseat[- ]?back hook|\bunder seat\b", re.IGNORECASE)


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a piece; the word none counts, since somebody has looked into the service information then."""
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    notes = [one.note for one in accounts_of(book, vehicle).counting]
    listed = {off.piece for note in notes for off in note.pieces} | set(vehicle.trim)
    for piece in sorted(listed):
        name = name_of(vehicle, piece)
        off = offs(notes, piece)
        if _sounds_near(name) and not _classed(vehicle, piece) and not any(one.safety for one, _ in off):
            quotes = [Quote.of(book, note, path_of(note, one)) for one, note in off[:2]]
            own = Quote(vehicle.id, f"{vehicle.name}: {name}", ("trim", piece), "vehicle")
            yield Finding(
                rule=RULE.name,
                key=f"{RULE.name}/{vehicle.id}/{piece}",
                weight="stop",
                says=f"nobody wrote whether a restraint is near the {name}",
                quotes=tuple(quotes) or (own,),
                difference="its safety class",
                proposals=(Proposal("scope", "until it is set: stop, and see the vehicle's service information"),),
                loss=SOMEONE_HURT,
                question="What does the vehicle's service information say is near it?",
                answers=("restraint near", "none", "stored energy", "high voltage near", "look it up first"),
                vehicle=vehicle.id,
            )


def _sounds_near(name: str) -> bool:
    return bool(_NEAR.search(name)) and not _APART.search(name)


def _classed(vehicle: Vehicle, piece: str) -> bool:
    return piece in vehicle.trim and vehicle.trim[piece].safety is not None


RULE = Rule(
    "pillar-without-a-caution", "No word whether a restraint is near", "gap", __doc__ or "", VehicleScope, check
)
