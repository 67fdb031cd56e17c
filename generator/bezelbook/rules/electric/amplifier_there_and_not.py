"""Some saw a factory amplifier and some saw none, on cars that nothing on record tells apart."""

from collections.abc import Iterator
from itertools import product

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Seen
from bezelbook.reasoning.builds import bearing_axes
from bezelbook.reasoning.circuits.cars import Car, cars_of, tells
from bezelbook.reasoning.circuits.factory_amplifier import factory_amplifier
from bezelbook.reasoning.circuits.one_car import must_be_one, shared
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal

MEANS = {"there": "known", "not there": "not there"}


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle: the first pair that may be of one build and that no known build explains."""
    seen = [note for note in unreplaced(scope.book.notes_of(scope.vehicle)) if isinstance(note, Seen)]
    there = [note for note in seen if note.amplifier == "there"]
    absent = [note for note in seen if note.amplifier == "not there"]
    vehicle = scope.book.vehicles[scope.vehicle]
    for one, other in product(there, absent):
        cars = cars_of(scope.book, vehicle, one.place)
        if any(shared(cars, one, other, "amplifier")) and not any(_explained(cars, note) for note in (one, other)):
            yield _finding(scope, cars, one, other)
            return


def _explained(cars: list[Car], note: Seen) -> bool:
    """Whether its build was left open, and one that it may be is known to be as it says."""
    may = [car for car in cars if car.may_be(note, "amplifier") and not car.is_alone(note, "amplifier")]
    return any(factory_amplifier(car).state == MEANS[note.amplifier or ""] for car in may)


def _finding(scope: VehicleScope, cars: list[Car], one: Seen, other: Seen) -> Finding:
    vehicle = cars[0].vehicle
    axes = bearing_axes(vehicle, one.place, "amplifier")
    known = Proposal("package", f"the package differs and was not written: {tells(vehicle, axes)}")
    new = Proposal("package", "the package differs: a new split, and a tell such as the number of speakers")
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="look first",
        says="a factory amplifier is there, and it is not",
        quotes=tuple(Quote.of(scope.book, note, ("amplifier",)) for note in (one, other)),
        difference="the amplifier",
        proposals=(new,) if must_be_one(cars, one, other, "amplifier") else (known, new),
        loss=NO_SOUND,
        question="Which package was each car?",
        answers=("the package differs", "one did not look well", "unknown", "look next car"),
        vehicle=scope.vehicle,
    )


RULE = Rule("amplifier-there-and-not", "An amplifier, and none", "conflict", __doc__ or "", VehicleScope, check)
