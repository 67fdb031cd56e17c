"""A connector: the shape of its shell, how its cavities are counted, and what keeps it out of the wrong hole."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.pieces import InAWord
from bezelbook.kinds.record import AsWhole, Count, Many, Name, Named, Part, Text, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Size
from bezelbook.values.words import Edge, PlugSide, PlugView, Unknown

Cavities = Annotated[int, Field(ge=1, le=200), AsWhole]


class Terminals(Part):
    """The metal in the cavities."""

    kind: Literal["pins", "blades", "receptacles"] | None = Field(
        default=None, description="Of the half that this record is of. A receptacle takes a pin or a blade."
    )
    width: Size | None = Field(default=None, description="Width of a pin or blade; for a receptacle, of what it takes.")
    pitch: Size | None = Field(default=None, description="From the middle of a cavity to the middle of the next.")
    row_pitch: Size | None = Field(default=None, description="From row to row, where that differs.")


class Key(Part):
    """What keeps it out of a hole of the same shape."""

    kind: Literal["rib", "slot", "blocked corner", "offset key", "key letter", "key colour"] = Field(
        description="What sort of key."
    )
    side: Edge | None = Field(default=None, description="On which side, with cavity 1 where the numbering puts it.")
    reads: Name | None = Field(default=None, description="Its letter or colour, or how far off the middle it is.")


class Latch(Part):
    """What holds it in."""

    kind: Literal["thumb latch", "side squeeze", "lever", "slide lock"] = Field(description="What sort of latch.")
    side: Edge | None = Field(default=None, description="On which side, with cavity 1 where the numbering puts it.")


class Numbering(Part):
    """How its cavities are counted. Without the view a table of them cannot be told from its mirror image."""

    corner: Literal["upper-left", "upper-right", "lower-left", "lower-right"] = Field(
        description="Where cavity 1 is, with the latch or key on the side that this record says."
    )
    view: PlugView = Field(description="Looking at the face that mates, or at the side the wires go in.")
    direction: Literal["row by row", "column by column", "rows there and back", "columns there and back"] = Field(
        description="How the count goes on from 1: along each row in turn or down each column, and whether it turns."
    )


class LooksLike(Part):
    """Another one that is easily taken for it."""

    connector: Id = Field(description="Which one.", json_schema_extra=names("connector"))
    difference: Text = Field(description="The one line that tells them apart.")


class Connector(Named):
    """A connector as it lies in the hand. What its cavities carry is seen car by car, so it stands in notes."""

    shell: Literal["long", "two-row block", "square", "stepped", "T", "round", "D", "coaxial", "optical", "other"] = (
        Field(description="The shape of its face; long is a single flat row.")
    )
    side: PlugSide | None = Field(
        default=None, description="Which half was looked at: the plug on the car's loom, or the one in the radio."
    )
    width: Size | None = Field(default=None, description="Its face, across.")
    height: Size | None = Field(default=None, description="Its face, up and down.")
    rows: Count | None = Field(default=None, description="Rows of cavities.")
    columns: Count | None = Field(default=None, description="Cavities in the longest row.")
    cavities: Cavities | None = Field(default=None, description="Positions in the shell, filled or not.")
    populated: Annotated[int, Field(ge=0, le=200), AsWhole] | None = Field(
        default=None, description="How many of them had a terminal in the one that was counted."
    )
    terminals: Terminals | None = Field(default=None, description="The metal in the cavities.")
    keying: Unknown | Many[Annotated[Key, InAWord("kind")]] | None = Field(
        default=None, description="Every key on it; not there when somebody looked and it has none."
    )
    latch: Annotated[Latch, InAWord("kind")] | Unknown | None = Field(
        default=None, description="What holds it in; not there when nothing does."
    )
    secondary_lock: Literal["there", "not there"] | None = Field(
        default=None, description="A second lock that holds the terminals in the shell."
    )
    shell_colours: Many[Name] = Field(
        default=(), description="What people call its colour. Colours fade, so it is a hint and no more."
    )
    key_colours: Many[Name] = Field(default=(), description="Colour of a key or insert, where it has its own.")
    numbering: Numbering | None = Field(default=None, description="How its cavities are counted.")
    sealed: Literal["sealed", "unsealed"] | None = Field(default=None, description="Whether it keeps water out.")
    standard: Name | None = Field(default=None, description="The open standard it follows, where it follows one.")
    looks_like: Many[LooksLike] = Field(default=(), description="What it must not be confused with.")
