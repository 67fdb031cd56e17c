"""A head unit as it lies on the bench: its sizes, where its plug leaves, what it needs."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.record import AsWhole, Many, Name, Named, Part
from bezelbook.values.measures import Angle, Current, Length, Mass, Offset, Power, Resistance, Size, Voltage
from bezelbook.values.words import Ninth

SizeClass = Literal[
    "single",
    "one and a half",
    "double",
    "wide double",
    "two-piece display",
    "two-piece box",
    "floating screen",
    "round",
    "shaped",
]
Count = Annotated[int, Field(ge=0, le=99), AsWhole]


class SideScrew(Part):
    """The screws in the side of the body."""

    thread: Name = Field(description="Thread, such as M5 or 10-32.")
    longest: Length = Field(description="The longest that may be used; a longer one damages what is inside.")


class Screen(Part):
    """A screen that stands off the dash, and how far it can be moved."""

    width: Size = Field(description="Outline, across.")
    height: Size = Field(description="Outline, up and down.")
    offset_least: Offset | None = Field(default=None, description="Nearest it can sit to the dash.")
    offset_most: Offset | None = Field(default=None, description="Furthest it can stand off the dash.")
    height_down: Length | None = Field(default=None, description="How far it can be set below the middle.")
    height_up: Length | None = Field(default=None, description="How far it can be set above the middle.")
    tilt_least: Angle | None = Field(default=None, description="Least tilt.")
    tilt_most: Angle | None = Field(default=None, description="Most tilt.")


class HeadUnit(Named):
    """A radio, screen or box, by shop nickname. Each size says caliper or printed."""

    size_class: SizeClass = Field(description="The size class people ask for it by.")
    body_width: Size | None = Field(default=None, description="Body, across, behind the nose.")
    body_height: Size | None = Field(default=None, description="Body, up and down, behind the nose.")
    body_depth: Size | None = Field(
        default=None, description="Body from its seat to the back plate, plug and studs not counted."
    )
    nose_width: Size | None = Field(default=None, description="Front that shows, across.")
    nose_height: Size | None = Field(default=None, description="Front that shows, up and down.")
    nose_protrusion: Size | None = Field(default=None, description="How far the nose stands out of its seat.")
    rear_protrusion: Size | None = Field(
        default=None, description="Stud, fins or fuse behind the back plate; blank when there is none."
    )
    plug_exit: Ninth | None = Field(default=None, description="Where the main plug leaves, seen from the front.")
    plug_and_bend: Size | None = Field(
        default=None, description="From the back plate to the back of the plug and its bent loom."
    )
    screen: Screen | None = Field(default=None, description="Only for a screen that stands off the dash.")
    mass: Mass | None = Field(default=None, description="On the scale.")
    side_screw: SideScrew | None = Field(default=None, description="Side screws.")
    pre_outs: Count | None = Field(default=None, description="How many line-level outputs.")
    pre_out_level: Voltage | None = Field(default=None, description="Their level.")
    power_per_channel: Power | None = Field(default=None, description="Continuous, not peak.")
    least_load: Resistance | None = Field(default=None, description="The lowest speaker load it may drive.")
    most_current: Current | None = Field(default=None, description="The most it draws.")
    fuse: Current | None = Field(default=None, description="The fuse on it.")
    needs: Many[
        Literal[
            "constant",
            "accessory",
            "illumination",
            "park brake",
            "reverse",
            "speed",
            "wheel buttons",
            "camera supply",
            "amplifier turn-on",
            "aerial feed",
            "microphone",
            "USB",
        ]
    ] = Field(default=(), description="The circuits and signals it wants.")
    own_plug: Name | None = Field(default=None, description="The plug on it, by the shop's name.")
