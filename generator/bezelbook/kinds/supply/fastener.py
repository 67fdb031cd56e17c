"""What sorts of fastener there are, and what can be measured on one."""

from typing import Literal

from pydantic import Field

from bezelbook.kinds.record import Name, Part
from bezelbook.values.measures import Length, Size

FastenerKind = Literal[
    "machine screw",
    "self-tapping screw",
    "thread-forming screw",
    "bolt",
    "nut",
    "expanding nut",
    "clip nut",
    "rivet nut",
    "fir-tree clip",
    "W-base clip",
    "metal claw",
    "push rivet",
    "quarter-turn",
    "ball stud",
    "slide stud",
    "hook tab",
    "tethered pillar clip",
]


class Grip(Part):
    """How a fastener holds. Which piece has how many of them was counted on a car, so it is a note."""

    head: Size | None = Field(default=None, description="Diameter of the head.")
    neck: Size | None = Field(default=None, description="Diameter of the neck, where the panel's slot holds it.")
    shank: Size | None = Field(default=None, description="Diameter of the part that goes into the body.")
    hole: Size | None = Field(default=None, description="Diameter of the hole it goes into.")
    length: Length | None = Field(default=None, description="Length below the head.")
    grip: Size | None = Field(default=None, description="How thick the things are that it holds together.")
    thread: Name | None = Field(default=None, description="Thread or size, such as M5 or 4.2.")
    drive: Name | None = Field(
        default=None,
        description="What turns it.",
        examples=["7 mm hex", "8 mm hex", "10 mm hex", "six-lobe 20", "security six-lobe 20", "cross 2"],
    )
    colour: Name | None = Field(default=None, description="Its colour. A hint: two clips can share one.")
    tether: Literal["tethered", "free"] | None = Field(
        default=None, description="Whether a strap keeps it from flying when a bag fires."
    )
    stays: Literal["on the panel", "in the body"] | None = Field(
        default=None, description="Where it stays when the panel is pulled."
    )
    first_in: Name | None = Field(default=None, description="Which end goes in first, where that matters.")
