"""What is seen and ruled round a dash opening: what holds the radio, where a loom can go, which controls are near."""

from typing import Literal

from pydantic import Field

from bezelbook.kinds.pieces import Presence
from bezelbook.kinds.record import Many, Name, Part
from bezelbook.values.measures import Offset, Reading
from bezelbook.values.words import Edge, Ninth


class LoomPocket(Part):
    """Room beside or below the box for its loom."""

    where: Many[Ninth] = Field(default=(), description="Behind which ninths of the opening, seen from the front.")
    room: Literal["enough", "tight", "none"] = Field(description="Whether a loom goes in.")


class Control(Part):
    """The outline of a control near the opening, for a screen that stands off the dash."""

    what: Name = Field(description="Which control: hazard switch, vent, climate knob.")
    beyond: Edge = Field(description="Beyond which edge of the opening it lies.")
    near: Reading = Field(description="From that edge to the near side of the control.")
    far: Reading | None = Field(default=None, description="From that edge to its far side.")
    starts: Offset | None = Field(
        default=None,
        description="Where it starts along that edge: from the opening's left end, or from its top; - when before it.",
    )
    ends: Offset | None = Field(default=None, description="Where it ends along that edge, from the same corner.")
    stands_out: Reading | None = Field(default=None, description="How far it stands out of the dash.")


class OpeningSeen(Part):
    """What a look into a dash opening tells."""

    held_by: Many[Literal["screws", "ears", "slide", "clips", "sleeve"]] = Field(
        default=(), description="What holds the factory unit."
    )
    rear_support: Presence | None = Field(default=None, description="Whether there is something to hold its back up.")
    rear_stud: Name | None = Field(default=None, description="The stud that goes into it, such as M5.")
    loom_pocket: LoomPocket | None = Field(default=None, description="Room for the loom beside or below the box.")
