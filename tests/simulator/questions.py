"""What somebody asks at the counter: about units and about bodies of any size, mostly near the edge of what fits."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from random import Random

from tests.simulator.box_world import MM, NINTHS, UNCUT, Car, Kit, Opening, Platform, Unit, World
from tests.simulator.meeting import deep_room, front_room
from tests.simulator.saying import in_mm

# How far beside the edge a made-up size lies, in nanometres.
BESIDE = (
    0,
    100,
    -100,
    MM // 10,
    -MM // 10,
    MM // 2,
    -MM // 2,
    MM,
    -MM,
    3 * MM,
    -3 * MM,
    8 * MM,
    -8 * MM,
    25 * MM,
    -25 * MM,
)
TYPED = ("width", "height", "depth", "plug")


@dataclass(frozen=True)
class Ask:
    """One question, in the simulator's own terms.

    `cars` are all cars that it may be about; `kits` is None when any mount will do. `typed` are the sizes that were
    typed, each with its ± (0 for exact); without a unit nothing else is asked about.
    """

    platform: Platform
    place: str
    cars: tuple[Car, ...]
    known: Mapping[str, str]
    year: int | None
    kits: tuple[Kit, ...] | None
    cut: str = UNCUT
    loom: str = "aside"
    plugs_on: bool = True
    unit: Unit | None = None
    typed: Mapping[str, tuple[int, int]] = field(default_factory=dict)
    exit: str | None = None

    def plain(self) -> dict[str, object]:
        """The question as plain data, as a program would put it."""
        state: dict[str, object] = {"cut": self.cut, "loom": self.loom, "plugs": "on" if self.plugs_on else "off"}
        if self.kits is not None:
            state["mounts"] = [kit.name for kit in self.kits] or "none"
        about: dict[str, object] = {"vehicle": self.platform.name, "place": self.place, "state": state}
        about |= {"splits": dict(self.known)} if self.known else {}
        about |= {"year": self.year} if self.year else {}
        return about | {"what": self._what()}

    def _what(self) -> object:
        if self.unit and not self.typed:
            return self.unit.name
        sizes: dict[str, object] = {size: _typed(middle, give) for size, (middle, give) in self.typed.items()}
        like = {"like": self.unit.name} if self.unit else {}
        return sizes | like | ({"plug_exit": self.exit} if self.exit else {})


def _typed(middle: int, give: int) -> str:
    return f"{in_mm(middle)} ± {in_mm(give)}" if give else in_mm(middle)


def published(dice: Random, world: World, platform: Platform, opening: Opening) -> Iterator[Ask]:
    """Every unit with a record, in each build and through each kit that somebody may choose, and with either open."""
    kits = [None, (), *((kit,) for kit in world.kits_for(platform.name, opening.place))]
    recorded = [unit for unit in world.units if unit.says]
    for known, year in said_of_the_car(dice, platform):
        cars = tuple(possible(platform, known, year))
        for through in kits:
            for unit in recorded:
                yield Ask(platform, opening.place, cars, known, year, through, unit=unit)


def said_of_the_car(dice: Random, platform: Platform) -> list[tuple[dict[str, str], int | None]]:
    """Nothing, each value of the first axis, one whole car, and one model year."""
    car = dice.choice(tuple(platform.cars))
    said: list[tuple[dict[str, str], int | None]] = [({}, None)]
    for first in platform.told[:1]:
        built = [value for value in first.values if any(dict(car)[first.name] == value for car in platform.cars)]
        said += [({first.name: value}, None) for value in built]
    return [*said, (platform.splits(car), None), ({}, dice.choice(platform.cars[car]))]


def possible(platform: Platform, known: Mapping[str, str], year: int | None) -> Iterator[Car]:
    """The cars that it may be."""
    for car, years in platform.cars.items():
        if all(dict(car)[axis] == value for axis, value in known.items()) and (year is None or year in years):
            yield car


def near_the_edge(dice: Random, world: World, platform: Platform, opening: Opening) -> Ask:
    """A body of any size in any state, each of its sizes near to what some car has room for."""
    car = dice.choice(tuple(platform.cars))
    whole = (platform.splits(car), None)
    known, year = dice.choice([*said_of_the_car(dice, platform), whole, whole])
    cars = tuple(possible(platform, known, year))
    through = dice.choice([(), *((kit,) for kit in world.kits_for(platform.name, opening.place))])
    cut = dice.choice((UNCUT, UNCUT, UNCUT, *opening.cuts))
    loom = dice.choice(("aside", "aside", "behind"))
    unit = dice.choice([unit for unit in world.units if unit.says]) if dice.random() < 0.15 else None
    room = platform.room(dice.choice(cars), opening.place, cut, loom)
    exit_ = dice.choice(NINTHS[3:6])
    edges = {size: clear for size in TYPED[:2] if (clear := front_room(room, through, size)) is not None}
    edges["depth"] = deep_room(room, through, dice.choice(NINTHS)) - dice.choice((0, 0, 20 * MM))
    edges["plug"] = deep_room(room, through, exit_) - edges["depth"]
    typed = {size: (beside(dice, edges[size]), dice.choice((0, 0, 0, MM))) for size in asked_sizes(dice)}
    kits = through if dice.random() < 0.85 else None
    plugs_on = dice.random() < (0.6 if "plug" in typed else 0.1)
    knows_exit = "plug" in typed and dice.random() < 0.7
    return Ask(
        platform,
        opening.place,
        cars,
        known,
        year,
        kits,
        cut,
        loom,
        plugs_on,
        unit,
        typed,
        exit_ if knows_exit else None,
    )


def asked_sizes(dice: Random) -> tuple[str, ...]:
    """One size alone, or all that make a body."""
    return dice.choice((("depth",), ("depth",), ("width",), ("height",), TYPED[:2], TYPED[:3], TYPED, TYPED[2:]))


def beside(dice: Random, edge: int) -> int:
    """A size near an edge; none is nothing."""
    return max(MM, edge + dice.choice(BESIDE))
