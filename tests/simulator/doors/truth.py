"""Whether a speaker that was asked about truly goes in, over everything that the question leaves open."""

from collections.abc import Sequence
from itertools import product

from tests.simulator.box_world import MM, World
from tests.simulator.doors.meeting import falls_through, met
from tests.simulator.doors.questions import DoorAsk
from tests.simulator.doors.world import Mounting, Ring, Speaker, Tabs
from tests.simulator.possible.sizes import read

SIZES = ("basket", "basket short", "depth", "front")


def outcomes(ask: DoorAsk, ways: Sequence[Sequence[Ring]], seen: int | None = None) -> set[str]:
    """What can come of it: "goes in", "does not", or both, over cars, mountings, tabs and the sizes it may be.

    `seen` is the least room in front in which this very speaker was seen to go in, in nm: where there is as much,
    nobody asks how far its cone comes out.
    """
    ends = {size: end for size in SIZES if (end := size_of(ask, size)) is not None}
    round_one = "basket" in ask.typed and "basket short" not in ask.typed
    if round_one:
        ends["basket short"] = ends["basket"]
    least = {size: low for size, (low, _) in ends.items()}
    largest = {size: high for size, (_, high) in ends.items()}
    excursion = told_excursion(ask.speaker) if ask.speaker and "front" not in ask.typed else 0
    # A cone comes further out when it plays: only what clears that surely goes in, only what hits at rest surely not.
    playing = largest | ({"front": largest["front"] + excursion} if "front" in largest else {})
    flange = {} if ask.speaker is None else {size: ask.speaker.sizes[size] for size in ("flange", "flange short")}
    found: set[str] = set()
    for car, rings, tabs in product(ask.cars, ways, tabs_of(ask)):
        room, mounting = ask.platform.door_room(car, ask.place, ask.cut), Mounting(tuple(rings), ask.foam, tabs)
        as_seen = seen is not None and seen <= room["front"] - mounting.held
        high = [one.spare for one in met(room, mounting, largest if as_seen else playing, run=ask.run)]
        low = list(zip(met(room, mounting, least, run=ask.run), high, strict=True))
        if flange and falls_through(room, mounting, flange):
            found.add("does not")
            continue
        if any(spare < 0 for spare in high):
            found.add("does not")
        if all(one.spare > 0 or (one.spare == 0 == spare) for one, spare in low):
            found.add("goes in")
    return found


def told_excursion(speaker: Speaker) -> int:
    """How much further out its cone comes when it plays, as far as its record tells: printed it may be less than so."""
    said, true = (speaker.says or {}).get("excursion"), speaker.sizes.get("excursion", 0)
    if said is None:
        return 0
    middle, give, by = read(str(said))
    return true if by == "caliper" or give is not None else min(true, round(middle * MM))


def size_of(ask: DoorAsk, size: str) -> tuple[int, int] | None:
    """The least and the most that a size may be; None when it is not asked about."""
    if size in ask.typed:
        middle, give = ask.typed[size]
        return middle - give, middle + give
    if ask.speaker is None:
        return None
    return ask.speaker.sizes[size], ask.speaker.sizes[size]


def tabs_of(ask: DoorAsk) -> tuple[Tabs, ...]:
    """Where tabs may be."""
    return (ask.tabs,) if ask.tabs else ("in", "out")


def mountings(world: World, ask: DoorAsk, said: Sequence[Sequence[str]]) -> list[tuple[Ring, ...]]:
    """The mountings that an answer was about: the question's own, else those that the answer says it speaks of."""
    if ask.rings is not None:
        return [ask.rings]
    named = {ring.name: ring for ring in world.rings}
    return [tuple(named[name] for name in names) for names in said]
