"""What comes off first in one line, for somebody who has five seconds."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.publish.address import Links, place_anchor, removal_page
from bezelbook.publish.builds_words import which_builds
from bezelbook.publish.removal.cautions import all_stopped, place_name
from bezelbook.reasoning.order.near import RESTRAINT
from bezelbook.reasoning.order.removal import Removal, removals_at
from bezelbook.reasoning.order.step import Step


@dataclass(frozen=True, slots=True)
class Glance:
    """An order in a line; `which` says for which cars, empty for all."""

    which: str
    words: str


@dataclass(frozen=True, slots=True)
class PlaceGlance:
    """A place by its name, where its steps stand, and its orders in a line each."""

    name: str
    at: str
    orders: tuple[Glance, ...]


def glances(vehicle: Vehicle, to: Links) -> Iterator[PlaceGlance]:
    """The places of a vehicle of which anybody wrote what comes off, in its own order."""
    for place in vehicle.places:
        removals = removals_at(to.book, vehicle, place)
        if any(one.written for one in removals):
            orders = tuple(glance(which_builds(vehicle, place, one.builds).words, one) for one in removals)
            at = to.to(removal_page(vehicle.id), place_anchor(place))
            yield PlaceGlance(place_name(vehicle, place), at, orders)


def glance(which: str, removal: Removal) -> Glance:
    """The pieces with their numbers; where a restraint is near, that alone."""
    if not removal.written:
        return Glance(which, "nobody wrote what comes off first")
    if all_stopped(removal):
        return Glance(which, f"{RESTRAINT}: stop")
    return Glance(which, ", ".join(f"{number} {_short(step)}" for number, step in enumerate(removal.steps, 1)))


def _short(step: Step) -> str:
    if RESTRAINT in step.safety:
        return f"{step.name} ({RESTRAINT}: stop)"
    return f"{step.name} (perhaps)" if step.stands != "needed" else step.name
