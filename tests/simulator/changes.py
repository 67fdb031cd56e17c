"""Cars that change in mid generation, in a way of which the book was told less than there is."""

from collections.abc import Sequence
from random import Random

from tests.simulator.box_world import Axis, Told, World
from tests.simulator.doors.draw import draw_door_world
from tests.simulator.draw_world import draw_world

# In what cars may come to differ, with words for it.
KINDS = {
    "build": ("early", "late"),
    "audio": ("base", "upgraded"),
    "body": ("three-door", "five-door"),
    "hand": ("left-hand", "right-hand"),
}
TOLD: tuple[Told, ...] = ("between two years", "no matter of room", "nothing")


def changing_axes(dice: Random, years: int, _places: Sequence[str]) -> list[Axis]:
    """One way to differ: a running change within some year, or one that has nothing to do with years."""
    name = dice.choice(("build", "build", *KINDS))
    if name != "build":
        return [Axis(name, KINDS[name], {}, told=dice.choice(TOLD[1:]))]
    change = dice.randint(1, years - 1)
    by_year = {"early": tuple(range(1, change + 1)), "late": tuple(range(change, years + 1))}
    return [Axis(name, KINDS[name], by_year, told=dice.choice(TOLD))]


def changing_openings(dice: Random) -> World:
    """A world of openings whose cars change."""
    return draw_world(dice, changing_axes)


def changing_doors(dice: Random) -> World:
    """A world of doors whose cars change."""
    return draw_door_world(dice, changing_axes)
