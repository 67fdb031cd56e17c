"""Which cars a note may be about, and how its readings are held to one and the same of them."""

from collections.abc import Iterator, Sequence
from itertools import product

from tests.simulator.book import told_years
from tests.simulator.box_world import Axis, Car, Platform
from tests.simulator.notes import Content
from tests.simulator.possible.linear import Option, constant, number


def builds(platform: Platform, axes: Sequence[Axis], content: Content) -> list[Car]:
    """Every build, by the axes that count, that a note allows by its splits and its model year."""
    said = content.get("splits", {})
    known = dict(said) if isinstance(said, dict) else {}
    for axis in axes:
        listing = [value for value in axis.values if content.get("year") in told_years(axis, value)]
        if axis.name not in known and len(listing) == 1:
            known[axis.name] = listing[0]
    every = list(_every(platform, axes))
    return [build for build in every if all(known.get(name, value) == value for name, value in build)] or every


def _every(platform: Platform, axes: Sequence[Axis]) -> Iterator[Car]:
    names = [axis.name for axis in axes]
    whole = product(*(axis.values for axis in platform.axes))
    cars = [dict(zip([axis.name for axis in platform.axes], values, strict=True)) for values in whole]
    built = [car for car in cars if not any(dict(never).items() <= car.items() for never in platform.never)]
    yield from dict.fromkeys(tuple((name, car[name]) for name in names) for car in built)


def chosen(what: object, value: object, values: Sequence[object]) -> Option:
    """Of something that is one of these values, it is this one; two choices of it must be the same."""
    if len(values) < 2:
        return ()
    marks = [(number(("choice", what, one)), one == value) for one in values]
    return tuple(mark - constant(1) if so else mark.times(-1) for mark, so in marks)
