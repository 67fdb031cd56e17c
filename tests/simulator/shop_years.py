"""Years of work in a shop: job after job, each with the note that somebody wrote of it."""

from dataclasses import replace
from random import Random

from tests.simulator.box_world import World
from tests.simulator.installers import CREW
from tests.simulator.jobs import Job, draw_job
from tests.simulator.measuring import measured
from tests.simulator.notes import Note, bench, hearsay, tried
from tests.simulator.regimes import Regime


def notes_of(dice: Random, world: World, regime: Regime, count: int) -> list[Note]:
    """So many notes about the cars of a world, in the order in which they were written."""
    notes: list[Note] = []
    for number in range(1, count + 1):
        job = draw_job(dice, world, number)
        if notes and dice.random() < 0.05:
            notes.append(copied(dice, f"note-{number}", notes))
        else:
            notes.append(regime.told(dice, written(dice, world, job, f"note-{number}")))
            notes[-1] = replaced(dice, notes)
    return notes


def written(dice: Random, world: World, job: Job, name: str) -> Note:
    """One note about one job."""
    way = dice.random()
    if way < 0.1:
        content, false = hearsay(dice, world, job)
        return Note(name, content, false)
    if way < 0.14:
        return Note(name, bench(dice, world, job))
    if way < 0.36:
        return mistyped(dice, job, Note(name, measured(dice, world, job)))
    return Note(name, tried(dice, world, job))


def copied(dice: Random, name: str, notes: list[Note]) -> Note:
    """Somebody tells of a job that was told of already, sometimes under the same tag."""
    first = dice.choice(notes)
    content = first.content | {"author": dice.choice(CREW).initials}
    content.pop("replaces", None)
    return Note(name, content, first.false or "told twice")


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
