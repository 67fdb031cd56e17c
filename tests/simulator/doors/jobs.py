"""What happens at a door: a car comes, a speaker is offered up on some ring, the glass is run or not."""

from collections.abc import Sequence
from dataclasses import dataclass
from random import Random

from tests.simulator.box_world import MM, UNCUT, Car, Platform, World
from tests.simulator.doors.meeting import met
from tests.simulator.doors.world import Door, Foam, Mounting, Ring, Sizes, Speaker, Tabs
from tests.simulator.installers import CREW, Installer
from tests.simulator.meeting import Meeting

HOME_MADE = "something home made"
PUTTY = Foam("a bead of putty", 0)
TENTH = MM // 10
TABS: tuple[Tabs, Tabs] = ("in", "out")


@dataclass(frozen=True)
class DoorJob:
    """One car in the bay, and the way in which a speaker is offered up to one of its places."""

    tag: str
    day: str
    installer: Installer
    platform: Platform
    car: Car
    year: int
    door: Door
    mounting: Mounting
    cut: str
    run: bool

    @property
    def room(self) -> Sizes:
        """The room in this car, as it stands."""
        return self.platform.door_room(self.car, self.door.place, self.cut)

    def offered(self, speaker: Speaker) -> tuple[Meeting, ...]:
        """Everything that a speaker meets there, at rest."""
        return tuple(met(self.room, self.mounting, speaker.sizes, run=self.run))


def draw_door_job(dice: Random, world: World, number: int) -> DoorJob:
    """A job on some car, by somebody."""
    platform = dice.choice(world.platforms)
    door = dice.choice(platform.doors)
    car = dice.choice(tuple(platform.cars))
    return DoorJob(
        tag=f"job-{number}",
        day=f"{2024 + number // 336}-{number // 28 % 12 + 1:02}-{number % 28 + 1:02}",
        installer=dice.choice(CREW),
        platform=platform,
        car=car,
        year=dice.choice(platform.cars[car]),
        door=door,
        mounting=draw_mounting(dice, world),
        cut=dice.choice((UNCUT, UNCUT, *door.cuts)),
        run=door.glass and dice.random() < 0.7,
    )


def draw_mounting(dice: Random, world: World) -> Mounting:
    """Nothing, one ring or bracket, now and then two, and now and then something that nobody could describe."""
    way = dice.random()
    rings: tuple[Ring, ...] = ()
    if way < 0.65:
        rings = (dice.choice(world.rings),) if way >= 0.3 else ()
    elif way < 0.95:
        rings = tuple(dice.sample(world.rings, 2)) if way < 0.75 else (dice.choice(world.rings),)
    else:
        hole = dice.randint(1200, 1600) * TENTH
        rings = (Ring(HOME_MADE, dice.randint(-50, 200) * TENTH, dict.fromkeys(TABS, (hole, hole)), ring=False),)
    putty = Foam(PUTTY.name, dice.randint(5, 60) * TENTH)
    foam = dice.choice((None, None, None, *world.foams, *world.foams, putty if dice.random() < 0.1 else None))
    return Mounting(rings, foam, dice.choice(TABS))


def likely_speakers(job: DoorJob, speakers: Sequence[Speaker]) -> list[Speaker]:
    """The speakers for which it is not plain from the start what will come of it."""
    suited = [speaker for speaker in speakers if job.door.suits(speaker)]
    likely = [speaker for speaker in suited if min(meeting.spare for meeting in job.offered(speaker)) > -12 * MM]
    return likely or suited or list(speakers)
