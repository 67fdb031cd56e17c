"""Platforms made up from dice: the ways their cars differ, which cars were built, and openings made of nine boxes."""

from collections.abc import Callable, Mapping, Sequence
from itertools import product
from random import Random

from tests.simulator.box_world import MM, NINTHS, UNCUT, Axis, Car, Opening, Platform, Room

TENTH = MM // 10
DrawAxes = Callable[[Random, int, Sequence[str]], Sequence[Axis]]
CUTS = ("one rib behind the pocket", "the lip all round")
THINGS = ("duct", "blend door arm", "beam", "bracket", "connector block", "rib")
# What stands behind a dash, by the ninths that it takes room from.
SHAPES = (
    ("lower-left",),
    ("lower-right",),
    ("upper-left",),
    ("lower-left", "lower", "lower-right"),
    ("upper-left", "upper", "upper-right"),
    ("left", "lower-left"),
    ("right", "lower-right", "upper-right"),
    ("centre",),
    NINTHS,
)


def platform(dice: Random, name: str, axes_of: DrawAxes | None = None) -> Platform:
    """A platform with one or two ways to differ and one or two openings."""
    years = dice.randint(2, 6)
    places = ("dash",) if dice.random() < 0.7 else ("dash", "lower-pocket")
    axes = tuple((axes_of or draw_axes)(dice, years, places))
    whole = [tuple(zip([axis.name for axis in axes], values, strict=True)) for values in every_value(axes)]
    never = (dice.choice(whole),) if len(whole) > 3 and dice.random() < 0.4 else ()
    cars = {car: built for car in whole if car not in never and (built := built_in(axes, car, years))}
    openings = tuple(draw_opening(dice, axes, place) for place in places)
    return Platform(name, years, axes, never, cars, openings)


def draw_axes(dice: Random, years: int, places: Sequence[str]) -> list[Axis]:
    """One way to differ, and sometimes another, which may have nothing to do with some place or with room at all."""
    change = dice.randint(1, years - 1)
    late = range(change + dice.choice((0, 1, 1)), years + 1)
    by_year = {"early": tuple(range(1, change + 1)), "late": tuple(late)}
    axes = [Axis("build", ("early", "late"), by_year if dice.random() < 0.6 else {})]
    if dice.random() < 0.45:
        bears_on = dice.choice(((), (), places[:1], places[-1:]))
        subjects: tuple[str, ...] = dice.choice(((), (), ("speakers", "amplifier"), ("room", "plug")))
        values = dice.choice((("small", "large"), ("none", "small", "large")))
        axes.append(Axis("display", values, {}, tuple(bears_on), subjects))
    return axes


def every_value(axes: Sequence[Axis]) -> list[tuple[str, ...]]:
    return list(product(*(axis.values for axis in axes)))


def built_in(axes: Sequence[Axis], car: Car, years: int) -> tuple[int, ...]:
    """The model years in which a car of these values was built."""
    chosen = dict(car)
    return tuple(
        year
        for year in range(1, years + 1)
        if all(not axis.years or year in axis.years[chosen[axis.name]] for axis in axes)
    )


def draw_opening(dice: Random, axes: Sequence[Axis], place: str) -> Opening:
    """An opening whose room differs with the axes that bear on it, with what is cut and with where the loom lies."""
    bezel = dice.random() < 0.25
    bearing = [axis for axis in axes if axis.bears(place)]
    builds: list[Car] = [
        tuple(zip([axis.name for axis in bearing], values, strict=True)) for values in every_value(bearing)
    ]
    cuts = tuple(CUTS[: dice.choice((0, 1, 1, 2))])
    first = draw_room(dice, bezel=bezel)
    rooms: dict[tuple[Car, str, str], Room] = {}
    for number, build in enumerate(builds):
        aside = first if not number else changed(dice, first)
        taken = {ninth: -dice.randint(20, 300) * TENTH for ninth in dice.choice(SHAPES)}
        given = {cut: draw_gain(dice, aside) for cut in cuts}
        for cut in (UNCUT, *cuts):
            room = aside if cut == UNCUT else larger(aside, given[cut])
            rooms[build, cut, "aside"] = room
            rooms[build, cut, "behind"] = Room(room.sizes, added(room.depths, taken))
    things = {ninth: dice.choice(THINGS) for ninth in NINTHS}
    return Opening(place, bezel, cuts, rooms, things)


def draw_room(dice: Random, *, bezel: bool) -> Room:
    """A box with something in one or two of its corners."""
    sizes = {"width": dice.randint(1780, 1860) * TENTH, "height": dice.randint(1000, 1120) * TENTH}
    if bezel:
        sizes |= {"nose width": dice.randint(1680, 1800) * TENTH, "nose height": dice.randint(940, 1040) * TENTH}
    depths = dict.fromkeys(NINTHS, dice.randint(1700, 2300) * TENTH)
    for _ in range(dice.choice((0, 1, 1, 2))):
        depths = added(depths, dict.fromkeys(dice.choice(SHAPES), -dice.randint(10, 400) * TENTH))
    if dice.random() < 0.3:
        depths = {ninth: depth - dice.randint(0, 30) * TENTH for ninth, depth in depths.items()}
    return Room(sizes, depths)


def changed(dice: Random, room: Room) -> Room:
    """The room of another build: the same, or something more or less in one spot, or another box altogether."""
    way = dice.random()
    if way < 0.2:
        return room
    if way < 0.4:
        return draw_room(dice, bezel="nose width" in room.sizes)
    moved = dict.fromkeys(dice.choice(SHAPES), dice.randint(-300, 300) * TENTH)
    sizes = added(room.sizes, {"width": dice.choice((0, 0, -10, 15)) * TENTH})
    return Room(sizes, added(room.depths, moved))


def draw_gain(dice: Random, room: Room) -> dict[str, int]:
    """What a cut adds, by the size or ninth that it adds to."""
    deeper = dict.fromkeys(dice.choice(SHAPES), dice.randint(5, 250) * TENTH)
    wider = {size: dice.randint(1, 30) * TENTH for size in room.sizes if dice.random() < 0.4}
    return deeper | wider


def larger(room: Room, gain: Mapping[str, int]) -> Room:
    return Room(added(room.sizes, gain), added(room.depths, gain))


def added(lengths: Mapping[str, int], more: Mapping[str, int]) -> dict[str, int]:
    return {name: length + more.get(name, 0) for name, length in lengths.items()}
