"""What somebody asks about a speaker: one with a record, or one of any size near the edge of what fits."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from random import Random

from tests.simulator.box_world import MM, UNCUT, Car, Platform, World
from tests.simulator.doors.meeting import holes
from tests.simulator.doors.world import Door, Foam, Mounting, Ring, Speaker, Tabs
from tests.simulator.questions import BESIDE, possible, said_of_the_car
from tests.simulator.saying import in_mm

# What a question calls each size.
TYPED = {"basket": "basket", "basket short": "basket_short", "depth": "mounting_depth", "front": "front_height"}


@dataclass(frozen=True)
class DoorAsk:
    """One question, in the simulator's own terms.

    `cars` are all cars that it may be about; `rings` is None when any mount will do, `tabs` when they may be in or out.
    `typed` are the sizes that were typed, each with its ±; without a speaker nothing else is asked about.
    """

    platform: Platform
    place: str
    cars: tuple[Car, ...]
    known: Mapping[str, str]
    year: int | None
    rings: tuple[Ring, ...] | None
    foam: Foam | None = None
    tabs: Tabs | None = None
    cut: str = UNCUT
    run: bool = True
    speaker: Speaker | None = None
    typed: Mapping[str, tuple[int, int]] = field(default_factory=dict)

    def plain(self) -> dict[str, object]:
        """The question as plain data, as a program would put it."""
        state: dict[str, object] = {"cut": self.cut, "glass": "down" if self.run else "up"}
        if self.rings is not None:
            state["mounts"] = Mounting(self.rings).names
        state |= {"tabs": self.tabs} if self.tabs else {}
        state |= {"gasket": self.foam.name} if self.foam else {}
        about: dict[str, object] = {"vehicle": self.platform.name, "place": self.place, "state": state}
        about |= {"splits": dict(self.known)} if self.known else {}
        about |= {"year": self.year} if self.year else {}
        return about | {"what": self._what()}

    def _what(self) -> object:
        if self.speaker and not self.typed:
            return self.speaker.name
        sizes: dict[str, object] = {}
        for size, (middle, give) in self.typed.items():
            sizes[TYPED[size]] = f"{in_mm(middle)} ± {in_mm(give)}" if give else in_mm(middle)
        return sizes | ({"like": self.speaker.name} if self.speaker else {})


def published(dice: Random, world: World, platform: Platform, door: Door) -> Iterator[DoorAsk]:
    """Every speaker with a record, in each build, with no mount, with each ring and with any of them."""
    recorded = [speaker for speaker in world.speakers if speaker.says and door.suits(speaker)]
    for known, year in said_of_the_car(dice, platform):
        cars = tuple(possible(platform, known, year))
        for rings in [None, (), *((ring,) for ring in world.rings)]:
            for speaker in dice.sample(recorded, min(3, len(recorded))):
                yield DoorAsk(platform, door.place, cars, known, year, rings, speaker=speaker)


def near_the_edge(dice: Random, world: World, platform: Platform, door: Door) -> DoorAsk:
    """A speaker of any size in any state, each of its sizes near to what some car has room for."""
    car = dice.choice(tuple(platform.cars))
    whole = (platform.splits(car), None)
    known, year = dice.choice([*said_of_the_car(dice, platform), whole, whole])
    cars = tuple(possible(platform, known, year))
    rings = dice.choice([(), *((ring,) for ring in world.rings), tuple(dice.sample(world.rings, 2))])
    mounting = Mounting(rings, dice.choice((None, None, *world.foams)), dice.choice(("in", "out")))
    cut = dice.choice((UNCUT, UNCUT, UNCUT, *door.cuts))
    run = dice.random() < 0.8
    room = platform.door_room(dice.choice(cars), door.place, cut)
    hole = dice.choice(holes(room, mounting))
    edges = {"basket": hole[0], "basket short": hole[1], "front": room["front"] - mounting.held}
    edges["depth"] = room[dice.choice(("worst", "fixed")) if door.glass else "fixed"] + mounting.held
    typed = {
        size: (max(MM, edges[size] + dice.choice(BESIDE)), dice.choice((0, 0, 0, MM))) for size in sizes_of(dice, door)
    }
    if "basket short" in typed:
        typed["basket short"] = min(typed["basket"], typed["basket short"])
    tabs = mounting.tabs if dice.random() < 0.8 else None
    alike = [speaker for speaker in world.speakers if speaker.says and door.suits(speaker)]
    like = dice.choice(alike) if alike and dice.random() < 0.15 else None
    kept = rings if dice.random() < 0.9 else None
    return DoorAsk(platform, door.place, cars, known, year, kept, mounting.foam, tabs, cut, run, like, typed)


def sizes_of(dice: Random, door: Door) -> tuple[str, ...]:
    """One size alone, or all that make a speaker."""
    basket = ("basket",) if door.round else ("basket", "basket short")
    return dice.choice((("depth",), ("depth",), basket, ("front",), (*basket, "depth"), (*basket, "depth", "front")))
