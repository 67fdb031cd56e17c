"""A car has a circuit that its radio or the next asks for, and the record of an adapter for it leaves that out."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.adapter.record import Adapter
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.jobs import RADIO_PLACES, SUPPLY, Job, wanted_by
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.circuits.right_for import ends_for_car
from bezelbook.reasoning.circuits.suits import adapter_suits
from bezelbook.reasoning.circuits.units_wanted import units_wanted
from bezelbook.reasoning.circuits.wiring import SPEAKERS
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import BOUGHT_TWICE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import CIRCUITS, Circuit

SHOWN = 2


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding an adapter that goes between plug and radio here, for every circuit left out of record and bench."""
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    places = [place for place, one in vehicle.places.items() if one.kind in RADIO_PLACES]
    cars = [car for place in places for car in cars_of(book, vehicle, place)]
    for adapter in book.adapters.values():
        looked = {name for note in unreplaced(book.bench_notes(adapter.id)) for name in note.circuits}
        found: dict[Circuit, str] = {}
        for car in cars if adapter.circuits else ():
            found = {**_asked_for(car, adapter), **found}
        left = [circuit for circuit in CIRCUITS if circuit in found.keys() - adapter.circuits.keys() - looked]
        if left:
            yield _finding(scope, adapter, left, [found[circuit] for circuit in left])


def _asked_for(car: Car, adapter: Adapter) -> dict[Circuit, str]:
    """What is known to be in a plug of this car that the adapter is right for, as far as a radio asks, with a note."""
    takes = [plug for plug in plugs_at(car).connectors if plug in ends_for_car(adapter)]
    asked = _radios_ask(car, adapter) if takes and adapter_suits(car, adapter).right else frozenset()
    held = [pair for plug in takes for pair in contents(car, plug).items()]
    return {circuit: one.notes[0] for circuit, one in held if one.state == "known" and circuit in asked}


def _radios_ask(car: Car, adapter: Adapter) -> frozenset[Circuit]:
    """Behind a T the factory radio stays, and may ask for all that its plug has; else what those wanted here want."""
    if adapter.adapter_kind == "T":
        return frozenset(CIRCUITS)
    units = {one.unit.id for one in units_wanted(car.book, car.vehicle.id, car.place)}
    asked = {circuit for unit in units for circuit in wanted_by(car, Job("replace the radio", unit))}
    plays = adapter.adapter_kind == "plug-in" and bool(units)
    return frozenset({*SUPPLY, *SPEAKERS, *asked}) if plays else frozenset()


def _finding(scope: VehicleScope, adapter: Adapter, left: list[Circuit], notes: list[str]) -> Finding:
    seen = [scope.book.notes[id_] for id_ in dict.fromkeys(notes)][:SHOWN]
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{adapter.id}",
        weight="tidy up",
        says=f"{adapter.name}: the car has {listed(left)}, and nobody looked what becomes of it",
        quotes=(
            Quote(adapter.id, f"{listed(left)}: left out", ("circuits",), "adapter"),
            *(Quote.of(scope.book, note, ("cavities",)) for note in seen),
        ),
        difference="what becomes of it",
        proposals=(Proposal("tool", "meter on the bench, 3 min"),),
        loss=BOUGHT_TWICE,
        question="What does the meter say?",
        answers=("passes", "not there", "broken out", "meter next"),
        vehicle=scope.vehicle,
    )


RULE = Rule("circuit-left-out", "Nobody looked for it in the adapter", "gap", __doc__ or "", VehicleScope, check)
