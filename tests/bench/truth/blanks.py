"""Whether what a gap says is blank really is, by the notes as they were written and the world they were drawn from."""

from collections.abc import Callable, Mapping

from tests.simulator.box_world import World
from tests.simulator.notes import Content

Blank = Callable[[World, Content], bool]


def field(*names: str) -> Blank:
    """A note that says nothing in one of these fields."""
    return lambda _, content: any(name not in content for name in names)


def some_split(world: World, content: Content) -> bool:
    """A note that leaves a split of its vehicle open; its model year may tell some of them."""
    told = {axis.name for axis in world.platform(str(content["vehicle"])).told}
    splits = content.get("splits")
    return bool(told - set(splits if isinstance(splits, dict) else ()))


def no_pieces(_: World, content: Content) -> bool:
    """Nobody in these worlds writes lists of pieces."""
    return "pieces" not in content


def unknown_name(world: World, content: Content) -> bool:
    """A note in which some mount, gasket or thing goes by a name that no part of the world has."""
    parts = (world.kits, world.units, world.rings, world.foams, world.speakers)
    known = {part.name for sort in parts for part in sort}
    mounts = content.get("mounts", [])
    said = [*(mounts if isinstance(mounts, list) else []), content.get("gasket"), content.get("what")]
    return any(word not in known for word in said if word and word != "none")


def assumed(_: World, content: Content) -> bool:
    """A side that nobody looked at."""
    return content.get("other_side") == "assumed the same"


BLANKS: Mapping[str, Blank] = {
    "mount-not-said": field("mounts"),
    "glass-not-said": field("glass"),
    "tabs-not-said": field("tabs"),
    "split-not-said": some_split,
    "no-way-in-written": no_pieces,
    "name-that-leads-nowhere": unknown_name,
    "other-side-assumed": assumed,
    "sides-not-the-same": assumed,
}
