"""What a note says on each axis on which two notes can differ and both be true."""

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from bezelbook.kinds.note.record import AnyNote, Bench, Measured, Metered, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.builds import known_splits
from bezelbook.values.words import Axis

SPLIT_AXES: Mapping[str, Axis] = MappingProxyType(
    {"build": "build", "body": "body", "hand": "hand", "audio": "package", "display": "display"}
)


def said_on(vehicle: Vehicle | None, note: AnyNote) -> Mapping[Axis, str | None]:
    """What a note says on every axis that it has, None where it leaves it blank; an axis it has not is left out."""
    said: dict[Axis, str | None] = {}
    if isinstance(note, Bench):
        return said
    if vehicle is not None:
        known = known_splits(vehicle, note.splits, note.year)
        for name, split in vehicle.splits.items():
            said[SPLIT_AXES.get(split.differs_in or "build", "build")] = known.get(name)
    mounts = note.mounts
    said["mount"] = None if mounts is None else " and ".join(mounts if isinstance(mounts, tuple) else (mounts,))
    said |= {"tabs": note.tabs, "glass": note.glass, "loom": note.loom, "cut": note.cut}
    if isinstance(note, Tried):
        said["plugs"] = note.plugs
    if isinstance(note, Measured):
        said["datum"] = _one(reading.datum for reading in note.readings)
        said["tool"] = _one(reading.tool for reading in note.readings)
    if isinstance(note, Metered):
        said["view"] = note.view
    return said


def _one(words: Iterable[str | None]) -> str | None:
    """What all of these say; None when one of them is blank or two differ."""
    every = set(words)
    return every.pop() if len(every) == 1 else None
