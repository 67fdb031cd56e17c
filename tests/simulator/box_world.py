"""What a made-up world consists of: cars, openings made of nine boxes, kits, units and a shop, all with true measures.

Lengths are whole nanometres. Nothing here comes from the tool: what a record or a note says of these things is written
elsewhere, by people who know less.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from tests.simulator.doors.world import Door, Foam, Ring, Speaker
from tests.simulator.doors.world import Sizes as DoorRoom

MM = 1_000_000
NINTHS = (
    "upper-left",
    "upper",
    "upper-right",
    "left",
    "centre",
    "right",
    "lower-left",
    "lower",
    "lower-right",
)
UNCUT = "nothing"
FRONT = ("width", "height", "nose width", "nose height")

Told = Literal["as it is", "between two years", "no matter of room", "nothing"]
Car = tuple[tuple[str, str], ...]
Sizes = Mapping[str, int]


@dataclass(frozen=True)
class Axis:
    """A way in which cars of a platform differ; `years` are all model years in which each value was built.

    A car's openings differ with it only where it `bears`: at these places, all of them when it names none. What the
    book was told of it may be less: that it changed between two years, that it is no matter of room, or nothing.
    """

    name: str
    values: tuple[str, ...]
    years: Mapping[str, tuple[int, ...]]
    places: tuple[str, ...] = ()
    subjects: tuple[str, ...] = ()
    told: Told = "as it is"

    def bears(self, place: str) -> bool:
        """Whether a place's room may differ with it."""
        return (not self.places or place in self.places) and (not self.subjects or "room" in self.subjects)


@dataclass(frozen=True)
class Room:
    """The bare opening in one state: its clear sizes by name, and the depth of each ninth from the sub-dash face."""

    sizes: Sizes
    depths: Sizes


@dataclass(frozen=True)
class Opening:
    """One place; `rooms` by the values of the axes that bear on it, what was cut, and where the loom lies."""

    place: str
    bezel: bool
    cuts: tuple[str, ...]
    rooms: Mapping[tuple[Car, str, str], Room]
    thing_hit: Mapping[str, str]


@dataclass(frozen=True)
class Platform:
    """A vehicle with every car of it that was built, each with the model years it was built in."""

    name: str
    years: int
    axes: tuple[Axis, ...]
    never: tuple[Car, ...]
    cars: Mapping[Car, tuple[int, ...]]
    openings: tuple[Opening, ...]
    doors: tuple[Door, ...] = ()

    @property
    def told(self) -> tuple[Axis, ...]:
        """The ways to differ that the book knows of."""
        return tuple(axis for axis in self.axes if axis.told != "nothing")

    def splits(self, car: Car) -> dict[str, str]:
        """What a note may say of a car: its values on the axes that the book knows of."""
        return {axis.name: dict(car)[axis.name] for axis in self.told}

    def opening(self, place: str) -> Opening:
        """The opening of this name."""
        return next(opening for opening in self.openings if opening.place == place)

    def room(self, car: Car, place: str, cut: str, loom: str) -> Room:
        """The room of one car in one state."""
        return self.opening(place).rooms[self._build(car, place), cut, loom]

    def door(self, place: str) -> Door:
        """The place for a speaker of this name."""
        return next(door for door in self.doors if door.place == place)

    def door_room(self, car: Car, place: str, cut: str) -> DoorRoom:
        """The room for a speaker of one car in one state."""
        return self.door(place).rooms[self._build(car, place), cut]

    def _build(self, car: Car, place: str) -> Car:
        bearing = {axis.name for axis in self.axes if axis.bears(place)}
        return tuple(pair for pair in car if pair[0] in bearing)


@dataclass(frozen=True)
class Kit:
    """A mount: the sizes that it frames, how far it holds things out, and which ninths lie behind its hole."""

    name: str
    offset: int
    holes: Sizes
    ninths: tuple[str, ...]
    made_for: tuple[tuple[str, str, Car], ...]
    says: Mapping[str, object] = field(default_factory=dict)


@dataclass(frozen=True)
class Unit:
    """A thing to fit: its sizes by name (the rear is what stands out behind the body), and where its plug leaves."""

    name: str
    sizes: Sizes
    exit: str
    says: Mapping[str, object] | None = None


@dataclass(frozen=True)
class Shop:
    """How far the shop trusts each tool, and the room it likes to leave."""

    tools: Sizes
    clearances: Sizes


@dataclass(frozen=True)
class World:
    """All of it."""

    shop: Shop
    platforms: tuple[Platform, ...]
    kits: tuple[Kit, ...]
    units: tuple[Unit, ...]
    rings: tuple[Ring, ...] = ()
    foams: tuple[Foam, ...] = ()
    speakers: tuple[Speaker, ...] = ()

    def platform(self, name: str) -> Platform:
        """The platform of this name."""
        return next(platform for platform in self.platforms if platform.name == name)

    def kits_for(self, platform: str, place: str) -> tuple[Kit, ...]:
        """The kits that somebody might reach for at this place: made for it, or made for none in particular."""
        return tuple(
            kit
            for kit in self.kits
            if not kit.made_for or any((platform, place) == (use[0], use[1]) for use in kit.made_for)
        )
