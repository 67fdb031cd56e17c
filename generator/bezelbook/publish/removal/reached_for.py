"""What a place is reached for: the jobs that need its pieces off, and what stays on."""

from collections.abc import Mapping

from bezelbook.kinds.vehicle.record import PlaceKind, Vehicle
from bezelbook.reasoning.order.removal import Removal
from bezelbook.reasoning.order.step import name_of

_DASH = "changing the radio, and reaching the plugs behind it: an aerial, a camera's lead, a module"
_SMALL = "changing the small speaker there, and reaching its wires"
_SPEAKER = "changing the speaker there, and reaching its wires"

# Common practice, no source.
JOBS: Mapping[PlaceKind, str] = {
    "plain opening": _DASH,
    "opening behind a bezel": _DASH,
    "shaped opening": _DASH,
    "display opening": "reaching the screen and the plugs behind it: a camera's lead, a module",
    "module bay": "putting in or finding a module or an amplifier",
    "pocket": "putting something into the pocket, or reaching what is behind it",
    "overhead console": "a radio or a screen over the heads",
    "glovebox": "reaching what sits behind the glovebox: a receiver, a module",
    "under seat": "an amplifier or a bass speaker under the seat",
    "dash corner": _SMALL,
    "dash centre speaker": _SMALL,
    "pillar": _SMALL,
    "mirror triangle": _SMALL,
    "door upper": _SMALL,
    "door lower": _SPEAKER,
    "kick panel": _SPEAKER,
    "rear door": _SPEAKER,
    "rear quarter": _SPEAKER,
    "parcel shelf": _SPEAKER,
    "wheel well": "a bass speaker, an amplifier, or wires to the tail such as a camera's",
    "load bay side": "a speaker, an amplifier, or wires to the tail such as a camera's",
    "column or pod": "what sits on the column or in the pod",
    "engine bay": "the supply wire and its fuse at the battery",
    "whole vehicle": "nothing that comes off",
}


def reached_for(vehicle: Vehicle, place: str) -> str:
    """The jobs that a place is opened for; empty for a place that the vehicle does not list."""
    record = vehicle.places.get(place)
    return JOBS[record.kind] if record else ""


def stays_on(
    vehicle: Vehicle, place: str, removal: Removal, here: frozenset[str], elsewhere: frozenset[str]
) -> tuple[str, ...]:
    """The pieces at the side of a place that no list for it has; none where nobody made a list.

    `here` are the pieces of any order for the place, whatever the build, and `elsewhere` those of other places: what
    only another place needs off is in nobody's way, and is left out.
    """
    record = vehicle.places.get(place)
    if record is None or not removal.lists:
        return ()
    gone = {step.piece for step in removal.steps} | (elsewhere - here)
    return tuple(
        name_of(vehicle, piece)
        for piece, trim in vehicle.trim.items()
        if trim.side == record.side and piece not in gone
    )
