"""A question as somebody puts it: which place of which vehicle, in which state, and what thing or which sizes."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any, Literal

from bezelbook.kinds.mount.record import For, Mount
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build, bearing_axes, known_splits, matching
from bezelbook.reasoning.cells import Frame, Loom, Setting
from bezelbook.reasoning.evidence import UNCUT, Evidence
from bezelbook.reasoning.mounting import BARE, Stack, stack_of
from bezelbook.reasoning.needs import Need, Needs, needs_of_sizes, needs_of_unit
from bezelbook.values.quantity import Quantity
from bezelbook.values.words import Ninth


@dataclass(frozen=True)
class Question:
    """What was asked. A blank mount means any that the book knows for the place; the rest is how a job is usually done.

    The usual way is: nothing cut, loom aside, plugs on. Sizes are lengths as typed.
    """

    vehicle: str
    place: str
    splits: Mapping[str, str] = field(default_factory=dict)
    year: int | None = None
    mounts: tuple[str, ...] | None = None
    cut: str = UNCUT
    loom: Loom = "aside"
    plugs: Literal["on", "off"] = "on"
    unit: str | None = None
    sizes: Mapping[Need, Quantity] = field(default_factory=dict)
    exit: Ninth | None = None


@dataclass(frozen=True)
class Asked:
    """A question in the book's own terms: the needs, and every setting that it leaves open."""

    needs: Needs
    known: Mapping[str, str]
    builds: tuple[Build, ...]
    stacks: tuple[Stack, ...]
    cut: str
    loom: Loom
    plugs_on: bool

    @property
    def settings(self) -> tuple[Setting, ...]:
        """Every build and every mounting that the question leaves open."""
        return tuple(
            Setting(build, stack, self.cut, self.loom, self.plugs_on) for build in self.builds for stack in self.stacks
        )

    def narrowed(self, **changes: Any) -> "Asked":
        """The same question with something filled in."""
        return replace(self, **changes)


def asked(frame: Frame, evidence: Evidence, question: Question) -> Asked:
    """Put a question in the book's own terms. Its vehicle, place, unit and splits must be in the book."""
    known = known_splits(frame.vehicle, question.splits, question.year)
    cars = matching(frame.builds, known) or frame.builds
    said = question.mounts
    stacks = usual_stacks(frame, evidence, cars) if said is None else (stack_of(frame.book, said),)
    return Asked(
        needs_asked(frame.book, question), known, cars, stacks, question.cut, question.loom, question.plugs == "on"
    )


def needs_asked(book: KnowledgeBase, question: Question) -> Needs:
    """The needs of the thing asked about; sizes typed beside a unit replace that unit's own."""
    unit = needs_of_unit(book, book.head_units[question.unit]) if question.unit else None
    if unit is not None and not question.sizes:
        return unit
    return needs_of_sizes(question.sizes, question.exit, unit)


def usual_stacks(frame: Frame, evidence: Evidence, cars: tuple[Build, ...]) -> tuple[Stack, ...]:
    """The mountings that the book knows for a place in these builds: seen in a standing note or made for it; else bare.

    A mount that was made for other builds of this place is no way to fit anything in these.
    """
    seen = [one.stack for one in evidence.standing if one.stack is not None and one.says != "reading"]
    made = [stack_of(frame.book, (mount.id,)) for mount in frame.book.mounts.values() if _uses(frame, mount)]
    fitting = (stack for stack in [*seen, *made] if not stack.strange and _made_for_any(frame, stack, cars))
    by_key = {stack.key: stack for stack in fitting}
    return tuple(by_key[key] for key in sorted(by_key)) or (BARE,)


def _uses(frame: Frame, mount: Mount) -> list[For]:
    """What a mount says of this place: for which builds of it it was made."""
    return [use for use in mount.made_for if (use.vehicle, use.place) == (frame.vehicle.id, frame.place)]


def _made_for_any(frame: Frame, stack: Stack, cars: tuple[Build, ...]) -> bool:
    """Whether no mount of a stack was made for this place in other builds only."""
    said = (_uses(frame, frame.book.mounts[key]) for key in stack.key)
    return all(not uses or any(matching(cars, use.splits) for use in uses) for uses in said)


def open_axes(vehicle: Vehicle, place: str, cars: tuple[Build, ...]) -> tuple[str, ...]:
    """The splits that bear on the room at a place and are still open among these builds."""
    axes = bearing_axes(vehicle, place, "room")
    return tuple(axis for axis in axes if len({dict(build)[axis] for build in cars}) > 1)
