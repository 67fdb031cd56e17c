"""A world and its notes as the files of a book."""

from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

from bezelbook.store.yaml_out import to_yaml
from tests.simulator.box_world import Axis, Kit, Platform, Shop, Unit, World
from tests.simulator.doors.world import Foam, Ring, Speaker
from tests.simulator.notes import Note
from tests.simulator.saying import in_mm

DIFFERS_IN = ("build", "body", "hand", "audio", "display")


def write_book(folder: Path, world: World, notes: Iterable[Note]) -> None:
    """Write every record of a world and every note, one a file."""
    for path, record in [*records(world), *(note_file(note) for note in notes)]:
        (folder / path).parent.mkdir(parents=True, exist_ok=True)
        (folder / path).write_text(to_yaml(record), encoding="utf-8")


def note_file(note: Note) -> tuple[str, object]:
    """Where a note goes, and what it says."""
    return f"notes/{str(note.content.get('date', '2024'))[:4]}/{note.name}.yaml", note.content


def records(world: World) -> Iterator[tuple[str, object]]:
    """The records that are not notes."""
    yield "shop.yaml", shop(world.shop)
    for platform in world.platforms:
        yield f"vehicles/{platform.name}.yaml", vehicle(platform)
    for folder, things in parts(world):
        yield from ((f"{folder}/{thing.name}.yaml", thing.says) for thing in things if thing.says)


def parts(world: World) -> Iterator[tuple[str, Sequence[Kit | Unit | Ring | Foam | Speaker]]]:
    yield "mounts", (*world.kits, *world.rings)
    yield "head_units", world.units
    yield "supplies", world.foams
    yield "speakers", world.speakers


def shop(of: Shop) -> object:
    clearances = {size: in_mm(length) for size, length in of.clearances.items()}
    tools = {tool: in_mm(give) for tool, give in of.tools.items()}
    return {"name": "A made-up shop", "format": 1, "clearances": clearances, "tools": tools}


def vehicle(of: Platform) -> object:
    record: dict[str, object] = {
        "name": of.name.replace("-", " "),
        "vehicle_class": "made up",
        "generation": 1,
        "model_years": of.years,
        "splits": {axis.name: split(axis) for axis in of.told},
        "places": dict(places(of)),
    }
    return record | ({"never_built": [dict(car) for car in of.never]} if of.never else {})


def places(of: Platform) -> Iterator[tuple[str, object]]:
    for opening in of.openings:
        yield opening.place, {"kind": "opening behind a bezel" if opening.bezel else "plain opening", "side": "centre"}
    for door in of.doors:
        other = {"other_side": door.other} if door.other else {}
        yield door.place, {"kind": door.kind, "side": door.side, **other}


def split(axis: Axis) -> object:
    values = {value: ({"years": list(years)} if (years := told_years(axis, value)) else {}) for value in axis.values}
    subjects = ["trim"] if axis.told == "no matter of room" else list(axis.subjects)
    bears_on = {"places": list(axis.places), "subjects": subjects}
    said = {key: words for key, words in bears_on.items() if words}
    sort = {"differs_in": axis.name} if axis.name in DIFFERS_IN else {}
    return {"values": values} | sort | ({"bears_on": said} if said else {})


def told_years(axis: Axis, value: str) -> tuple[int, ...]:
    """The model years in which a value was built, as the record has it."""
    years = axis.years.get(value, ())
    if axis.told != "between two years" or value == axis.values[0]:
        return years
    return tuple(year for year in years if year not in axis.years[axis.values[0]])
