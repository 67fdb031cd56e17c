"""What somebody writes who measured an opening: readings with a tool, each wrong by less than its ±."""

from random import Random

from tests.simulator.box_world import FRONT, MM, NINTHS, World
from tests.simulator.doors.jobs import DoorJob
from tests.simulator.jobs import Job
from tests.simulator.meeting import deep_room, front_room
from tests.simulator.notes import Content, state_of
from tests.simulator.saying import in_mm, read_between

DEEP_TOOLS = ("depth gauge", "wire", "tape", "putty", "test box")
FRONT_TOOLS = ("caliper", "caliper", "tape", "template")


def measured(dice: Random, world: World, job: Job) -> Content:
    """One to five readings, or by somebody careful all there is to read; from a face that is mostly the right one."""
    fronts = [size for size in FRONT if front_room(job.room, job.kits, size) is not None]
    spots = [*fronts, *NINTHS]
    if dice.random() > job.installer.care * 0.4:
        spots = [dice.choice(fronts if dice.random() < 0.3 else NINTHS) for _ in range(dice.randint(1, 5))]
    readings = [
        front_reading(dice, world, job, spot) if spot in fronts else deep_reading(dice, world, job, spot)
        for spot in spots
    ]
    return {"form": "measured", **state_of(dice, job, defaults=True), "readings": readings}


def front_reading(dice: Random, world: World, job: Job, size: str) -> Content:
    """A width or height, of the hole that the thing would meet."""
    clear = front_room(job.room, job.kits, size) or 0
    return {"of": size, **reading(dice, world, job, (clear,), dice.choice(FRONT_TOOLS))}


def deep_reading(dice: Random, world: World, job: Job, first: str) -> Content:
    """A depth at one ninth or at several that are nearly alike, from the sub-dash face or from the kit's seat."""
    seat = bool(job.kits) and dice.random() < 0.4
    depths = {ninth: deep_room(job.room, job.kits if seat else (), ninth) for ninth in NINTHS}
    alike = [ninth for ninth in NINTHS if abs(depths[ninth] - depths[first]) < MM // 8]
    zones = alike if dice.random() < 0.3 else [first]
    true = tuple(depths[ninth] for ninth in zones)
    found: Content = {"of": "depth", **reading(dice, world, job, true, dice.choice(DEEP_TOOLS))}
    if not job.installer.leaves_blank(dice):
        found["zones"] = "all" if len(zones) == len(NINTHS) else zones
    if dice.random() < 0.03:
        return found | other_face(dice, depths[first])
    return found | {"datum": "kit seat" if seat else "sub-dash face"}


def other_face(dice: Random, depth: int) -> Content:
    """Measured from a face that nobody can compare with, or from one that was not written down."""
    away = depth + dice.randint(5, 40) * MM
    found: Content = {"reads": in_mm(away)}
    return found | ({"datum": "finished bezel face"} if dice.random() < 0.5 else {})


def reading(dice: Random, world: World, job: Job | DoorJob, true: tuple[int, ...], tool: str) -> Content:
    """A number that is less than its ± away from each of these lengths, with its tool if that was written down."""
    if dice.random() < 0.04:
        return {"reads": in_mm(max(MM, true[0] // MM * MM + dice.randint(-15, 15) * MM)), "tool": "eye"}
    named = not job.installer.leaves_blank(dice)
    house = world.shop.tools[tool.replace(" ", "_") if named else "none"]
    own = dice.choice((MM // 2, MM, 2 * MM, 4 * MM)) if job.installer.says_give(dice) else None
    give = own or house
    reads = read_between(dice, max(true) - give + 1, min(true) + give - 1)
    found: Content = {"reads": f"{reads} ± {in_mm(own)}" if own else reads}
    return found | ({"tool": tool} if named else {})
