"""What somebody writes who tried a speaker: true as far as they could see, with blanks."""

from random import Random

from tests.simulator.box_world import MM, UNCUT, World
from tests.simulator.doors.jobs import DoorJob, likely_speakers
from tests.simulator.doors.meeting import falls_through
from tests.simulator.doors.records import typed_sizes
from tests.simulator.doors.world import Speaker
from tests.simulator.meeting import Meeting
from tests.simulator.notes import HEARSAY, Content
from tests.simulator.saying import in_mm, read_off

OTHER_REASONS = ("bolt", "load", "other")
# What somebody may call that which stopped a speaker.
REASONS = {
    "long way": ("width", "height"),
    "short way": ("width", "height"),
    "fixed": ("depth",),
    "glass": ("glass", "glass", "depth"),
    "front": ("grille",),
}


def door_state(dice: Random, job: DoorJob, *, defaults: bool) -> Content:
    """The car and the way of fitting, as far as they were written down.

    With `defaults`, a blank means that nothing was cut and no mount was there, so what was otherwise is always said.
    """
    blank = job.installer.leaves_blank
    mounting = job.mounting
    foam = mounting.foam.name if mounting.foam else "none"
    usual: Content = {"cut": UNCUT, "mounts": "none"}
    said: Content = {"cut": job.cut, "mounts": mounting.names}
    if mounting.has_tabs:
        said["tabs"] = mounting.tabs
    kept = {key: word for key, word in said.items() if not blank(dice) or (defaults and word != usual.get(key))}
    if not defaults and (foam.startswith("a bead") or not blank(dice)):
        kept["gasket"] = foam
    if not defaults and job.door.glass and not blank(dice):
        kept["glass"] = "down" if job.run else "up"
    splits = {axis: value for axis, value in job.platform.splits(job.car).items() if not blank(dice)}
    found: Content = {"author": job.installer.initials, "date": job.day, "vehicle": job.platform.name}
    found |= {"place": job.door.place, **({} if blank(dice) else {"job": job.tag})}
    return found | kept | ({"splits": splits} if splits else {}) | ({} if dice.random() < 0.7 else {"year": job.year})


def speaker_tried(dice: Random, world: World, job: DoorJob) -> Content:
    """A speaker was offered up: the verdict is what the metal said."""
    speaker = dice.choice(likely_speakers(job, world.speakers))
    found = job.offered(speaker)
    short = [meeting for meeting in found if meeting.spare < 0]
    content: Content = {"form": "tried", **door_state(dice, job, defaults=False), **thing(dice, world, speaker)}
    content["sure"] = dice.choice(("fitted", "dry-fitted", "dry-fitted", "measured"))
    if short:
        return content | {"verdict": "does not"} | stopped(dice, world, job, short)
    if falls_through(job.room, job.mounting, speaker.sizes) or dice.random() < 0.04:
        return content | {"verdict": "does not", "reason": dice.choice(OTHER_REASONS)}
    if job.cut != UNCUT and dice.random() < 0.5:
        content |= {"cut": job.cut, "condition": f"{job.cut} cut away", "verdict": "goes in if"}
    elif job.mounting.has_tabs and job.mounting.tabs == "out" and dice.random() < 0.5:
        content |= {"tabs": "out", "condition": "tabs broken out", "verdict": "goes in if"}
    else:
        content["verdict"] = "goes in"
    return content | left_over(dice, world, job, found)


def thing(dice: Random, world: World, speaker: Speaker) -> Content:
    """What was tried: a record, or words and sizes."""
    return {"what": speaker.name} | ({} if speaker.says else {"sizes": typed_sizes(dice, world.shop, speaker)})


def stopped(dice: Random, world: World, job: DoorJob, short: list[Meeting]) -> Content:
    """Why it did not go in: one of the true reasons, perhaps with by how much."""
    if job.installer.leaves_blank(dice):
        return {}
    hit = dice.choice(short)
    found: Content = {"reason": dice.choice(REASONS[hit.size])}
    if hit.size in ("fixed", "glass", "front") and job.installer.says_by_how_much(dice):
        worst = min(one.spare for one in short if one.size == hit.size or {one.size, hit.size} == {"fixed", "glass"})
        found["short_by"] = gap_words(dice, world, job, -worst)
    return found


def left_over(dice: Random, world: World, job: DoorJob, found: tuple[Meeting, ...]) -> Content:
    """How much was left over to what came nearest behind it, or in front."""
    if not job.installer.says_by_how_much(dice):
        return {}
    size = dice.choice(("front", "glass" if job.run else "fixed"))
    spare = min(one.spare for one in found if one.size == size)
    return {"reason": REASONS[size][0], "to_spare": gap_words(dice, world, job, spare)}


def gap_words(dice: Random, world: World, job: DoorJob, true: int) -> str:
    """A gap as it was read: with a ± of its own, or within what the house trusts when no tool is named."""
    if job.installer.says_give(dice):
        give = dice.choice((MM // 2, MM, 2 * MM))
        return f"{read_off(dice, true, give)} ± {in_mm(give)}"
    return read_off(dice, true, world.shop.tools["none"])


def speaker_hearsay(dice: Random, world: World, job: DoorJob) -> tuple[Content, str | None]:
    """Somebody said so; wrong as often as such things are."""
    speaker = dice.choice(world.speakers)
    fits = all(meeting.spare >= 0 for meeting in job.offered(speaker))
    wrong = dice.random() < 0.35
    content: Content = {"form": "tried", **door_state(dice, job, defaults=False), **thing(dice, world, speaker)}
    content |= {"sure": dice.choice(HEARSAY), "verdict": "goes in" if fits != wrong else "does not"}
    return content, "hearsay" if wrong else None
