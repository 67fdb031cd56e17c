"""Pieces of a vehicle's list of which nobody wrote what lies over them or what they lie over."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.reasoning.losses import TRIM_BROKEN
from bezelbook.reasoning.order.accounts import accounts_of
from bezelbook.reasoning.order.precedence import musts, shared_screws
from bezelbook.reasoning.order.step import name_of
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed

SHOWN = 4


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle, for all of its pieces that float; a vehicle nobody has taken apart is no news."""
    vehicle = scope.book.vehicles[scope.vehicle]
    notes = [one.note for one in accounts_of(scope.book, vehicle).counting]
    placed = {piece for one in musts(notes) for piece in (one.first, one.then)}
    placed |= {piece for one in shared_screws(notes) for piece in one.pieces}
    placed |= {piece for note in notes if len(note.pieces) == 1 for piece in (note.pieces[0].piece,)}
    floating = [piece for piece in vehicle.trim if piece not in placed]
    if not floating or not notes:
        return
    names = [name_of(vehicle, piece) for piece in floating]
    more = [f"{len(names) - SHOWN} more"] if len(names) > SHOWN else []
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{vehicle.id}",
        weight="tidy up",
        says=f"nobody wrote what lies over {listed([*names[:SHOWN], *more], 'or')}",
        quotes=(Quote(vehicle.id, f"{vehicle.name}: {', '.join(names)}", ("trim", floating[0]), "vehicle"),),
        difference="what sits on what",
        proposals=(Proposal("scope", "on the next car look at each edge: what sits on it, what does it sit on?"),),
        loss=TRIM_BROKEN,
        question="Who looks at the edges when the next one is open?",
        answers=("a person and a car", "nothing lies over it", "not worth it"),
        vehicle=vehicle.id,
    )


RULE = Rule("piece-that-floats", "Nobody knows what lies over it", "gap", __doc__ or "", VehicleScope, check)
