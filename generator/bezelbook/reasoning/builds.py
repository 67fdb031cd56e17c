"""Which builds of a vehicle there are, which of its splits bear on a place, and which build a car may be."""

from collections.abc import Collection, Mapping
from itertools import product

from bezelbook.kinds.vehicle.record import Split, Subject, Vehicle

Build = tuple[tuple[str, str], ...]


def bearing_axes(vehicle: Vehicle, place: str, subject: Subject) -> tuple[str, ...]:
    """The splits that make a difference to a subject at a place, in the vehicle's own order."""
    return tuple(axis for axis, split in vehicle.splits.items() if _bears(split, place, subject))


def builds(vehicle: Vehicle, axes: tuple[str, ...]) -> tuple[Build, ...]:
    """Every combination of values on these axes that belongs to at least one car that was built.

    A vehicle without axes has one build, the empty one. If the vehicle says that nothing was built, that is nonsense
    and every combination counts.
    """
    names = tuple(vehicle.splits)
    whole = [
        dict(zip(names, values, strict=True)) for values in product(*(vehicle.splits[name].values for name in names))
    ]
    built = [car for car in whole if not any(_matches(car, never) for never in vehicle.never_built)] or whole
    return tuple(dict.fromkeys(tuple((axis, car[axis]) for axis in axes) for car in built))


def known_splits(vehicle: Vehicle, said: Mapping[str, str], year: int | None) -> dict[str, str]:
    """What is known of a car's build: what was said, and what its model year implies.

    A model year implies a value only where exactly one value of the split lists it.
    """
    known = {
        axis: value for axis, value in said.items() if axis in vehicle.splits and value in vehicle.splits[axis].values
    }
    for axis, split in vehicle.splits.items():
        listing = [value for value, seen in split.values.items() if year in seen.years]
        if axis not in known and len(listing) == 1:
            known[axis] = listing[0]
    return known


def matching(candidates: tuple[Build, ...], known: Mapping[str, str]) -> tuple[Build, ...]:
    """The builds that agree with what is known."""
    return tuple(build for build in candidates if all(known.get(axis, value) == value for axis, value in build))


def common_values(candidates: Collection[Build]) -> str:
    """The values that all of these builds share, as words for the key of a question; `any build` where none is.

    An axis that only tells them apart is left out, so that the words outlive a new split of the vehicle.
    """
    shared = set.intersection(*(set(build) for build in candidates)) if candidates else set()
    first = next(iter(candidates), ())
    return "-".join(value for axis, value in first if (axis, value) in shared) or "any build"


def _bears(split: Split, place: str, subject: Subject) -> bool:
    on = split.bears_on
    return (not on.places or place in on.places) and (not on.subjects or subject in on.subjects)


def _matches(car: Mapping[str, str], never: Mapping[str, str]) -> bool:
    return bool(never) and all(car.get(axis) == value for axis, value in never.items())
