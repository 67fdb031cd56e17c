"""Which ways of asking about an opening get their answers published: every build as far as known, every usual mount."""

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import product

from bezelbook.reasoning.builds import bearing_axes
from bezelbook.reasoning.question import usual_stacks
from bezelbook.reasoning.room import Place


@dataclass(frozen=True, slots=True)
class Choice:
    """What is said of the car and of the mounts: splits left out are not known, `mounts` is None when any may do."""

    splits: tuple[tuple[str, str], ...]
    mounts: tuple[str, ...] | None

    @property
    def known(self) -> Mapping[str, str]:
        """The splits that are said, each with its value."""
        return dict(self.splits)

    @property
    def key(self) -> str:
        """The choice as one word, which the browser makes up as well: `build=late,audio=base|flush-kit`."""
        mounts = "" if self.mounts is None else "+".join(self.mounts) or "none"
        return f"{','.join(f'{axis}={value}' for axis, value in self.splits)}|{mounts}"


def choices_of(place: Place) -> tuple[Choice, ...]:
    """Every choice at a place, the open one first; only splits that bear on its room make a difference."""
    frame = place.frame
    axes = bearing_axes(frame.vehicle, frame.place, "room")
    values = [(None, *frame.vehicle.splits[axis].values) for axis in axes]
    mounts = (None, *(stack.key for stack in usual_stacks(frame, place.evidence, frame.builds)))
    said = (zip(axes, picked, strict=True) for picked in product(*values))
    splits = [tuple((axis, value) for axis, value in pairs if value is not None) for pairs in said]
    return tuple(Choice(known, mount) for known in splits for mount in mounts)
