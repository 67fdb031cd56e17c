"""Which splits make an audio package, and which package a note was made on."""

from collections.abc import Mapping

from bezelbook.kinds.vehicle.record import Subject, Vehicle
from bezelbook.reasoning.builds import Build, bearing_axes, builds, known_splits

NOT_LOOKED = "not looked"


def package_axes(vehicle: Vehicle) -> tuple[str, ...]:
    """The splits that say which audio package a car has; without any, all that bear on the amplifier."""
    audio = tuple(axis for axis, split in vehicle.splits.items() if split.differs_in == "audio")
    return audio or tuple(axis for axis in vehicle.splits if _bears(vehicle, axis))


def packages(vehicle: Vehicle) -> tuple[Build, ...]:
    """Every audio package that was built; a vehicle without such a split has one, the empty build."""
    return builds(vehicle, package_axes(vehicle))


def package_of(vehicle: Vehicle, said: Mapping[str, str], year: int | None) -> Build | None:
    """The one package that a car has, by what was said of it and its model year; None when it may be several."""
    known = known_splits(vehicle, said, year)
    axes = package_axes(vehicle)
    return tuple((axis, known[axis]) for axis in axes) if all(axis in known for axis in axes) else None


def build_at(vehicle: Vehicle, place: str, subject: Subject, said: Mapping[str, str], year: int | None) -> Build:
    """The build of a car as far as it matters for a subject at a place; what nobody said is `not looked`."""
    known = known_splits(vehicle, said, year)
    return tuple((axis, known.get(axis, NOT_LOOKED)) for axis in bearing_axes(vehicle, place, subject))


def _bears(vehicle: Vehicle, axis: str) -> bool:
    subjects = vehicle.splits[axis].bears_on.subjects
    return not subjects or "amplifier" in subjects
