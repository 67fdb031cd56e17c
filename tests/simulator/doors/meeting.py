"""What happens when a speaker is offered up: its basket meets holes, its back the glass, its front a panel."""

from collections.abc import Iterator

from tests.simulator.doors.world import WAYS, Mounting, Sizes
from tests.simulator.meeting import Meeting

BASKET = {"long way": "basket", "short way": "basket short"}


def holes(room: Sizes, mounting: Mounting) -> list[tuple[int, int]]:
    """Every hole that a basket goes through, the long way and the short; the last is the one its flange rests on."""
    found = [(room["long way"], room["short way"])]
    for ring in mounting.rings:
        own = [ring.holes[mounting.tabs]] if ring.holes else []
        found = [*found, *own] if ring.ring else own
    return found


def met(room: Sizes, mounting: Mounting, sizes: Sizes, *, run: bool) -> Iterator[Meeting]:
    """Everything that a speaker of these sizes meets, at rest; a size that is not among them is not asked about."""
    for way, wide in enumerate(WAYS):
        for hole in holes(room, mounting):
            if BASKET[wide] in sizes:
                yield Meeting(wide, None, sizes[BASKET[wide]], hole[way])
    if "depth" in sizes:
        yield Meeting("fixed", None, sizes["depth"], room["fixed"] + mounting.held)
        if run and "worst" in room:
            yield Meeting("glass", None, sizes["depth"], room["worst"] + mounting.held)
    if "front" in sizes:
        yield Meeting("front", None, sizes["front"], room["front"] - mounting.held)


def falls_through(room: Sizes, mounting: Mounting, sizes: Sizes) -> bool:
    """Whether the hole that its flange should rest on is as wide as the flange, one way or the other."""
    flange = sizes.get("flange"), sizes.get("flange short", sizes.get("flange"))
    rests_on = holes(room, mounting)[-1]
    return any(reach is not None and reach <= hole for reach, hole in zip(flange, rests_on, strict=True))
