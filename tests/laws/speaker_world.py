"""Places for speakers on two sides of a car, small enough that every room they may have can be tried out in turn.

All lengths are in whole coarse units; the book's records use 1 mm for one unit.
"""

from dataclasses import dataclass
from random import Random
from typing import Literal

from tests.laws.small_world import Size

Side = Literal["left", "right"]
Reason = Literal["depth", "glass", "grille", "width"]
Measure = Literal["cut-out", "long", "short", "fixed", "down", "worst", "front"]
SIDES: tuple[Side, ...] = ("left", "right")


@dataclass(frozen=True)
class Speaker:
    """A speaker; `short` is None for a round one, and a depth that is None was never measured."""

    name: str
    basket: Size
    short: Size | None
    depth: Size | None
    front: Size


@dataclass(frozen=True)
class Ring:
    """A ring, perhaps with a hole of its own that a basket has to go through too."""

    name: str
    thickness: Size
    inner: int | None


@dataclass(frozen=True)
class Tried:
    """A strong note that a speaker was offered up; None is a blank, and no ring is the empty word."""

    name: str
    side: Side
    speaker: str
    goes_in: bool
    ring: str | None
    glass: Literal["up", "down"] | None
    reason: Reason | None = None
    gap: Size | None = None


@dataclass(frozen=True)
class Reading:
    """One reading of the bare place."""

    name: str
    side: Side
    of: Measure
    reads: Size


@dataclass(frozen=True)
class Ask:
    """A question about a speaker by its record, on one side, with a ring or the empty word."""

    side: Side
    speaker: str
    ring: str


@dataclass(frozen=True)
class SpeakerWorld:
    """All of it."""

    speakers: tuple[Speaker, ...]
    rings: tuple[Ring, ...]
    notes: tuple[Tried | Reading, ...]
    asks: tuple[Ask, ...]

    def speaker(self, name: str) -> Speaker:
        """The speaker of this name."""
        return next(speaker for speaker in self.speakers if speaker.name == name)

    def ring(self, name: str) -> Ring:
        """The ring of this name; the empty word names one of no thickness."""
        return next((ring for ring in self.rings if ring.name == name), Ring("", Size(0), None))


def speaker_world_of(seed: int) -> SpeakerWorld:
    """The world that belongs to a seed, always the same one."""
    dice = Random(seed)  # noqa: S311 - made-up worlds need no cryptography
    speakers = tuple(_speaker(dice, f"speaker-{number}") for number in range(dice.randint(2, 3)))
    rings = (Ring("thin-ring", Size(1), None), Ring("other-ring", Size(2), dice.choice((None, 2, 3))))
    empty = SpeakerWorld(speakers, rings, (), ())
    notes = tuple(
        _tried(dice, empty, f"n{number}") if dice.random() < 0.6 else _reading(dice, f"n{number}")
        for number in range(dice.randint(1, 6))
    )
    asks = tuple(
        Ask(dice.choice(SIDES), dice.choice(speakers).name, dice.choice(("", "", rings[0].name, rings[1].name)))
        for _ in range(4)
    )
    return SpeakerWorld(speakers, rings, notes, asks)


def _speaker(dice: Random, name: str) -> Speaker:
    """At most one size with a ±, and of the first speaker only, so that trying out stays short."""
    rough = dice.choice((None, "basket", "depth", "front")) if name == "speaker-0" else None
    basket = Size(dice.randint(1, 4), int(rough == "basket"))
    short = Size(dice.randint(1, basket.middle)) if dice.random() < 0.25 and rough != "basket" else None
    depth = None if dice.random() < 0.05 else Size(dice.randint(1, 4), int(rough == "depth"))
    return Speaker(name, basket, short, depth, Size(dice.randint(0, 3), int(rough == "front")))


def _tried(dice: Random, world: SpeakerWorld, name: str) -> Tried:
    goes_in = dice.random() < 0.5
    speaker = dice.choice(world.speakers)
    ring = dice.choice(("", "", world.rings[0].name, world.rings[1].name, None))
    glass: Literal["up", "down"] | None = dice.choice(("up", "down", "down", None))
    reasons: tuple[Reason | None, ...] = (None, "depth", "glass", "glass", "grille", "width")
    reason = None if goes_in else dice.choice(reasons)
    note = Tried(name, dice.choice(SIDES), speaker.name, goes_in, ring, glass, reason)
    exact = speaker.depth is not None and not speaker.depth.give and not speaker.front.give
    if not exact or dice.random() < 0.8:
        return note
    gap_reason: Reason = dice.choice(("glass", "grille"))
    gap = Size(dice.randint(1, 2), dice.choice((0, 1)))
    return Tried(name, note.side, speaker.name, goes_in, ring, glass, gap_reason, gap)


def _reading(dice: Random, name: str) -> Reading:
    measures: tuple[Measure, ...] = ("cut-out", "long", "short", "fixed", "down", "down", "worst", "front", "front")
    return Reading(name, dice.choice(SIDES), dice.choice(measures), Size(dice.randint(0, 5), dice.choice((0, 1, 1))))
