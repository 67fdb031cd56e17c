"""Made-up cars whose truth is known, people who write notes of them with holes in, and the pairs that then clash.

It knows nothing of the reasoning: a pair's true axes are those of which one alone, made equal, would have changed what
was seen.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from random import Random
from typing import Any

from bezelbook.kinds.note.record import AnyNote
from bezelbook.kinds.record import Record
from tests.reasoning import making

KITS = {"none": 0, "flush-kit": 0, "low-kit": 8, "proud-kit": 22}
AXES = ("build", "body", "mount", "loom", "plugs", "cut")
FACE, BEZEL, FACES_APART = "sub-dash face", "finished bezel face", 18


@dataclass(frozen=True)
class World:
    """One opening: its true depth in each build and body, what the loom takes, and how often which kit is used."""

    depth: Mapping[tuple[str, str], int]
    loom: int
    plug: int
    told_splits: tuple[str, ...]
    usual_kit: str
    shallow: int


@dataclass(frozen=True)
class Job:
    """What was so when something was offered up or measured, all of it."""

    build: str
    body: str
    mount: str
    loom: str
    plugs: str
    cut: str
    box: int
    year: int

    def but(self, **other: Any) -> "Job":
        return Job(**{**self.__dict__, **other})


@dataclass
class Pair:
    """Two notes that cannot both be true as they stand, and the axes that in truth made the difference."""

    book: tuple[Record, ...]
    first: AnyNote
    second: AnyNote
    true: frozenset[str]
    sort: str = field(default="tried")


def world(dice: Random) -> World:
    """A place whose depth hangs on one of its splits, or on none that was told."""
    base, matters = dice.randint(150, 190), dice.choice(("build", "body", "neither"))
    apart = dice.choice((-1, 1)) * dice.randint(12, 35)
    depth = {
        (build, body): base
        + apart * ((matters == "build" and build == "late") or (matters == "body" and body == "cab"))
        for build in ("early", "late")
        for body in ("van", "cab")
    }
    told = ("build", "body") if dice.random() < 0.8 else ("body",)
    return World(depth, dice.randint(8, 30), dice.randint(22, 40), told, dice.choice([*KITS]), min(depth.values()))


def job(dice: Random, here: World) -> Job:
    """One job, most of them done the usual way."""
    kit = here.usual_kit if dice.random() < 0.65 else dice.choice([*KITS])
    build = dice.choice(("early", "late"))
    return Job(
        build,
        dice.choice(("van", "cab")),
        kit,
        "behind" if dice.random() < 0.25 else "aside",
        "off" if dice.random() < 0.2 else "on",
        "the lip" if dice.random() < 0.12 else "nothing",
        here.depth[build, "van"] // 5 * 5 + dice.choice(range(-70, 35, 5)),
        dice.choice((1, 2) if build == "early" else (3, 4)),
    )


def fits(here: World, done: Job) -> bool:
    """Whether it went in, in truth."""
    room = here.depth[done.build, done.body] + KITS[done.mount] + (40 if done.cut != "nothing" else 0)
    taken = (here.loom if done.loom == "behind" else 0) + (here.plug if done.plugs == "on" else 0)
    return done.box + taken <= room


def written(dice: Random, here: World, done: Job, name: str, author: Mapping[str, Any]) -> AnyNote:
    """The note of a job by somebody who says each thing as often as is their way; they say it truly or not at all."""
    says = {axis: dice.random() < author[axis] for axis in AXES}
    splits = {axis: getattr(done, axis) for axis in ("build", "body") if axis in here.told_splits and says[axis]}
    yes = fits(here, done)
    return making.tried(
        name,
        what=f"box-{done.box}",
        verdict="goes in" if yes else "does not",
        sure="fitted" if yes and done.plugs == "on" and dice.random() < 0.6 else "dry-fitted",
        reason=None if yes else "depth",
        splits=splits,
        year=done.year if dice.random() < author["year"] else None,
        mounts=(done.mount if done.mount == "none" else [done.mount]) if says["mount"] else None,
        loom=done.loom if says["loom"] else None,
        plugs=done.plugs if says["plugs"] else None,
        cut=done.cut if says["cut"] or (done.cut != "nothing" and dice.random() < 0.5) else None,
        author=author["name"],
    )


def causes(here: World, yes: Job, no: Job) -> frozenset[str]:
    """The axes of which one alone, had it been the same, would have turned what was seen."""
    found = set()
    for axis in AXES:
        same_yes, same_no = yes.but(**{axis: getattr(no, axis)}), no.but(**{axis: getattr(yes, axis)})
        if getattr(yes, axis) != getattr(no, axis) and (not fits(here, same_yes) or fits(here, same_no)):
            found.add(axis)
    return frozenset("build" if one == "build" else one for one in found)


def shop(here: World) -> tuple[Record, ...]:
    """The records that everybody in it shares."""
    splits = {"build": making.split("early", "late"), "body": making.split("van", "cab", differs_in="body")}
    splits["build"]["values"] = (
        {"early": {"years": [1, 2]}, "late": {"years": [3, 4]}} if here.loom % 2 else splits["build"]["values"]
    )
    car = making.vehicle(splits={name: splits[name] for name in here.told_splits})
    kits = [
        making.mount(
            name,
            proud="flush" if not out else f"{out} ± 0.5 mm caliper",
            made_for=[{"vehicle": making.CAR, "place": making.HOLE}],
        )
        for name, out in KITS.items()
        if name != "none"
    ]
    boxes = [
        making.unit(f"box-{depth}", body_depth=f"{depth} ± 1 mm caliper", plug_and_bend=None)
        for depth in range(40, 260, 5)
    ]
    return (making.shop(), car, *kits, *boxes)


def explained_by_what_is_said(first: AnyNote, second: AnyNote) -> bool:
    """Whether both say, on one axis, different things: then nobody would ask."""
    both = [(first.splits.get(axis), second.splits.get(axis)) for axis in ("build", "body")]  # type: ignore[union-attr]
    both += [(getattr(first, axis), getattr(second, axis)) for axis in ("loom", "plugs", "cut")]
    return any(None not in pair and pair[0] != pair[1] for pair in both)


def tried_pairs(dice: Random) -> Iterator[Pair]:
    """Every yes that is deeper than a no in one made-up shop."""
    here = world(dice)
    authors: list[Mapping[str, Any]] = [
        {**{axis: dice.choice((0.55, 0.7, 0.85, 0.95)) for axis in (*AXES, "year")}, "name": name}
        for name in ("ab", "cd", "ef")
    ]
    jobs = [job(dice, here) for _ in range(dice.randint(2, 12))]
    notes = [written(dice, here, done, f"n{number:02}", dice.choice(authors)) for number, done in enumerate(jobs)]
    book = (*shop(here), *notes)
    for one, yes in zip(jobs, notes, strict=True):
        for other, no in zip(jobs, notes, strict=True):
            if (
                fits(here, one)
                and not fits(here, other)
                and one.box >= other.box
                and not explained_by_what_is_said(yes, no)
            ):
                true = causes(here, one, other)
                if true:
                    yield Pair(book, yes, no, true)


def reading_pairs(dice: Random) -> Iterator[Pair]:
    """Two readings of one depth that disagree for one reason: the face, the build, a unit; or of a hole: the middle."""
    here, sort = world(dice), dice.choice(("datum", "build", "unit", "middle"))
    true = here.depth["early", "van"]
    author = dice.choice(("ab", "cd"))
    face = {"datum": FACE}
    readings = [making.reading("depth", f"{true} ± 2 mm", **face), making.reading("depth", f"{true} ± 2 mm", **face)]
    more: list[dict[str, Any]] = [{"splits": {"build": "early"}}, {"splits": {"build": "early"}}]
    if sort == "datum":
        readings[1] = making.reading("depth", f"{true + dice.randint(8, 35)} ± 2 mm", datum=dice.choice((None, BEZEL)))
    elif sort == "build":
        readings[1] = making.reading("depth", f"{true + dice.randint(8, 35)} ± 2 mm", **face)
        more[1] = {"splits": {"build": "late"} if dice.random() < 0.5 else {}}
    elif sort == "unit":
        readings[1] = making.reading("depth", f"{round(true / 2.54) / 10} mm", **face)
    else:
        hole = dice.randint(100, 160)
        readings = [making.reading("cut-out", f"{hole} mm"), making.reading("cut-out", f"{hole // 2} mm")]
    car = making.vehicle(splits={"build": making.split("early", "late")})
    first, second = (
        making.measured(name, said, author=author, **extra)
        for name, said, extra in zip(("m0", "m1"), readings, more, strict=True)
    )
    axis = {"middle": "unit"}.get(sort, sort)
    yield Pair((making.shop(), car, *shop(here)[2:], first, second), first, second, frozenset({axis}), "readings")
