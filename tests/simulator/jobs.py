"""What happens in the bay: a car comes, something is offered up through some kit, and the metal has the last word."""

from collections.abc import Sequence
from dataclasses import dataclass
from random import Random

from tests.simulator.box_world import MM, NINTHS, UNCUT, Car, Kit, Opening, Platform, Room, Unit, World
from tests.simulator.draw_parts import MIDDLE_ROW
from tests.simulator.installers import CREW, Installer
from tests.simulator.meeting import Meeting, meetings

HOME_MADE = "something home made"
TENTH = MM // 10


@dataclass(frozen=True)
class Job:
    """One car in the bay, and the way in which something is offered up to it."""

    tag: str
    day: str
    installer: Installer
    platform: Platform
    car: Car
    year: int
    opening: Opening
    kits: tuple[Kit, ...]
    cut: str
    loom: str
    plugs_on: bool

    @property
    def room(self) -> Room:
        """The bare room in this car, as it stands."""
        return self.platform.room(self.car, self.opening.place, self.cut, self.loom)

    def offered(self, unit: Unit) -> tuple[Meeting, ...]:
        """Everything that a unit meets there."""
        return tuple(meetings(self.room, self.kits, unit.sizes, unit.exit, plugs_on=self.plugs_on))


def draw_job(dice: Random, world: World, number: int) -> Job:
    """A job on some car, by somebody, with what is nearly always done and sometimes with what hardly ever is."""
    platform = dice.choice(world.platforms)
    opening = dice.choice(platform.openings)
    car = dice.choice(tuple(platform.cars))
    return Job(
        tag=f"job-{number}",
        day=f"{2024 + number // 336}-{number // 28 % 12 + 1:02}-{number % 28 + 1:02}",
        installer=dice.choice(CREW),
        platform=platform,
        car=car,
        year=dice.choice(platform.cars[car]),
        opening=opening,
        kits=draw_stack(dice, world, platform, opening),
        cut=dice.choice((UNCUT, UNCUT, *opening.cuts)),
        loom=dice.choice(("aside", "aside", "behind")),
        plugs_on=dice.random() < 0.75,
    )


def draw_stack(dice: Random, world: World, platform: Platform, opening: Opening) -> tuple[Kit, ...]:
    """Nothing, one kit, now and then two, and now and then something that nobody could describe."""
    kits = world.kits_for(platform.name, opening.place)
    way = dice.random()
    if way < 0.2:
        return ()
    if way < 0.9:
        return (dice.choice(kits),)
    if way < 0.96:
        return tuple(dice.sample(kits, min(2, len(kits))))
    return (draw_home_made(dice),)


def draw_home_made(dice: Random) -> Kit:
    """Another one every time, whatever it is called."""
    ninths = dice.choice((NINTHS, MIDDLE_ROW))
    return Kit(HOME_MADE, dice.randint(-100, 200) * TENTH, {"width": dice.randint(1700, 1900) * TENTH}, ninths, ())


def likely_units(job: Job, units: Sequence[Unit]) -> list[Unit]:
    """The units for which it is not plain from the start what will come of it."""
    return [unit for unit in units if min(meeting.spare for meeting in job.offered(unit)) > -25 * MM]
