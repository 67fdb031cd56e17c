"""Whether a flange covers the hole it should rest on."""

from bezelbook.reasoning.speakers.cells import (
    WAYS,
    MountHole,
    RoomSize,
    SpeakerCell,
    SpeakerDemand,
    SpeakerSetting,
    hole_cells,
)
from bezelbook.reasoning.speakers.evidence import SpeakerStanding
from bezelbook.reasoning.speakers.needs import SpeakerNeeds
from bezelbook.reasoning.speakers.rooms import SpeakerRooms


def falls_through(rooms: SpeakerRooms, needs: SpeakerNeeds, setting: SpeakerSetting) -> bool:
    """Whether the hole that the flange should rest on is certainly as wide as the flange, one way or the other.

    A speaker that went in just so is not said to fall through.
    """
    return uncovered(rooms, needs, setting) is not None


def uncovered(rooms: SpeakerRooms, needs: SpeakerNeeds, setting: SpeakerSetting) -> tuple[int, int] | None:
    """How far the flange reaches at most, and how wide the hole is at least, in nanometres, where that is too wide."""
    if needs.flange is None or any(_same(one, found, needs, setting) for one, found in rooms.tried.items()):
        return None
    top = [_last(setting, way) if setting.stack.holes else hole_cells(setting, way) for way in WAYS]
    met = [SpeakerDemand("basket", cell, 0, way) for way, cells in zip(WAYS, top, strict=True) for cell in cells]
    spans = zip(met, rooms.spans(setting, met), strict=True)
    wide = [(needs.flange[WAYS.index(demand.size)], room.least) for demand, room in spans]
    return next(((reaches, hole) for reaches, hole in wide if hole >= reaches), None)


def _last(setting: SpeakerSetting, way: RoomSize) -> tuple[SpeakerCell, ...]:
    """The hole of the mount on top."""
    return tuple(cell for cell in hole_cells(setting, way) if isinstance(cell, MountHole))[-1:]


def _same(one: SpeakerStanding, found: SpeakerNeeds, needs: SpeakerNeeds, setting: SpeakerSetting) -> bool:
    return (
        one.says == "goes in"
        and found.key == needs.key
        and one.stack is not None
        and one.stack.mounts == setting.stack.mounts
    )
