"""What could hurt someone at a piece: what each class means and what to do about it now."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.order.near import RESTRAINT
from bezelbook.reasoning.order.removal import Removal
from bezelbook.values.listed import listed
from bezelbook.values.words import Safety

# Common practice, no source: which classes there are and that nobody without the right to may go on.
MEANS: Mapping[Safety, str] = {
    "none": "somebody looked and saw nothing here that could hurt",
    "stored energy": "something under tension or charged, such as a spring, may let go at once",
    "restraint near": "an airbag, a part of a belt or their wires sit at this piece or beside it",
    "high voltage near": "a battery or a cable that can kill sits near, the cable often orange",
}
NOW: Mapping[Safety, str] = {
    "none": "Go on, and look all the same",
    "stored energy": "Leave it on and ask whoever runs the bay to open the vehicle's service information at this piece",
    "restraint near": (
        "Leave it on and pull at nothing round it. Ask whoever runs the bay to open the vehicle's service information "
        "at this piece, and let somebody do it who is qualified for restraints, and licensed where the rules ask for it"
    ),
    "high voltage near": (
        "Keep your hands out. Ask whoever runs the bay to open the vehicle's service information, and let somebody do "
        "it who is qualified for high voltage, and licensed where the rules ask for it"
    ),
}

BEFORE_ANYTHING = (
    "Before you take anything off, ask whoever runs the bay what the vehicle's service information wants done first, "
    "and by whom. Touch nothing orange"
)


@dataclass(frozen=True, slots=True)
class Caution:
    """A class with where it is near, empty at a step; what it means and what to do about it now."""

    safety: Safety
    where: str
    means: str
    now: str


def caution(safety: Safety, where: str = "") -> Caution:
    """A class in words."""
    return Caution(safety, where, MEANS[safety], NOW[safety])


def whole_car(vehicle: Vehicle) -> tuple[Caution, ...]:
    """What could hurt someone wherever one works on this car: what feeds it, and what is said of it as a whole."""
    whole = (place.safety for place in vehicle.places.values() if place.kind == "whole vehicle")
    fed: tuple[Safety, ...] = ("high voltage near",) if vehicle.supply == "high voltage present" else ()
    said = dict.fromkeys((*fed, *(one for one in whole if one and one != "none")))
    return tuple(Caution(one, "this car, wherever you work on it", MEANS[one], BEFORE_ANYTHING) for one in said)


def cautions(vehicle: Vehicle, place: str, removal: Removal) -> Iterator[Caution]:
    """Each class that is near with where it is, before anything else on the page."""
    found: dict[Safety, list[str]] = {}
    if removal.safety and removal.safety != "none":
        found.setdefault(removal.safety, []).append(place_name(vehicle, place))
    for step in removal.steps:
        for one in step.safety:
            if one != "none":
                found.setdefault(one, []).append(step.name)
    return (caution(safety, listed(where)) for safety, where in found.items())


def place_name(vehicle: Vehicle, place: str) -> str:
    """What the shop calls a place; the words of its id where it has no name or is not on the vehicle's list."""
    record = vehicle.places.get(place)
    return (record.name if record else None) or place.replace("-", " ")


def all_stopped(removal: Removal) -> bool:
    """Whether an order is nothing but pieces with a restraint near, of which a page tells no more than that."""
    return bool(removal.steps) and all(RESTRAINT in step.safety for step in removal.steps)
