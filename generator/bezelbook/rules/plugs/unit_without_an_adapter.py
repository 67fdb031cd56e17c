"""A radio was fitted or is asked for, and no adapter of the book leads from the car's plug to its own."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.reasoning.builds import known_splits, matching
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.chain import chain
from bezelbook.reasoning.circuits.jobs import RADIO_PLACES, Job
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.circuits.units_wanted import WantedUnit, units_wanted
from bezelbook.reasoning.circuits.wiring import FED
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a radio and place, the first record that wants it there; a plug that nothing mates is another's."""
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    mated = {end.connector for adapter in book.adapters.values() for end in adapter.ends.values()}
    for place in (place for place, one in vehicle.places.items() if one.kind in RADIO_PLACES):
        wanted: dict[str, list[WantedUnit]] = {}
        for one in units_wanted(book, scope.vehicle, place):
            wanted.setdefault(one.unit.id, []).append(one)
        for times in wanted.values():
            known = [car for car in cars_of(book, vehicle, place) if plugs_at(car).state == "known"]
            may = [car for car in known if mated & set(plugs_at(car).connectors) and _is_meant(car, times)]
            if may and not any(one.leads for one in times) and not any(_led_to(car, times[0]) for car in may):
                yield _finding(scope, place, times)


def _is_meant(car: Car, times: list[WantedUnit]) -> bool:
    """Whether one of those who want it may have a car of this build."""
    return any(matching((car.build,), known_splits(car.vehicle, one.splits, one.year)) for one in times)


def _led_to(car: Car, wanted: WantedUnit) -> bool:
    """Whether anything at all gets from the car to the radio through what the book has."""
    done = chain(car, Job("two-piece radio" if wanted.unit.goes_with else "replace the radio", wanted.unit.id))
    return done.outcome is not None and any(feed.state in FED for feed in done.outcome.feeds.values())


def _finding(scope: VehicleScope, place: str, times: list[WantedUnit]) -> Finding:
    unit = times[0].unit
    own = f"its plug is {unit.own_plug}" if unit.own_plug else "which plug it has is not looked"
    plug = Proposal("which thing", "look which plug is on its back, and write it on its record")
    link = Proposal("which thing", "two calls to suppliers: write the adapter, or that there is none")
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{place}/{unit.id}",
        weight="look first",
        says=f"no adapter here leads from this car to {unit.name}, wanted by {counted(times, 'record')}: {own}",
        quotes=tuple(Quote(one.id, one.says, one.path, one.kind) for one in times[:3]),
        difference="what joins them",
        proposals=(link,) if unit.own_plug else (plug, link),
        loss=WRONG_HARNESS,
        question="What goes between?",
        answers=(
            "an adapter: write a record",
            "two suppliers have none",
            "its own lead, joined by hand",
            "call next week",
        ),
        vehicle=scope.vehicle,
        place=place,
    )


RULE = Rule("unit-without-an-adapter", "Nothing leads to the radio", "gap", __doc__ or "", VehicleScope, check)
