"""The least and the most that the room met by a part can be, over every room that agrees with the notes."""

from collections.abc import Sequence
from dataclasses import dataclass

from bezelbook.reasoning.bounds import nearest
from bezelbook.reasoning.cells import Demand, Setting
from bezelbook.reasoning.extremes import Ends
from bezelbook.reasoning.room import Rooms


@dataclass(frozen=True, slots=True)
class RoomSpan:
    """The least and the most that the room met by a demand can be, in nanometres; `most` is None when nothing tells."""

    least: int
    most: int | None

    @property
    def read(self) -> bool:
        """Whether notes bound it on both sides; from above alone it may be by a size of something else."""
        return self.most is not None and self.least > 0


def room_spans(rooms: Rooms, setting: Setting, wanted: Sequence[Demand]) -> tuple[RoomSpan, ...]:
    """The room that each demand meets, over every room that agrees with the notes."""
    ends = rooms.ends(setting)
    return tuple(_span(ends[demand.cell], demand.shift) for demand in wanted)


def _span(ends: Ends, shift: int) -> RoomSpan:
    least, most = ends
    return RoomSpan(nearest(least) + shift, None if most is None else nearest(most) + shift)
