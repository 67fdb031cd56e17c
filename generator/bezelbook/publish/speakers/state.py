"""Which ways of asking about a place for a speaker get their answers published: builds, mounts, tabs and glass."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import product

from bezelbook.publish.speakers.place import PlaceForSpeakers
from bezelbook.reasoning.builds import bearing_axes
from bezelbook.reasoning.speakers.cells import Glass
from bezelbook.reasoning.speakers.question import SpeakerQuestion, asked
from bezelbook.reasoning.speakers.stacks import Tabs
from bezelbook.values.quantity import Quantity

TABS: tuple[Tabs, ...] = ("in", "out")


@dataclass(frozen=True, slots=True)
class State:
    """What is said of the car and of how a speaker is fitted: `mounts` is None when any may do, tabs when open."""

    splits: tuple[tuple[str, str], ...] = ()
    mounts: tuple[str, ...] | None = None
    tabs: Tabs | None = None
    glass: Glass = "run"

    @property
    def key(self) -> str:
        """The state as one word, which the browser makes up as well: `build=late|ten-ring|out|up`."""
        splits = ",".join(f"{axis}={value}" for axis, value in self.splits)
        mounts = "" if self.mounts is None else "+".join(self.mounts) or "none"
        return f"{splits}|{mounts}|{self.tabs or ''}|{'up' if self.glass == 'up' else ''}"

    def question(
        self, place: PlaceForSpeakers, speaker: str | None, sizes: Mapping[str, Quantity] | None = None
    ) -> SpeakerQuestion:
        """The question about a speaker, or about typed sizes, in this state."""
        return SpeakerQuestion(
            place.vehicle,
            place.id,
            splits=dict(self.splits),
            mounts=self.mounts,
            tabs=self.tabs,
            glass=self.glass,
            speaker=speaker,
            sizes=sizes or {},
        )


def states_of(place: PlaceForSpeakers) -> tuple[State, ...]:
    """The states whose answers are published: each build and mount with tabs and glass where they matter.

    Where no note stands there is only the open question; with the glass up only what needs no mount, or any.
    """
    if not place.room.evidence.standing:
        return (State(),)
    return tuple(dict.fromkeys(_states(place)))


def _states(place: PlaceForSpeakers) -> Iterator[State]:
    frame = place.room.frame
    axes = bearing_axes(frame.vehicle, frame.place, "room")
    values = [(None, *frame.vehicle.splits[axis].values) for axis in axes]
    stacks = asked(place.room, SpeakerQuestion(place.vehicle, place.id)).stacks
    tabbed = [stack.mounts for stack in stacks if stack.has_tabs]
    for picked in product(*values):
        splits = tuple((axis, value) for axis, value in zip(axes, picked, strict=True) if value is not None)
        for mounts in (None, *(stack.mounts for stack in stacks)):
            state = State(splits, mounts)
            yield state
            if mounts in tabbed or (mounts is None and tabbed):
                yield from (replace(state, tabs=tabs) for tabs in TABS)
            if "glass" in frame.rears and not mounts:
                yield replace(state, glass="up")
