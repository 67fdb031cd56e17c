"""The state a note was made in: which build, which mounts, and what was cut, stowed, plugged or lowered."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.record import AsWhole, ById, Many, Name, Part
from bezelbook.values.ident import Id
from bezelbook.values.measures import Length, Size
from bezelbook.values.words import Ninth

Year = Annotated[int, Field(ge=1, le=40), AsWhole]
Reason = Literal["depth", "width", "height", "nose", "plug", "glass", "grille", "bolt", "circuit", "load", "other"]


class State(Part):
    """Everything about the car and the way of fitting that a fit depends on. A blank means not looked."""

    vehicle: Id = Field(description="Which vehicle, by its file name.")
    place: Id = Field(description="Which place in it, by the vehicle's own list.")
    year: Year | None = Field(default=None, description="Model year, counted within the generation.")
    splits: ById[Id] = Field(default={}, description="Which build this car is, split by split.")
    mounts: Literal["none"] | Many[Name] | None = Field(
        default=None, description="The mounts used, nearest the car first; the word none when there was none."
    )
    plugs: Literal["on", "off"] | None = Field(
        default=None, description="Whether the plugs were on when it was offered up."
    )
    loom: Literal["behind", "aside"] | None = Field(default=None, description="Where the loom went.")
    glass: Literal["up", "down"] | None = Field(default=None, description="Where the glass was.")
    tabs: Literal["in", "out"] | None = Field(
        default=None, description="Whether the mount's tabs were in or broken out."
    )
    cut: Name | None = Field(
        default=None, description="What was cut, drilled or moved to make room; the word nothing when nothing was."
    )


class Sizes(Part):
    """Sizes typed in a note for a thing that has no record."""

    width: Size | None = Field(default=None, description="Body, across.")
    height: Size | None = Field(default=None, description="Body, up and down.")
    depth: Size | None = Field(default=None, description="Body, without plug.")
    nose_width: Size | None = Field(default=None, description="Front that shows, across.")
    nose_height: Size | None = Field(default=None, description="Front that shows, up and down.")
    plug_and_bend: Size | None = Field(default=None, description="Back plate to the back of the plug and its bend.")
    plug_exit: Ninth | None = Field(default=None, description="Where the plug leaves, seen from the front.")


class Clips(Part):
    """Clips of one type handled in one job."""

    kind: Name = Field(description="Which clip.")
    handled: Annotated[int, Field(ge=0, le=999), AsWhole] = Field(description="How many came out.")
    lost: Annotated[int, Field(ge=0, le=999), AsWhole] = Field(description="How many broke or flew.")


class ScrewUse(Part):
    """A screw used, by length."""

    length: Length = Field(description="How long.")
    where: Name = Field(description="Where it goes.")
