"""The numbers of a small world that nobody knows, and the values that have to be tried for each.

Why a grid of 1/G units misses nothing, though lengths have no smallest step: every note compares numbers in the form
"x - y is at least, or more than, a whole number of units", since all figures of a world are whole. Choose for each
"either" the side that is true. Such a system fails over the real numbers exactly when some round trip of comparisons
adds up to more than 0, or to 0 with a "more than" in it (Farkas; for differences, Bellman). Write "more than by 1/G"
for "more than": a round trip that added up to a whole number below 0, hence to at most -1, still does not exceed 0 as
long as it holds at most G of them. A round trip meets each number once. "More than" leads into a part's size, into a
room seen through an offset, out of the ground (the lower end of a ±) or into the ground (an upper end), never from one
room to another. So G = 2 + how many sizes and offsets are unknown is enough. The least solution is then a multiple of
1/G, and no larger than the largest figure plus one unit, and for each unknown size the most that a bend and an offset
add, where the grid ends.
An offset with a ± adds one number to several others, so with more than one room in play the grid may miss a point. Each
of its points is still a true world: what it refutes is refuted.
"""

from collections.abc import Iterator, Sequence
from itertools import combinations, product

from tests.laws.grid import Values, size
from tests.laws.small_world import Reading, Size, Tried, World


def deep_room(ninth: str, state: tuple[str, str, str]) -> str:
    """The name of the depth of one ninth in one state."""
    return " ".join((ninth, *state))


def front_room(size: str, state: tuple[str, str, str]) -> str:
    """The name of the width or height in one state; the loom does not matter to it."""
    return " ".join((size, *state[:2]))


def ordered_rooms(world: World) -> Iterator[tuple[str, str]]:
    """Pairs of rooms of which the second is never smaller."""
    states = product(world.cuts, world.looms)
    pairs = [(mean, roomy) for mean, roomy in combinations(states, 2) if no_roomier(mean, roomy)]
    for build, (mean, roomy) in product(world.builds, pairs):
        for ninth in world.ninths:
            yield deep_room(ninth, (build, *mean)), deep_room(ninth, (build, *roomy))
        for side in world.front if mean[0] != roomy[0] else ():
            yield front_room(side, (build, *mean)), front_room(side, (build, *roomy))


def no_roomier(mean: tuple[str, str], roomy: tuple[str, str]) -> bool:
    """Whether one cut and loom leave no more room than another."""
    return all(one == other or one in ("nothing", "behind") for one, other in zip(mean, roomy, strict=True))


def unknown_sizes(world: World) -> dict[str, Size | None]:
    """The part sizes that are no single number, by the name of the number."""
    sizes = {f"{part.name} {name}": size for part in world.parts for name, size in part.sizes.items()}
    return {name: size for name, size in sizes.items() if size is None or size.give}


def fineness(world: World) -> int:
    """Into how many steps a unit is divided."""
    return 2 + len(unknown_sizes(world)) + sum(kit.proud.give > 0 for kit in world.kits)


def highest(world: World) -> int:
    """The unit at which the grid ends: the least solution never needs more."""
    bends = [part.bend for part in world.parts if part.bend]
    offsets = [Size(0), *(kit.proud for kit in world.kits)]
    bend = _most(bends)
    hop = bend + _most(offsets) - min(offset.middle - offset.give for offset in offsets)
    sizes = [size for part in world.parts for size in (part.width, part.height, part.depth) if size]
    sizes += [hole for kit in world.kits for hole in kit.holes.values()]
    sizes += [ask.depth for ask in world.asks if ask.depth]
    read = [note.reads for note in world.notes if isinstance(note, Reading)]
    gaps = [note.gap for note in world.notes if isinstance(note, Tried) and note.gap]
    return max(_most(sizes) + _most(gaps) + hop, _most(read)) + len(unknown_sizes(world)) * hop + 1


def _most(sizes: Sequence[Size]) -> int:
    return max((size.middle + size.give for size in sizes), default=0)


def domains(world: World) -> dict[str, Values]:
    """The values to be tried for every number that nobody knows."""
    fine, top = fineness(world), highest(world)
    whole = tuple(range(top * fine + 1))
    states = [*product(world.builds, world.cuts, world.looms)]
    found = {deep_room(ninth, state): whole for ninth in world.ninths for state in states}
    found |= {front_room(size, state): whole for size in world.front for state in states}
    unknown = unknown_sizes(world)
    unknown |= {f"{kit.name} proud": kit.proud for kit in world.kits if kit.proud.give}
    unknown |= {f"{kit.name} {size}": hole for kit in world.kits for size, hole in kit.holes.items() if hole.give}
    return found | {name: whole if size is None else inside(size, fine) for name, size in unknown.items()}


def inside(size: Size, fine: int) -> Values:
    """The steps that differ from the middle by less than the ±."""
    return tuple(range((size.middle - size.give) * fine + 1, (size.middle + size.give) * fine))


def points(world: World) -> int:
    """How many points the world's grid has."""
    return size(domains(world))
