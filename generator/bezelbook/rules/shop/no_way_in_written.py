"""Places where things were fitted or asked for, and nobody wrote what comes off first."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import After, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import QUOTED_SHORT
from bezelbook.reasoning.order.removal import removals_at
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed

SHOWN = 3


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle, for all of its places that somebody has been in and left no list of pieces for.

    A door whose other side has one is no news: that page says that the side is assumed.
    """
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    worked = [note for note in unreplaced(book.notes_of(vehicle.id)) if isinstance(note, After | Tried)]
    places = [place for place in vehicle.places if any(note.place == place for note in worked)]
    unknown = [place for place in places if not _written(book, vehicle, place)]
    if not unknown:
        return
    names = [vehicle.places[place].name or place.replace("-", " ") for place in unknown]
    more = [f"{len(names) - SHOWN} more"] if len(names) > SHOWN else []
    firsts = [next(note for note in worked if note.place == place) for place in unknown[:SHOWN]]
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{vehicle.id}",
        weight="tidy up",
        says=f"things were fitted at {listed([*names[:SHOWN], *more])}, and nobody wrote what comes off first",
        quotes=tuple(Quote.of(book, note) for note in firsts),
        difference="the list of pieces",
        proposals=(Proposal("scope", "take a picture of each layer on the next job"),),
        loss=QUOTED_SHORT,
        question="Who writes it down on the next one?",
        answers=("whoever does it next", "somebody knows it by heart: ask", "leave it"),
        vehicle=vehicle.id,
        place=unknown[0],
    )


def _written(book: KnowledgeBase, vehicle: Vehicle, place: str) -> bool:
    sides = filter(None, (place, vehicle.places[place].other_side))
    return any(one.written for side in sides for one in removals_at(book, vehicle, side))


RULE = Rule("no-way-in-written", "No list of what comes off", "gap", __doc__ or "", VehicleScope, check)
