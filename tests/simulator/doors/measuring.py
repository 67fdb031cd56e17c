"""What somebody writes who measured a door: readings with a tool, each wrong by less than its ±."""

from fractions import Fraction
from random import Random

from tests.simulator.box_world import MM, World
from tests.simulator.doors.jobs import DoorJob
from tests.simulator.doors.meeting import holes
from tests.simulator.doors.notes import door_state
from tests.simulator.doors.world import WAYS, Mounting
from tests.simulator.measuring import reading
from tests.simulator.notes import Content
from tests.simulator.saying import in_mm

DEPTHS = {
    "fixed": "rear depth to fixed",
    "down": "rear depth to glass down",
    "worst": "rear depth at worst of travel",
    "front": "front clearance",
}
TOOLS = ("depth gauge", "wire", "tape", "putty", "putty")
HOLE_TOOLS = ("caliper", "caliper", "tape", "template")
# Of a bolt circle, how far neighbouring holes are apart: the sine of half a turn by the number of holes.
SPACING = {3: Fraction(866_025_404, 10**9), 4: Fraction(707_106_781, 10**9)}


def door_measured(dice: Random, world: World, job: DoorJob) -> Content:
    """Some of what there is to read, or by somebody careful all of it; from a face that is mostly the right one.

    Whoever measures to the glass runs it and watches it bow: where that takes more than glass that is fully down, it
    is read too.
    """
    through = job.mounting if dice.random() < 0.2 and not job.mounting.foam else Mounting()
    depths = [size for size in DEPTHS if size in job.room]
    chosen = depths if dice.random() < job.installer.care * 0.4 else [dice.choice(depths)]
    if "down" in chosen and job.room["worst"] < job.room["down"] and "worst" not in chosen:
        chosen = [*chosen, "worst"]
    readings = [depth_reading(dice, world, job, size, through) for size in chosen]
    if dice.random() < 0.6:
        readings += hole_readings(dice, world, job, through)
    as_it_is = DoorJob(**{**vars(job), "mounting": through})
    content = {"form": "measured", **door_state(dice, as_it_is, defaults=True), "readings": readings}
    return content | bolts(dice, world, job, readings) | shape(dice, job) | other_side(dice, job, through)


def depth_reading(dice: Random, world: World, job: DoorJob, size: str, through: Mounting) -> Content:
    """A depth from the face that a speaker sits on, or from the seat of a ring; now and then from elsewhere."""
    seat = bool(through.rings) and dice.random() < 0.5
    moved = (-through.held if size == "front" else through.held) if seat else 0
    true = max(0, job.room[size] + moved)
    found: Content = {"of": DEPTHS[size], **reading(dice, world, job, (true,), dice.choice(TOOLS))}
    if dice.random() < 0.03:
        away = {"reads": in_mm(true + dice.randint(3, 20) * MM)}
        return found | away | ({"datum": "finished bezel face"} if dice.random() < 0.5 else {})
    return found | {"datum": "bracket seat" if seat else job.door.face}


def hole_readings(dice: Random, world: World, job: DoorJob, through: Mounting) -> list[Content]:
    """The hole, where there is only one: across when it is round, else both of its ways."""
    if len(holes(job.room, through)) != 1:
        return []
    hole = holes(job.room, through)[0]
    tool = dice.choice(HOLE_TOOLS)
    if hole[0] == hole[1] and job.door.round:
        return [{"of": "cut-out", **reading(dice, world, job, hole, tool)}]
    ways = zip(WAYS, hole, strict=True)
    return [{"of": f"cut-out {way}", **reading(dice, world, job, (wide,), tool)} for way, wide in ways]


def bolts(dice: Random, world: World, job: DoorJob, readings: list[Content]) -> Content:
    """How many holes a speaker is screwed to, with their circle or how far they are apart added to the readings."""
    if dice.random() < 0.6:
        return {}
    count, circle = job.door.bolts
    of, true = dice.choice((("bolt circle", circle), ("hole spacing", int(circle * SPACING[count]))))
    readings.append({"of": of, **reading(dice, world, job, (true,), "caliper")})
    return {"bolt_holes": {"count": count}}


def shape(dice: Random, job: DoorJob) -> Content:
    """The shape of the hole, if it was written down."""
    if job.installer.leaves_blank(dice):
        return {}
    return {"shape": "round" if job.door.round else "oval"}


def other_side(dice: Random, job: DoorJob, through: Mounting) -> Content:
    """How the other side compares, as far as anybody looked."""
    if job.door.other is None or dice.random() < 0.5:
        return {}
    if job.platform.door_room(job.car, job.door.other, job.cut) != job.room:
        return {"other_side": dice.choice(("assumed the same", "not the same"))}
    return {
        "other_side": "assumed the same" if through.rings else dice.choice(("assumed the same", "measured the same"))
    }
