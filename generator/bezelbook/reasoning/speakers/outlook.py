"""Whether a speaker goes in in every room that the notes still allow, in none, or neither; how much is left over."""

from collections.abc import Sequence

from bezelbook.reasoning.outlook import Outlook
from bezelbook.reasoning.room_span import RoomSpan
from bezelbook.reasoning.speakers.cells import RoomSize, SpeakerDemand, SpeakerFrame, SpeakerSetting, demands
from bezelbook.reasoning.speakers.covering import falls_through
from bezelbook.reasoning.speakers.needs import SpeakerNeeds
from bezelbook.reasoning.speakers.rooms import SpeakerRooms


def outlook(rooms: SpeakerRooms, needs: SpeakerNeeds, settings: Sequence[SpeakerSetting]) -> Outlook:
    """Whether a speaker fits in every room that these notes allow, in none, or neither, over all the settings.

    Notes that allow no room at all settle nothing.
    """
    if not rooms.possible:
        return "open"
    if all(always_fits(rooms, needs, setting) for setting in settings):
        return "always"
    return "open" if any(may_take(rooms, needs, setting) for setting in settings) else "never"


def may_take(rooms: SpeakerRooms, needs: SpeakerNeeds, setting: SpeakerSetting) -> bool:
    """Whether some room takes a speaker, and it would not fall through."""
    return rooms.takes(needs, setting) and not falls_through(rooms, needs, setting)


def always_fits(rooms: SpeakerRooms, needs: SpeakerNeeds, setting: SpeakerSetting) -> bool:
    """Whether every demand is met for certain, and clear enough where readings rather than a yes carry it.

    Clear enough goes by the middles: what is left over between the two figures is at least what the house likes.
    """
    wanted = demands(rooms.frame, needs, setting)
    if not wanted or rooms.refuses(needs, setting, wanted) or falls_through(rooms, needs, setting):
        return False
    clear = zip(wanted, rooms.spans(setting, wanted), strict=True)
    tight = [demand for demand, room in clear if not is_clear(rooms.frame, needs, demand, room)]
    return not any(rooms.fitted.refuses(needs, setting, (demand,)) for demand in tight)


def is_clear(frame: SpeakerFrame, needs: SpeakerNeeds, demand: SpeakerDemand, room: RoomSpan) -> bool:
    """Whether a demand leaves what the house likes to leave over; where the room has no known top, its least counts."""
    return left_over(needs, demand, room) >= clearance(frame, needs, demand)


def left_over(needs: SpeakerNeeds, demand: SpeakerDemand, room: RoomSpan) -> int:
    """What is left over in nanometres between the middles of the room and of the need; negative when it is short.

    Where only one end of the room is known, that end counts; a need that nobody knows asks for nothing.
    """
    middle = room.least if room.most is None else (room.least + room.most) // 2
    return middle - needs.middles.get(demand.need, 0)


def clearance(frame: SpeakerFrame, needs: SpeakerNeeds, demand: SpeakerDemand) -> int:
    """The room in nanometres that the house likes to leave; the hole that a speaker asks for itself needs none."""
    house = frame.book.shop.clearances
    if demand.need in needs.snug:
        return 0
    hole = house.width
    by_size: dict[RoomSize, int] = {
        "long way": hole.base,
        "short way": hole.base,
        "fixed": house.fixed.base,
        "glass": house.glass.base,
        "front": house.grille.base,
    }
    return by_size[demand.size]
