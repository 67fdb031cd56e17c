"""How thick a ring on one side has to be for what is behind, and may be for what is in front."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.reasoning.room_span import RoomSpan
from bezelbook.reasoning.speakers.cells import RoomSize, SpeakerDemand, SpeakerSetting, demands
from bezelbook.reasoning.speakers.outlook import clearance
from bezelbook.reasoning.speakers.question import SpeakerAsked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, SpeakerRooms


@dataclass(frozen=True, slots=True)
class End:
    """One end of a window: the thickness in nanometres by the middles, its worst-case ±, and what sets it."""

    at: int
    give: int
    by: RoomSize


def thickness(place: SpeakerPlace, bare: SpeakerAsked) -> tuple[End | None, End | None]:
    """The thinnest and the thickest ring, by the middles, over all builds of a question about the bare place.

    `s_min = depth + margin - D_rear - g` and `s_max = F_front - g - front height - margin`.
    """
    ends = [end for rooms in place.accounts for setting in bare.settings for end in _ends(rooms, bare, setting)]
    behind = [end for end in ends if end.by != "front"]
    in_front = [end for end in ends if end.by == "front"]
    low = max(behind, key=lambda end: end.at, default=None)
    return low, min(in_front, key=lambda end: end.at, default=None)


def _ends(rooms: SpeakerRooms, bare: SpeakerAsked, setting: SpeakerSetting) -> Iterator[End]:
    """What each measured depth asks of a ring: how thick, and its ±."""
    held = bare.gasket.held
    for demand, room, need in measured_depths(rooms, bare, setting):
        if room.most is None or held.low is None or held.high is None:
            continue
        span = bare.needs.spans[demand.need]
        give = (room.most - room.least + held.high - held.low + (span.high or 0) - (span.low or 0)) // 2
        gap = need + clearance(rooms.frame, bare.needs, demand) - (room.least + room.most) // 2
        foam = (held.low + held.high) // 2
        yield End((-gap if demand.size == "front" else gap) - foam, give, demand.size)


def measured_depths(
    rooms: SpeakerRooms, asked: SpeakerAsked, setting: SpeakerSetting
) -> Iterator[tuple[SpeakerDemand, RoomSpan, int]]:
    """The depths behind and in front, the room there, and the figure asked of it; what nobody knows is left out."""
    wanted = [one for one in demands(rooms.frame, asked.needs, setting) if one.size in ("fixed", "glass", "front")]
    for demand, room in zip(wanted, rooms.spans(setting, wanted), strict=True):
        need = asked.needs.middles.get(demand.need)
        if need is not None:
            yield demand, room, need
