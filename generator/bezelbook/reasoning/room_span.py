"""The least and the most that the room met by a part can be, over every room that agrees with the notes."""

from collections.abc import Sequence
from dataclasses import dataclass

from bezelbook.reasoning.bounds import Leaf, nearest
from bezelbook.reasoning.cells import Demand, Setting
from bezelbook.reasoning.extremes import ceiling, lowest
from bezelbook.reasoning.room import Rooms


@dataclass(frozen=True, slots=True)
class RoomSpan:
    """The least and the most that the room met by a demand can be, in nanometres; `most` is None when nothing tells."""

    least: int
    most: int | None


def room_spans(rooms: Rooms, setting: Setting, wanted: Sequence[Demand]) -> tuple[RoomSpan, ...]:
    """The room that each demand meets, over every room that agrees with the notes."""
    leaves = rooms.leaves(setting, [demand.cell for demand in wanted])
    return tuple(_span(leaves, demand) for demand in wanted)


def _span(leaves: list[Leaf], demand: Demand) -> RoomSpan:
    tops = [ceiling(leaf, demand.cell) for leaf in leaves]
    known = [top for top in tops if top is not None]
    most = nearest(max(known)) + demand.shift if known and len(known) == len(tops) else None
    return RoomSpan(nearest(lowest(leaves, demand.cell)) + demand.shift, most)
