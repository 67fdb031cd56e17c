"""A mount: what it takes, the hole it presents, and how far it moves the part in or out."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.record import AsWhole, ById, Many, Name, Named, Part, Text
from bezelbook.values.ident import Id
from bezelbook.values.measures import Length, Minutes, Offset, Size
from bezelbook.values.words import Ninth

Count = Annotated[int, Field(ge=0, le=99), AsWhole]


class For(Part):
    """An opening or location it was made for."""

    vehicle: Id = Field(description="Which vehicle.")
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


class Holes(Part):
    """Screw holes by state."""

    ready: Count | None = Field(default=None, description="Holes ready to use.")
    to_drill: Many[Text] = Field(default=(), description="Each hole to drill: where and what size.")
    unused: Count | None = Field(default=None, description="Holes to seal.")


class Mount(Named):
    """A kit, bracket, spacer ring or cup."""

    mount_kind: Literal["kit", "bracket", "spacer", "cup", "plate", "pocket", "rear support"] = Field(
        description="What sort of mount."
    )
    made_for: Many[For] = Field(default=(), description="The places it was made for.")
    handed: Literal["left", "right", "either"] | None = Field(default=None, description="Which side it goes on.")
    accepts: Name | None = Field(default=None, description="What it takes, by size class or basket.")
    presents: Presents = Field(default=Presents(), description="The hole it offers to the part.")
    proud: Offset | None = Field(
        default=None, description="How far it holds the part out: + proud, - recessed, or the word flush."
    )
    thickness: Size | None = Field(default=None, description="Thickness of a spacer.")
    tabs_in: Size | None = Field(default=None, description="Inner diameter with its tabs in.")
    tabs_out: Size | None = Field(default=None, description="Inner diameter with its tabs broken out.")
    holes: Holes = Field(default=Holes(), description="Screw holes.")
    material: Literal["plastic", "wood board", "dense plastic sheet", "metal"] | None = Field(
        default=None, description="What it is made of."
    )
    screws: Name | None = Field(default=None, description="Screws supplied: thread x length x count.")
    longest_screw: Length | None = Field(default=None, description="The longest screw it takes.")
    needs_too: Many[Id] = Field(default=(), description="Other mounts it cannot do without.")
    cannot_be_undone: Many[Text] = Field(default=(), description="Each step that cannot be taken back.")
    prep: Minutes | None = Field(default=None, description="Time on the bench before the car comes.")
