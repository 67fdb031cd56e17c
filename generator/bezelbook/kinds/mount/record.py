"""A mount: what it takes, the hole it presents, and how far it moves the part in or out."""

from typing import Literal

from pydantic import Field

from bezelbook.kinds.pieces import HolePattern, Screws
from bezelbook.kinds.record import ById, Count, Many, Name, Named, Part, Text, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Length, Minutes, Offset, Size
from bezelbook.values.words import Ninth


class For(Part):
    """An opening or location it was made for."""

    vehicle: Id = Field(description="Which vehicle.", json_schema_extra=names("vehicle"))
    place: Id = Field(description="Which place in it.")
    splits: ById[Id] = Field(default={}, description="Which builds, where that matters.")


class Presents(Part):
    """The hole it offers to the part; a blank size is passed through from the opening."""

    width: Size | None = Field(default=None, description="Clear width for a body.")
    height: Size | None = Field(default=None, description="Clear height for a body.")
    nose_width: Size | None = Field(default=None, description="Clear width for the nose, where the front frames it.")
    nose_height: Size | None = Field(default=None, description="Clear height for the nose, where the front frames it.")
    ninths: Many[Ninth] = Field(
        default=(),
        description="The ninths of the opening that lie behind this hole, seen from the front; blank means all nine.",
    )


class Pattern(HolePattern):
    """Holes that belong together."""

    state: Literal["ready", "to drill", "unused"] = Field(
        description="Ready to use, still to be drilled, or of no use and to be sealed."
    )
    holds: Literal["the part", "the car", "another mount"] | None = Field(
        default=None, description="What is screwed to it there."
    )
    where: Name | None = Field(default=None, description="Where they are, in words.")


class Holes(Part):
    """Screw holes by state."""

    ready: Count | None = Field(default=None, description="Holes ready to use.")
    to_drill: Many[Text] = Field(default=(), description="Each hole to drill: where and what size.")
    unused: Count | None = Field(default=None, description="Holes to seal; left open they whistle.")
    patterns: Many[Pattern] = Field(default=(), description="The holes as patterns, where they were measured.")


class Mount(Named):
    """A kit, bracket, spacer ring or cup."""

    mount_kind: Literal["kit", "bracket", "spacer", "cup", "plate", "pocket", "rear support"] = Field(
        description="What sort of mount."
    )
    made_for: Many[For] = Field(default=(), description="The places it was made for.")
    handed: Literal["left", "right", "either"] | None = Field(default=None, description="Which side it goes on.")
    accepts: Name | None = Field(default=None, description="What it takes, by size class or basket.")
    basket: Size | None = Field(default=None, description="The largest speaker basket it takes: across, or long way.")
    basket_short: Size | None = Field(default=None, description="The short way, for an oval basket.")
    presents: Presents = Field(default=Presents(), description="The hole it offers to the part.")
    proud: Offset | None = Field(
        default=None, description="How far it holds the part out: + proud, - recessed, or the word flush."
    )
    thickness: Size | None = Field(default=None, description="Thickness of a spacer.")
    inner: Size | None = Field(default=None, description="Inner diameter, or the long way; for one without tabs.")
    inner_short: Size | None = Field(default=None, description="The short way of an oval hole.")
    outer: Size | None = Field(default=None, description="Outer diameter, or the long way.")
    outer_short: Size | None = Field(default=None, description="The short way of an oval outline.")
    tabs_in: Size | None = Field(default=None, description="Inner diameter with its tabs in.")
    tabs_out: Size | None = Field(default=None, description="Inner diameter with its tabs broken out.")
    holes: Holes = Field(default=Holes(), description="Screw holes.")
    material: Literal["plastic", "wood board", "dense plastic sheet", "metal"] | None = Field(
        default=None, description="What it is made of."
    )
    screws: Name | Many[Screws] | None = Field(
        default=None, description="Screws supplied: thread, length and count, or words such as M5 x 6 x 4."
    )
    longest_screw: Length | None = Field(default=None, description="The longest screw it takes.")
    needs_too: Many[Id] = Field(
        default=(), description="Other mounts it cannot do without.", json_schema_extra=names("mount")
    )
    cannot_be_undone: Many[Text] = Field(default=(), description="Each step that cannot be taken back.")
    prep: Minutes | None = Field(default=None, description="Time on the bench before the car comes.")
