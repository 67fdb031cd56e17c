"""A place, a few mounts, parts and notes, small enough that every room it may have can be tried out in turn.

All lengths are in whole coarse units; the book's records use 1 mm for one unit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, get_args

from bezelbook.values.words import Ninth

Verdict = Literal["goes in", "does not"]
Front = Literal["width", "height"]
Measure = Literal["depth", "width", "height"]
Reason = Literal["depth", "width", "height", "plug"]
FRONTS: tuple[Front, ...] = get_args(Front)
RIB = "one rib"


@dataclass(frozen=True)
class Size:
    """A length whose true value differs from `middle` by less than `give`, or not at all when `give` is 0."""

    middle: int
    give: int = 0


@dataclass(frozen=True)
class Part:
    """A thing with a record; a size that is None was never measured, an exit that is None was never looked at."""

    name: str
    width: Size | None
    height: Size | None
    depth: Size | None
    bend: Size | None
    exit: Ninth | None

    @property
    def sizes(self) -> dict[str, Size | None]:
        """The sizes by name."""
        return {"width": self.width, "height": self.height, "depth": self.depth, "bend": self.bend}

    def resized(self, sizes: Mapping[str, Size | None]) -> "Part":
        """The same part with some other sizes."""
        known = self.sizes | dict(sizes)
        return Part(self.name, known["width"], known["height"], known["depth"], known["bend"], self.exit)


@dataclass(frozen=True)
class Kit:
    """A mount with an offset, and perhaps a hole of its own, or one side of it."""

    name: str
    proud: Size = Size(0)
    width: Size | None = None
    height: Size | None = None

    @property
    def holes(self) -> dict[Front, Size]:
        """The sizes that it frames."""
        sides: dict[Front, Size | None] = {"width": self.width, "height": self.height}
        return {size: hole for size, hole in sides.items() if hole is not None}


@dataclass(frozen=True)
class Tried:
    """A strong note that something was offered up; None is a blank."""

    name: str
    part: str
    verdict: Verdict
    fitted: bool
    kit: str | None
    build: str | None
    cut: str | None
    loom: str | None
    plugs: str | None
    reason: Reason | None = None
    where: tuple[Ninth, ...] = ()
    gap: Size | None = None


@dataclass(frozen=True)
class Reading:
    """One reading of the bare opening, or of the room seen through a kit; None is a blank."""

    name: str
    of: Measure
    reads: Size
    zones: tuple[Ninth, ...]
    build: str | None
    cut: str | None
    loom: str | None
    kit: str | None = None


@dataclass(frozen=True)
class Ask:
    """A question about a part: its record, or its sizes as typed, or its record with another depth.

    Without a kit it is about every kit that a note was made with.
    """

    part: str
    kit: str | None
    build: str | None
    cut: str
    loom: str
    plugs: str
    typed: bool = False
    depth: Size | None = None


@dataclass(frozen=True)
class World:
    """All of it. `front` are the sizes of the bare opening that are in play; `ninths` are those behind each kit."""

    ninths: tuple[Ninth, ...]
    front: tuple[Front, ...]
    builds: tuple[str, ...]
    cuts: tuple[str, ...]
    looms: tuple[str, ...]
    kits: tuple[Kit, ...]
    parts: tuple[Part, ...]
    notes: tuple[Tried | Reading, ...]
    asks: tuple[Ask, ...]

    @property
    def settled_by_grid(self) -> bool:
        """Whether trying out a grid tells everything: an offset with a ± is one number in several rooms."""
        return not any(kit.proud.give for kit in self.kits)

    def part(self, name: str) -> Part:
        """The part of this name."""
        return next(part for part in self.parts if part.name == name)

    def kits_of(self, ask: Ask) -> tuple[str, ...]:
        """The kits that a question is about."""
        seen = {note.kit for note in self.notes if isinstance(note, Tried) and note.kit}
        return (ask.kit,) if ask.kit else tuple(sorted(seen))

    def kit(self, name: str) -> Kit:
        """The kit of this name."""
        return next(kit for kit in self.kits if kit.name == name)
