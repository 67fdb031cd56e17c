"""What happens when a thing is offered up: which of its sizes meets which room, and how much is left over."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from tests.simulator.box_world import FRONT, NINTHS, Kit, Room


@dataclass(frozen=True)
class Meeting:
    """One size of a thing against the room for it, in nanometres; the ninth for a depth."""

    size: str
    ninth: str | None
    asks: int
    room: int

    @property
    def spare(self) -> int:
        """What is left over; negative when it does not fit."""
        return self.room - self.asks


def behind(kits: Sequence[Kit]) -> tuple[str, ...]:
    """The ninths that lie behind the hole of the last of these kits that leaves any out; else all nine."""
    fewer = [kit.ninths for kit in kits if kit.ninths != NINTHS]
    return fewer[-1] if fewer else NINTHS


def front_room(room: Room, kits: Sequence[Kit], size: str) -> int | None:
    """The clear width or height that a thing meets: that of the last kit that frames it, else the car's, if any."""
    framed = [kit.holes[size] for kit in kits if size in kit.holes]
    return framed[-1] if framed else room.sizes.get(size)


def deep_room(room: Room, kits: Sequence[Kit], ninth: str) -> int:
    """The depth that a thing meets at a ninth, seen through kits that hold it out or let it in."""
    return room.depths[ninth] + sum(kit.offset for kit in kits)


def meetings(
    room: Room, kits: Sequence[Kit], sizes: Mapping[str, int], exit_: str, *, plugs_on: bool
) -> Iterator[Meeting]:
    """Everything that a thing of these sizes meets; a size that is not among them is not asked about.

    What stands out behind a body is as wide as the body; the plug with its bend counts at the one ninth where it
    leaves, unless what stands out behind the body reaches further.
    """
    for size in FRONT:
        clear = front_room(room, kits, size)
        if size in sizes and clear is not None:
            yield Meeting(size, None, sizes[size], clear)
    if "depth" not in sizes:
        return
    body, rear = sizes["depth"], sizes.get("rear", 0)
    for ninth in behind(kits):
        yield Meeting("depth", ninth, body + rear, deep_room(room, kits, ninth))
    if plugs_on and "plug" in sizes:
        yield Meeting("plug", exit_, body + max(rear, sizes["plug"]), deep_room(room, kits, exit_))
