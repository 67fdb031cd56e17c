"""Years of work in a shop: job after job, each with the note that somebody wrote of it."""

from dataclasses import replace
from random import Random

from tests.simulator.box_world import UNCUT, World
from tests.simulator.doors.jobs import DoorJob, draw_door_job
from tests.simulator.doors.measuring import door_measured
from tests.simulator.doors.notes import speaker_hearsay, speaker_tried
from tests.simulator.installers import CREW
from tests.simulator.jobs import Job, draw_job
from tests.simulator.measuring import measured
from tests.simulator.notes import Content, Note, bench, hearsay, tried
from tests.simulator.regimes import Regime


def notes_of(dice: Random, world: World, regime: Regime, count: int) -> list[Note]:
    """So many notes about the cars of a world, in the order in which they were written."""
    notes: list[Note] = []
    for number in range(1, count + 1):
        job = draw_door_job(dice, world, number) if world.speakers else draw_job(dice, world, number)
        if notes and dice.random() < 0.05:
            notes.append(copied(dice, f"note-{number}", notes))
        else:
            notes.append(told(dice, world, regime, job, f"note-{number}"))
            notes[-1] = replaced(dice, notes)
    return notes


def told(dice: Random, world: World, regime: Regime, job: Job | DoorJob, name: str) -> Note:
    """One note about one job, as it gets into the book."""
    note = at_a_door(dice, world, job, name) if isinstance(job, DoorJob) else written(dice, world, job, name)
    return regime.told(dice, world, job, replace(note, in_full=in_full(job, note.content)))


def written(dice: Random, world: World, job: Job, name: str) -> Note:
    """One note about one opening."""
    way = dice.random()
    if way < 0.1:
        content, false = hearsay(dice, world, job)
        return Note(name, content, false)
    if way < 0.14:
        return Note(name, bench(dice, world, job))
    if way < 0.36:
        return mistyped(dice, job, Note(name, measured(dice, world, job)))
    return Note(name, tried(dice, world, job))


def at_a_door(dice: Random, world: World, job: DoorJob, name: str) -> Note:
    """One note about one place for a speaker."""
    way = dice.random()
    if way < 0.08:
        content, false = speaker_hearsay(dice, world, job)
        return Note(name, content, false)
    if way < 0.4:
        return Note(name, door_measured(dice, world, job))
    return Note(name, speaker_tried(dice, world, job))


def in_full(job: Job | DoorJob, content: Content) -> Content:
    """The same note without a blank; whoever measured had no mount there and nothing cut but what was said."""
    if content["form"] == "bench":
        return content
    state: Content = {"splits": dict(job.car), "cut": job.cut}
    if isinstance(job, DoorJob):
        state |= {"mounts": job.mounting.names, **({"glass": "down" if job.run else "up"} if job.door.glass else {})}
        state |= {"gasket": job.mounting.foam.name if job.mounting.foam else "none"}
        state |= {"tabs": job.mounting.tabs} if job.mounting.has_tabs else {}
    else:
        state |= {"mounts": [kit.name for kit in job.kits] or "none", "loom": job.loom}
        state |= {"plugs": "on" if job.plugs_on else "off"}
    if content["form"] == "measured":
        usual: Content = {"mounts": "none", "cut": UNCUT, "loom": "aside"}
        state = {"splits": state["splits"]} | {key: content.get(key, word) for key, word in usual.items()}
    return content | state


def copied(dice: Random, name: str, notes: list[Note]) -> Note:
    """Somebody tells of a job that was told of already, sometimes under the same tag."""
    first = dice.choice(notes)
    content = first.content | {"author": dice.choice(CREW).initials}
    content.pop("replaces", None)
    return Note(name, content, first.false or "told twice", first.in_full)


def replaced(dice: Random, notes: list[Note]) -> Note:
    """Now and then a note takes the place of an older one about the same opening."""
    *older, last = notes
    where = [(note.name, note.content.get("place")) for note in older if same_place(note, last)]
    if not where or dice.random() > 0.03:
        return last
    return replace(last, content=last.content | {"replaces": dice.choice(where)[0]})


def same_place(one: Note, other: Note) -> bool:
    return (
        all(one.content.get(key) == other.content.get(key) for key in ("vehicle", "place")) and "place" in one.content
    )


def mistyped(dice: Random, job: Job, note: Note) -> Note:
    """A reading in centimetres that says millimetres, where that is no length that an opening ever has."""
    readings = note.content["readings"]
    if not isinstance(readings, list) or not job.installer.slips(dice):
        return note
    for number, one in enumerate(readings):
        plain = str(one["reads"]).removesuffix(" mm")
        if one["of"] in ("depth", "width", "height") and plain.replace(".", "", 1).isdigit() and float(plain) < 250:
            slip = one | {"reads": f"{float(plain) / 10:g} mm"}
            rest = [*readings[:number], slip, *readings[number + 1 :]]
            return Note(note.name, note.content | {"readings": rest}, "a slip")
    return note
