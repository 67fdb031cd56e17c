"""For which cars an order holds, in words with the tells, so that one can see from the seat which order to take."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.builds import Build, bearing_axes, builds
from bezelbook.values.words import SIDES


@dataclass(frozen=True, slots=True)
class Which:
    """Some builds: their words, empty for every build, and (value, tell) for each value that they are known by."""

    words: str
    tells: tuple[tuple[str, str], ...]


def which_builds(vehicle: Vehicle, place: str, mine: tuple[Build, ...]) -> Which:
    """These builds among all that differ at a place, by the axes that set them apart."""
    every = builds(vehicle, bearing_axes(vehicle, place, "trim"))
    if set(mine) == set(every):
        return Which("", ())
    telling = _telling(mine, every)
    short = dict.fromkeys(tuple((axis, value) for axis, value in build if axis in telling) for build in mine)
    values = dict.fromkeys(pair for build in short for pair in build)
    words = " or ".join(", ".join(_value(vehicle, axis, value) for axis, value in build) for build in short)
    return Which(words, tuple(_tells(vehicle, values)))


def _value(vehicle: Vehicle, axis: str, value: str) -> str:
    """A value as a person says it; the hand of a car is the side of its wheel."""
    hand = value in SIDES and "hand" in (axis, vehicle.splits[axis].differs_in)
    return f"wheel on the {value}" if hand else value


def _telling(mine: tuple[Build, ...], every: tuple[Build, ...]) -> set[str]:
    """The fewest axes, in the vehicle's order, that say which of all builds these are."""
    axes = [axis for axis, _ in every[0]]
    kept = set(axes)
    for axis in axes:
        without = kept - {axis}
        if {_short(build, without) for build in mine}.isdisjoint(
            _short(build, without) for build in every if build not in mine
        ):
            kept = without
    return kept


def _short(build: Build, axes: set[str]) -> Build:
    return tuple(pair for pair in build if pair[0] in axes)


def _tells(vehicle: Vehicle, values: dict[tuple[str, str], None]) -> Iterator[tuple[str, str]]:
    """How to know each value; one whose words say it already needs nothing more."""
    for axis, value in values:
        words, tell = _value(vehicle, axis, value), vehicle.splits[axis].values[value].tell
        if tell is None or tell.rstrip(".").casefold() != words:
            yield words, tell or "Nobody has written how to tell."
