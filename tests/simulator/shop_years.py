"""Years of work in a shop: job after job, each with the note that somebody wrote of it."""

from collections.abc import Iterator
from dataclasses import replace
from random import Random

from tests.simulator.box_world import MM, World
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
    """A reading in centimetres that says millimetres, when nobody would take it for a length of that kind."""
    readings = list(mistypeable(note))
    if not readings or not job.installer.slips(dice):
        return note
    slip, others = readings[0]
    number = str(slip["reads"]).removesuffix(" mm")
    content = note.content | {"readings": [slip | {"reads": f"{float(number) / 10:g} mm"}, *others]}
    return Note(note.name, content, "a slip")


def mistypeable(note: Note) -> Iterator[tuple[dict[str, object], list[object]]]:
    """Each reading that a tenth of would be no length of its kind, with the others."""
    readings = note.content.get("readings")
    for one in readings if isinstance(readings, list) else ():
        plain = str(one["reads"]).removesuffix(" mm")
        if one["of"] in ("depth", "width", "height") and plain.replace(".", "", 1).isdigit() and float(plain) < 250:
            yield one, [other for other in readings if other is not one]
