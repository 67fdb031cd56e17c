"""What is found where no room agrees with the strong notes of a place: which of them, about which size, and why."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.builds import Build
from bezelbook.values.quantity import Quantity

Why = Literal["ladder", "same thing", "face", "radius", "nominal", "tabs", "room"]
"""What explains a clash; `room` where no arithmetic and no ladder does."""

Path = tuple[str | int, ...]


@dataclass(frozen=True, slots=True)
class Explained:
    """Why a clash came about: the note that most likely slipped, the field in it, and what it may have meant."""

    why: Why
    note: str = ""
    path: Path = ()
    typed: str = ""
    meant: str = ""


@dataclass(frozen=True, slots=True)
class Core:
    """Notes of one place that cannot all be true, none of them to spare; `size` is what they are about.

    `builds` are the builds that all of them may be of.
    """

    notes: tuple[Tried | Measured, ...]
    size: str
    builds: tuple[Build, ...]
    explained: Explained


@dataclass(frozen=True, slots=True)
class Clash:
    """Every core of one place with the same state, size and reason: told once, the smallest first."""

    cores: tuple[Core, ...]

    @property
    def first(self) -> Core:
        """The smallest set of notes that cannot all be true."""
        return self.cores[0]

    @property
    def others(self) -> tuple[Tried | Measured, ...]:
        """The notes that clash in the same way and are not in the first set."""
        seen = {note.id for note in self.first.notes}
        found = {note.id: note for core in self.cores for note in core.notes if note.id not in seen}
        return tuple(found[name] for name in sorted(found))

    @property
    def state(self) -> str:
        """The builds it is about, in words."""
        return state_of(self.first.builds)


def state_of(builds: Iterable[Build]) -> str:
    """Builds in words that do not depend on the notes."""
    said = ["-".join(value for _, value in build) for build in builds]
    return "+".join(one for one in said if one) or "any build"


def gathered(cores: Iterable[Core]) -> tuple[Clash, ...]:
    """The cores by state, size and reason."""
    groups: dict[tuple[str, str, str], list[Core]] = {}
    for core in cores:
        groups.setdefault((core.explained.why, state_of(core.builds), core.size), []).append(core)
    return tuple(
        Clash(tuple(sorted(group, key=lambda core: (len(core.notes), [note.id for note in core.notes]))))
        for _, group in sorted(groups.items())
    )


def shared_builds(builds: Iterable[tuple[Build, ...]]) -> tuple[Build, ...]:
    """The builds that are in all of these; where none is, those of the first, since then a build is in dispute."""
    every = list(builds)
    return tuple(build for build in every[0] if all(build in others for others in every)) or every[0]


def near(one: Quantity, nanometres: int, give: int) -> bool:
    """Whether a quantity is that length, give or take its own ± or that of what it is compared with."""
    return abs(one.base - nanometres) <= (one.give or 0) + give
