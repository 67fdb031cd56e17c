"""A head unit as it lies on the bench: its sizes, where its plug leaves, what it needs."""

from typing import Literal

from pydantic import Field

from bezelbook.kinds.record import Count, Many, Name, Named, Part, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Angle, Current, Length, Mass, Offset, Power, Resistance, Size, Voltage
from bezelbook.values.words import Circuit, Ninth

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


class OtherPlug(Part):
    """A plug beside the main one."""

    what: Name = Field(description="Which plug: aerial, phono, USB, video, microphone.")
    exit: Ninth | None = Field(default=None, description="Where it leaves, seen from the front.")
    plug_and_bend: Size | None = Field(
        default=None, description="From the back plate to the back of the plug and its bent lead."
    )


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
    plug_face: Literal["back", "top", "bottom", "left", "right"] | None = Field(
        default=None, description="Which face the main plug is in; nearly always the back."
    )
    right_angle_plug: Size | None = Field(
        default=None, description="The same with a right-angle plug, where there is one."
    )
    other_plugs: Many[OtherPlug] = Field(default=(), description="Plugs beside the main one.")
    screen: Screen | None = Field(default=None, description="Only for a screen that stands off the dash.")
    sleeve: Size | None = Field(default=None, description="How thick the sheet of its sleeve is, where it sits in one.")
    rear_stud: Name | None = Field(default=None, description="The stud at its back, such as M5.")
    goes_with: Many[Id] = Field(
        default=(),
        description="The other piece of a radio in two pieces, by file name.",
        json_schema_extra=names("head_unit"),
    )
    cable: Length | None = Field(
        default=None, description="How long the cable is between the two pieces of a radio in two."
    )
    mass: Mass | None = Field(default=None, description="On the scale.")
    side_screw: SideScrew | None = Field(default=None, description="Side screws.")
    pre_outs: Count | None = Field(default=None, description="How many line-level outputs.")
    pre_out_level: Voltage | None = Field(default=None, description="Their level.")
    power_per_channel: Power | None = Field(default=None, description="Continuous, not peak.")
    least_load: Resistance | None = Field(default=None, description="The lowest speaker load it may drive.")
    most_current: Current | None = Field(default=None, description="The most it draws.")
    fuse: Current | None = Field(default=None, description="The fuse on it.")
    needs: Many[Circuit] = Field(default=(), description="The circuits and signals it wants.")
    own_plug: Name | None = Field(
        default=None,
        description="The plug on it: a connector's file name, or the shop's words.",
        json_schema_extra=names("connector", in_words=True),
    )
