"""What somebody writes of a job: true as far as they could see, with blanks, and now and then about the wrong thing."""

from dataclasses import dataclass, field
from random import Random

from tests.simulator.box_world import FRONT, MM, UNCUT, Unit, World
from tests.simulator.draw_parts import FIELD, typed_sizes
from tests.simulator.jobs import Job, likely_units
from tests.simulator.meeting import Meeting
from tests.simulator.saying import in_mm, read_off

OTHER_REASONS = ("circuit", "load", "other")
HEARSAY = ("told", "eyeballed", "worked out")
Content = dict[str, object]


@dataclass(frozen=True)
class Note:
    """What a file of notes says, and what nobody but the simulator knows: in which way it is not to be relied on.

    `false` names a weak note that is wrong, a number in the wrong unit, a second telling of one job, or a regime's own
    kind of falsehood; it is None for a note whose every word is true. `in_full` is what somebody would have written
    who leaves nothing blank and says nothing false.
    """

    name: str
    content: Content
    false: str | None = None
    in_full: Content = field(default_factory=dict)


def is_strong(content: Content) -> bool:
    """Whether it says of a place what somebody saw or measured there."""
    return content["form"] == "measured" or (content["form"] == "tried" and content["sure"] not in HEARSAY)


def state_of(dice: Random, job: Job, *, defaults: bool) -> Content:
    """The car and the way of fitting, as far as they were written down.

    With `defaults`, a blank means that nothing was cut, the loom was aside and no mount was there, so that whatever
    was otherwise is always said.
    """
    blank = job.installer.leaves_blank
    usual = {"cut": UNCUT, "loom": "aside", "mounts": "none"}
    mounts: object = [kit.name for kit in job.kits] or "none"
    said: Content = {"cut": job.cut, "loom": job.loom, "mounts": mounts}
    kept = {key: word for key, word in said.items() if not blank(dice) or (defaults and word != usual[key])}
    splits = {axis: value for axis, value in job.platform.splits(job.car).items() if not blank(dice)}
    found: Content = {"author": job.installer.initials, "date": job.day, "vehicle": job.platform.name}
    found |= {"place": job.opening.place, **({} if blank(dice) else {"job": job.tag})}
    return found | kept | ({"splits": splits} if splits else {}) | ({} if dice.random() < 0.7 else {"year": job.year})


def tried(dice: Random, world: World, job: Job) -> Content:
    """Something was offered up: the verdict is what the metal said."""
    units = likely_units(job, world.units) or list(world.units)
    unit = dice.choice(units)
    met = job.offered(unit)
    short = [meeting for meeting in met if meeting.spare < 0]
    content: Content = {"form": "tried", **state_of(dice, job, defaults=False), **thing(dice, world, unit)}
    fitted = not short and job.plugs_on and dice.random() < 0.6
    content["sure"] = "fitted" if fitted else dice.choice(("dry-fitted", "dry-fitted", "measured"))
    if not (job.installer.leaves_blank(dice) or (fitted and dice.random() < 0.3)):
        content["plugs"] = "on" if job.plugs_on else "off"
    if short:
        return content | {"verdict": "does not"} | stopped(dice, world, job, short)
    if dice.random() < 0.04:
        return content | {"verdict": "does not", "reason": dice.choice(OTHER_REASONS)}
    if job.cut != UNCUT and dice.random() < 0.5:
        content |= {"cut": job.cut, "condition": f"{job.cut} cut away"}
        return content | {"verdict": "goes in if"} | to_spare(dice, world, job, met)
    return content | {"verdict": "goes in"} | to_spare(dice, world, job, met)


def thing(dice: Random, world: World, unit: Unit) -> Content:
    """What was tried: a record, or words and sizes."""
    return {"what": unit.name} | ({} if unit.says else {"sizes": typed_sizes(dice, world.shop, unit)})


def stopped(dice: Random, world: World, job: Job, short: list[Meeting]) -> Content:
    """Why it did not go in: one of the true reasons, perhaps with the place and by how much."""
    if job.installer.leaves_blank(dice):
        return {}
    hit = dice.choice(short)
    reason = "nose" if hit.size.startswith("nose") else hit.size
    if hit.size == "plug" and dice.random() < 0.5:
        reason = "depth"
    found: Content = {"reason": reason}
    if hit.ninth and not job.installer.leaves_blank(dice):
        where = [hit.ninth]
        if reason == "depth" and dice.random() < 0.5:
            where += sorted({one.ninth for one in short if one.ninth} - {hit.ninth})
        found |= {"where": where, "hit": job.opening.thing_hit[hit.ninth]}
    at = [one for one in short if one.size == hit.size or (reason == "depth" and one.ninth == hit.ninth)]
    one_spot = reason in ("width", "height") or (len(where_of(found)) == 1)
    if one_spot and job.installer.says_by_how_much(dice):
        worst = max(at, key=lambda one: (one.ninth == hit.ninth, -one.spare))
        found["short_by"] = gap_words(dice, world, job, -worst.spare)
    return found


def where_of(content: Content) -> list[str]:
    where = content.get("where", [])
    return where if isinstance(where, list) else []


def to_spare(dice: Random, world: World, job: Job, met: tuple[Meeting, ...]) -> Content:
    """How much was left over at one ninth, under the deepest thing there."""
    deep = [meeting for meeting in met if meeting.ninth]
    if not deep or not job.installer.says_by_how_much(dice):
        return {}
    ninth = dice.choice(deep).ninth
    least = min(meeting.spare for meeting in deep if meeting.ninth == ninth)
    return {"where": [ninth], "to_spare": gap_words(dice, world, job, least)}


def gap_words(dice: Random, world: World, job: Job, true: int) -> str:
    """A gap as it was read: with a ± of its own, or within what the house trusts when no tool is named."""
    if job.installer.says_give(dice):
        give = dice.choice((MM // 2, MM, 2 * MM, 3 * MM))
        return f"{read_off(dice, true, give)} ± {in_mm(give)}"
    return read_off(dice, true, world.shop.tools["none"])


def hearsay(dice: Random, world: World, job: Job) -> tuple[Content, str | None]:
    """Somebody said so, or it looked like it; wrong as often as such things are."""
    unit = dice.choice(world.units)
    fits = all(meeting.spare >= 0 for meeting in job.offered(unit))
    wrong = dice.random() < 0.35
    content: Content = {"form": "tried", **state_of(dice, job, defaults=False), **thing(dice, world, unit)}
    content |= {"sure": dice.choice(HEARSAY), "verdict": "goes in" if fits != wrong else "does not"}
    return content, "hearsay" if wrong else None


def bench(dice: Random, world: World, job: Job) -> Content:
    """A unit was measured on the bench; no tool is named, and a ± only by those who think of it."""
    unit = dice.choice([unit for unit in world.units if unit.says])
    size = dice.choice([size for size in (*FRONT, "depth", "plug") if size in unit.sizes])
    true = unit.sizes[size]
    give = dice.choice((MM // 2, MM, 2 * MM))
    careful = f"{read_off(dice, true, give)} ± {in_mm(give)}"
    reads = careful if job.installer.says_give(dice) else read_off(dice, true, world.shop.tools["none"])
    who: Content = {"form": "bench", "author": job.installer.initials, "date": job.day, "part": unit.name}
    return who | {"readings": [{"of": FIELD[size], "reads": reads}]}
