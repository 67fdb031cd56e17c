"""The state a note was made in: which car, which build, which mounts, what was cut, stowed, plugged or lowered."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.pieces import Circumstances
from bezelbook.kinds.record import AsWhole, Count, Name, Part, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Size
from bezelbook.values.words import Ninth

Reason = Literal["depth", "width", "height", "nose", "plug", "glass", "grille", "bolt", "circuit", "load", "other"]


class At(Part):
    """Where in which car."""

    vehicle: Id = Field(description="Which vehicle, by its file name.", json_schema_extra=names("vehicle"))
    place: Id = Field(description="Which place in it, by the vehicle's own list.")


class State(Circumstances, At):
    """Everything about the car and the way of fitting that a fit depends on. A blank means not looked."""


class Sizes(Part):
    """Sizes typed in a note for a thing that has no record."""

    width: Size | None = Field(default=None, description="Body, across.")
    height: Size | None = Field(default=None, description="Body, up and down.")
    depth: Size | None = Field(default=None, description="Body, without plug.")
    nose_width: Size | None = Field(default=None, description="Front that shows, across.")
    nose_height: Size | None = Field(default=None, description="Front that shows, up and down.")
    plug_and_bend: Size | None = Field(default=None, description="Back plate to the back of the plug and its bend.")
    plug_exit: Ninth | None = Field(default=None, description="Where the plug leaves, seen from the front.")
    mounting_depth: Size | None = Field(
        default=None, description="Of a speaker: from under its flange to the furthest back."
    )
    cut_out: Size | None = Field(default=None, description="Of a speaker: the hole it needs, across.")
    basket: Size | None = Field(default=None, description="Of a speaker: its basket, across.")
    basket_short: Size | None = Field(default=None, description="Of an oval speaker: the short way.")
    flange: Size | None = Field(default=None, description="Of a speaker: the flange that covers the hole.")
    magnet: Size | None = Field(default=None, description="Of a speaker: its magnet at the back.")
    front_height: Size | None = Field(
        default=None, description="Of a speaker: what stands out in front, from under its flange."
    )
    bolt_circle: Size | None = Field(default=None, description="Of a speaker: through the middles of its holes.")
    bolt_count: Count | None = Field(default=None, description="Of a speaker: how many holes.")


class Clips(Part):
    """Clips of one type handled in one job."""

    kind: Name = Field(description="Which clip.", json_schema_extra=names("supply", in_words=True))
    handled: Annotated[int, Field(ge=0, le=999), AsWhole] = Field(description="How many came out.")
    lost: Annotated[int, Field(ge=0, le=999), AsWhole] = Field(description="How many broke or flew.")
