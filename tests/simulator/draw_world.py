"""A whole world made up from a seed."""

from random import Random

from tests.simulator.box_world import MM, Shop, World
from tests.simulator.draw_parts import draw_unit, kits_of
from tests.simulator.draw_platforms import DrawAxes, platform

UNITS = 8
# Things of which nobody made a record: they are known from the notes that mention them, or not at all.
LOOSE = ("some old screen", "a customer's own radio", "short box from the shelf")
TOOLS = {
    "bench_caliper": (MM // 10, MM // 5, MM // 2),
    "caliper": (MM // 5, MM // 2, MM),
    "depth_gauge": (MM // 2, MM, 2 * MM),
    "tape": (2 * MM, 3 * MM),
    "wire": (3 * MM, 5 * MM),
    "template": (MM // 2, MM),
    "putty": (MM // 2, MM),
    "test_box": (MM // 2, MM),
    "none": (5 * MM, 8 * MM),
}


def draw_shop(dice: Random) -> Shop:
    """A shop with its own trust in its tools, and its own wish for room."""
    tools = {tool: dice.choice(gives) for tool, gives in TOOLS.items()}
    clearances = {"width": dice.choice((0, MM)), "height": dice.choice((0, MM // 2)), "depth": dice.choice((0, 0, MM))}
    return Shop(tools, clearances)


def draw_world(dice: Random, axes_of: DrawAxes | None = None) -> World:
    """Two to four platforms, the kits and units of the shop, and things that have no record."""
    shop = draw_shop(dice)
    platforms = tuple(platform(dice, f"car-{number}", axes_of) for number in range(1, dice.randint(2, 4) + 1))
    recorded = [draw_unit(dice, shop, f"unit-{number}", recorded=True) for number in range(1, UNITS + 1)]
    loose = [draw_unit(dice, shop, name, recorded=False) for name in LOOSE]
    return World(shop, platforms, tuple(kits_of(dice, shop, platforms)), (*recorded, *loose))
