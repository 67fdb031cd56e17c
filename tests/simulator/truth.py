"""Whether what was asked truly goes in, over everything that the question leaves open."""

from collections.abc import Iterator, Sequence
from itertools import product

from tests.simulator.box_world import FRONT, Kit, World
from tests.simulator.meeting import Meeting, behind, meetings
from tests.simulator.questions import Ask


def outcomes(ask: Ask, ways: Sequence[Sequence[Kit]]) -> set[str]:
    """What can come of it: "goes in", "does not", or both, over the cars, the mountings and the sizes it may be."""
    found: set[str] = set()
    ends = list(sizes(ask))
    for car, kits in product(ask.cars, ways):
        room = ask.platform.room(car, ask.place, ask.cut, ask.loom)
        for exit_ in exits(ask, kits):
            largest = meetings(room, kits, {size: high for size, (_, high) in ends}, exit_, plugs_on=ask.plugs_on)
            least = meetings(room, kits, {size: low for size, (low, _) in ends}, exit_, plugs_on=ask.plugs_on)
            found |= set(one_car(list(largest), list(least)))
    names = {size for size, _ in ends}
    # A plug of which nothing was said may need more than there is.
    return found | ({"does not"} if ask.plugs_on and "depth" in names and "plug" not in names else set())


def one_car(largest: Sequence[Meeting], least: Sequence[Meeting]) -> Iterator[str]:
    """What can come of it in one car; a size with a ± is never as small or as large as its ends."""
    if any(high.spare < 0 for high in largest):
        yield "does not"
    ends = zip(least, largest, strict=True)
    if all(low.spare > 0 or (low.spare == 0 and low.asks == high.asks) for low, high in ends):
        yield "goes in"


def exits(ask: Ask, kits: Sequence[Kit]) -> tuple[str, ...]:
    """Where the plug may leave."""
    known = ask.exit or (ask.unit.exit if ask.unit else None)
    return (known,) if known else behind(kits)


def sizes(ask: Ask) -> Iterator[tuple[str, tuple[int, int]]]:
    """The least and the most that each size may be; a plug that was not asked about may need nothing."""
    own = ask.unit.sizes if ask.unit else {}
    for size in (*FRONT, "depth", "rear", "plug"):
        if size in ask.typed:
            middle, give = ask.typed[size]
            yield size, (middle - give, middle + give)
        elif size in own:
            yield size, (own[size], own[size])


def mountings(world: World, ask: Ask, said: Sequence[Sequence[str]]) -> list[tuple[Kit, ...]]:
    """The mountings that an answer was about: the question's own, else those that the answer says it speaks of."""
    if ask.kits is not None:
        return [ask.kits]
    named = {kit.name: kit for kit in world.kits}
    return [tuple(named[name] for name in names) for names in said]
