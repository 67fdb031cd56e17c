"""The ways in which a strong note comes to state something false, each the slip of somebody who meant well.

Each takes what a note says of a job and gives what it says instead; the same where it cannot go wrong so.
"""

import re
from collections.abc import Callable, Mapping
from random import Random

from tests.simulator.box_world import MM, World
from tests.simulator.doors.jobs import DoorJob
from tests.simulator.jobs import Job
from tests.simulator.notes import Content
from tests.simulator.regimes import Falsehood, Regime
from tests.simulator.saying import in_mm

PLAIN = re.compile(r"^(\d+(?:\.\d+)?) mm\b(.*)$")
NOMINAL = re.compile(r"^(\d+) (?:(\d)/(\d) )?in$")
HOLES = ("cut-out", "cut-out long way", "cut-out short way")


def other_side(_dice: Random, _world: World, job: Job | DoorJob, content: Content) -> Content:
    """The door on the other side."""
    other = job.door.other if isinstance(job, DoorJob) else None
    return content | {"place": other} if other else content


def other_unit(dice: Random, _world: World, _job: Job | DoorJob, content: Content) -> Content:
    """A number of centimetres or inches that says millimetres."""
    by = dice.choice((10, 25.4))
    return reworded(dice, content, lambda _name: True, lambda number: number / by)


def radius(dice: Random, _world: World, _job: Job | DoorJob, content: Content) -> Content:
    """From the edge of a hole or a basket to its middle, instead of across."""
    return reworded(dice, content, lambda name: name in (*HOLES, "basket", "basket_short"), lambda number: number / 2)


def nominal(dice: Random, world: World, _job: Job | DoorJob, content: Content) -> Content:
    """The size that a speaker is sold as, for the hole it sits in."""
    sold = next(
        (found for one in world.speakers if one.says and (found := NOMINAL.match(str(one.says["nominal"])))), None
    )
    if sold is None:
        return content
    whole, over, under = (int(part or 0) for part in sold.groups())
    across = round((whole + (over / under if under else 0)) * 25.4, 1)
    return reworded(dice, content, lambda name: name in ("cut-out", "basket"), lambda _number: across)


def spacing(_dice: Random, _world: World, _job: Job | DoorJob, content: Content) -> Content:
    """How far neighbouring holes are apart, written as the circle through all of them."""
    found = [one | {"of": "bolt circle"} if one["of"] == "hole spacing" else one for one in readings(content)]
    return content | {"readings": found} if found else content


def other_datum(dice: Random, _world: World, job: Job | DoorJob, content: Content) -> Content:
    """A depth from the face of the trim, written as one from the metal."""
    face = job.door.face if isinstance(job, DoorJob) else "sub-dash face"
    away = dice.randint(5, 40) if isinstance(job, Job) else dice.randint(3, 20)
    named = {str(one["of"]) for one in readings(content) if one.get("datum") == face}
    return reworded(dice, content, lambda name: name in named, lambda number: number + away)


def other_mount(dice: Random, world: World, job: Job | DoorJob, content: Content) -> Content:
    """No mount where there was one, or another one."""
    if content["form"] != "tried":
        return content
    if isinstance(job, DoorJob):
        true, others = job.mounting.names, [ring.name for ring in world.rings]
    else:
        true = [kit.name for kit in job.kits] or "none"
        others = [kit.name for kit in world.kits_for(job.platform.name, job.opening.place)]
    said = dice.choice([words for words in ("none", *([name] for name in others)) if words != true])
    return content | {"mounts": said}


def other_split(dice: Random, _world: World, job: Job | DoorJob, content: Content) -> Content:
    """Another value on one of the ways in which cars differ here."""
    place = job.door.place if isinstance(job, DoorJob) else job.opening.place
    bearing = [axis for axis in job.platform.told if axis.bears(place) and axis.told == "as it is"]
    if not bearing:
        return content
    axis = dice.choice(bearing)
    value = dice.choice([value for value in axis.values if value != dict(job.car)[axis.name]])
    splits = {name: said for name, said in job.platform.splits(job.car).items() if name in dict_of(content, "splits")}
    return {key: said for key, said in content.items() if key != "year"} | {"splits": splits | {axis.name: value}}


def from_hearsay(_dice: Random, _world: World, _job: Job | DoorJob, content: Content) -> Content:
    """What somebody had heard, wrongly, written down as fitted or tried."""
    turned = {"goes in": "does not", "does not": "goes in"}.get(str(content.get("verdict")))
    about = ("reason", "where", "hit", "short_by", "to_spare")
    kept = {key: said for key, said in content.items() if key not in about}
    sure = "fitted" if turned == "goes in" else "dry-fitted"
    return kept | {"verdict": turned, "sure": sure} if turned else content


def reworded(
    dice: Random, content: Content, named: Callable[[str], bool], changed: Callable[[float], float]
) -> Content:
    """One of the numbers in millimetres that a note has read or typed, changed."""
    read = [
        number
        for number, one in enumerate(readings(content))
        if named(str(one["of"])) and PLAIN.match(str(one["reads"]))
    ]
    sizes = dict_of(content, "sizes")
    typed = [name for name, text in sizes.items() if named(name) and PLAIN.match(str(text))]
    if read:
        at = dice.choice(read)
        found = [dict(one) for one in readings(content)]
        found[at]["reads"] = said_anew(str(found[at]["reads"]), changed)
        return content | {"readings": found}
    if typed:
        name = dice.choice(typed)
        return content | {"sizes": sizes | {name: said_anew(str(sizes[name]), changed)}}
    return content


def said_anew(text: str, changed: Callable[[float], float]) -> str:
    """The same words with another number in front; a scale that fine is nobody's, so it is rounded to a tenth."""
    found = PLAIN.match(text)
    number, rest = found.groups() if found else ("1", "")
    return f"{in_mm(max(1, round(changed(float(number)) * 10)) * (MM // 10))}{rest}"


def readings(content: Content) -> list[Content]:
    """What a note read in the car."""
    found = content.get("readings", [])
    return found if isinstance(found, list) and content["form"] == "measured" else []


def dict_of(content: Content, key: str) -> Content:
    """A part of a note that has keys of its own."""
    found = content.get(key, {})
    return found if isinstance(found, dict) else {}


WAYS: Mapping[str, Falsehood] = {
    "side swapped": other_side,
    "unit slip": other_unit,
    "radius for diameter": radius,
    "nominal for cut-out": nominal,
    "spacing for bolt circle": spacing,
    "wrong datum": other_datum,
    "mount unsaid": other_mount,
    "wrong split": other_split,
    "hearsay as fitted": from_hearsay,
}
CORRUPTED = Regime("corrupted", 0.05, WAYS)
