"""A plug of a car was seen, and no adapter of the book has an end for it."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.reasoning.circuits.cars import cars_of
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.quote import quote
from bezelbook.values.listed import listed

DASH = ("plain opening", "opening behind a bezel", "shaped opening", "display opening")


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle, for every plug known at an opening of the dash that nothing mates with."""
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    mated = {end.connector for adapter in book.adapters.values() for end in adapter.ends.values()}
    openings = [place for place, one in vehicle.places.items() if one.kind in DASH]
    cars = [car for place in openings for car in cars_of(book, vehicle, place)]
    known = [plug for car in cars for plug in plugs_at(car).plugs if plug.state == "known" and plug.connector]
    bare = {plug.connector: plug for plug in known if plug.connector not in mated}
    if not bare:
        return
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="tidy up",
        says=f"no adapter here mates with {listed([plug.words for plug in bare.values()])}",
        quotes=tuple(
            Quote(plug.notes[0], quote(book, book.notes[plug.notes[0]]), ("plug",)) for plug in list(bare.values())[:3]
        ),
        difference="what mates",
        proposals=(Proposal("which thing", "two calls to suppliers, and write a no down too"),),
        loss=WRONG_HARNESS,
        question="Is there an adapter for it?",
        answers=("yes: write a record", "two suppliers have none", "not needed", "call next week"),
        vehicle=scope.vehicle,
    )


RULE = Rule("nothing-mates", "Nothing mates", "gap", __doc__ or "", VehicleScope, check)
