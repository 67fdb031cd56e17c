"""What the speaker side of a made-up world consists of: holes with room behind and in front, rings, foams, speakers.

Lengths are whole nanometres and true; what records and notes say of them is written elsewhere, by people who know less.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

Car = tuple[tuple[str, str], ...]
Sizes = Mapping[str, int]
Tabs = Literal["in", "out"]
WAYS = ("long way", "short way")


@dataclass(frozen=True)
class Door:
    """One place for a speaker; `rooms` by the values of the axes that bear on it and what was cut.

    The sizes of a room: the hole's two ways, what is `fixed` behind it (met with the glass up), what is met with the
    glass fully `down` and at the `worst` point of its way, and what there is in `front`. The glass never leaves more
    room than what is fixed. A place without glass has neither of its two. `face` is what a speaker sits on.
    """

    place: str
    kind: str
    side: str
    other: str | None
    face: str
    bolts: tuple[int, int]
    cuts: tuple[str, ...]
    rooms: Mapping[tuple[Car, str], Sizes]

    @property
    def glass(self) -> bool:
        """Whether glass comes down behind it."""
        return any("worst" in room for room in self.rooms.values())

    def suits(self, speaker: "Speaker") -> bool:
        """Whether its flange covers the hole: what is round is not offered up to an oval one."""
        return self.round or speaker.sizes["basket"] != speaker.sizes["basket short"]

    @property
    def round(self) -> bool:
        """Whether its hole is round in every car."""
        return all(room["long way"] == room["short way"] for room in self.rooms.values())


@dataclass(frozen=True)
class Ring:
    """A mount for speakers: how far it holds one out, and its hole, the long way and the short, by where its tabs are.

    A hole without tabs stands under "in" and "out" alike. A ring leaves the car's hole as it is; anything else takes
    its place.
    """

    name: str
    held: int
    holes: Mapping[Tabs, tuple[int, int]]
    tabs: bool = False
    ring: bool = True
    says: Mapping[str, object] | None = None


@dataclass(frozen=True)
class Foam:
    """A gasket, and how far it truly holds a speaker out once it is screwed down."""

    name: str
    held: int
    says: Mapping[str, object] | None = None


@dataclass(frozen=True)
class Speaker:
    """A speaker: its basket both ways, how deep it is, how far it stands out at rest and further when it plays."""

    name: str
    sizes: Sizes
    says: Mapping[str, object] | None = None


@dataclass(frozen=True)
class Mounting:
    """How a speaker is held: rings nearest the car first, the foam under its flange, and where tabs are."""

    rings: tuple[Ring, ...] = ()
    foam: Foam | None = None
    tabs: Tabs = "in"

    @property
    def held(self) -> int:
        """How far it is held out."""
        return sum(ring.held for ring in self.rings) + (self.foam.held if self.foam else 0)

    @property
    def names(self) -> object:
        """The mounts as a note names them."""
        return [ring.name for ring in self.rings] or "none"

    @property
    def has_tabs(self) -> bool:
        """Whether it matters where tabs are."""
        return any(ring.tabs for ring in self.rings)
