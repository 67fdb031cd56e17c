"""What pieces of wiring are to a chain: plugs and bare leads, and what runs between them, circuit by circuit."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from bezelbook.values.words import CIRCUITS, Circuit, PlugSide

# Known: metered, or fitted. Said: a sheet, hearsay, or a car that may have been another build. Argued over: notes that
# cannot all be true.
State = Literal["known", "said", "argued over", "not looked", "not there"]
STATES: tuple[State, ...] = ("known", "said", "argued over", "not looked", "not there")
FED: frozenset[State] = frozenset({"known", "said", "argued over"})

# The radio is the source of speakers, of the turn-on of an amplifier and of the feed of an aerial; the car of all else.
SPEAKERS: tuple[Circuit, ...] = tuple(circuit for circuit in CIRCUITS if circuit[-1] in "+-")
FROM_RADIO: frozenset[Circuit] = frozenset({*SPEAKERS, "amplifier turn-on", "aerial feed"})
# A made-up one of these switches off what keeps people alive: only the car's own wire will do, or a module that reads
# it off the bus.
NEVER_MADE_UP: frozenset[Circuit] = frozenset({"park brake", "speed", "reverse"})

Point = tuple[str, str]  # an end of a piece by its letter; and which half of a cut circuit comes out there, or nothing


@dataclass(frozen=True, slots=True)
class Half:
    """One half of a pair of plugs."""

    connector: str
    side: PlugSide

    def mates(self, other: "Half") -> bool:
        """Whether the two go together: one shell with one key, and one half of each side."""
        return self.connector == other.connector and self.side != other.side


@dataclass(frozen=True, slots=True)
class Link:
    """A circuit's way between two points of a piece; not sure where nobody looked or a lead was never traced."""

    one: Point
    other: Point
    sure: bool = True


@dataclass(frozen=True, slots=True)
class Output:
    """A circuit that a module makes: the most it gives in microamp, and whether it is read off the car's own bus."""

    most: int | None = None
    true: bool = False


@dataclass(frozen=True)
class Piece:
    """An adapter or a module, as it is in one build of one car.

    `plugs` and `leads` are its ends; `makes` has the points at which it makes a circuit by itself; `sees` what the car
    has behind each of those plugs, as far as this piece is known to be right for that car; `wants` and `gives` are a
    module's. `requires` names pieces that it cannot do without. `standing` is 0 when it is proven there, 1 when it lies
    on the shelf, 2 when it would have to be ordered.
    """

    name: str
    plugs: Mapping[str, Half] = field(default_factory=dict)
    leads: frozenset[str] = frozenset()
    links: Mapping[Circuit, tuple[Link, ...]] = field(default_factory=dict)
    makes: Mapping[Circuit, tuple[Point, ...]] = field(default_factory=dict)
    sees: Mapping[str, Mapping[Circuit, State]] = field(default_factory=dict)
    wants: tuple[Circuit, ...] = ()
    gives: Mapping[Circuit, Output] = field(default_factory=dict)
    requires: frozenset[str] = frozenset()
    standing: int = 2

    def seen(self, end: str, circuit: Circuit) -> State:
        """What the car has on a circuit behind one of its plugs."""
        return self.sees.get(end, {}).get(circuit, "not looked")


# Feed: a circuit to what goes in. Through: a circuit that must go on between the car and a radio that stays. From
# radio, to car: the two halves of a circuit that an amplifier sits in. Tap: a circuit that is listened to and not
# opened.
NeedKind = Literal["feed", "through", "from radio", "to car", "tap"]


@dataclass(frozen=True, slots=True)
class Need:
    """A circuit that a job needs; without one that is not `must` it can be done, with something less."""

    circuit: Circuit
    kind: NeedKind = "feed"
    must: bool = True


@dataclass(frozen=True, slots=True)
class Site:
    """Where a chain begins and ends: the car's plugs, the plug of what goes in, and that of a radio that stays."""

    car: tuple[Half, ...]
    unit: Half | None = None
    radio: Half | None = None
