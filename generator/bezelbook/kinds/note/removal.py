"""What is seen when a piece comes off: what lies over it, what holds it, which way it comes and what to mind."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.pieces import InAWord
from bezelbook.kinds.record import AsWhole, Count, Many, Name, Part, Text, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Length, Minutes
from bezelbook.values.words import Safety

Direction = Literal["toward you", "up", "down", "left", "right", "forward", "rearward", "inward", "outward"]


class Fasteners(Part):
    """Fasteners of one kind on one piece."""

    kind: Name = Field(description="Which fastener.", json_schema_extra=names("supply", in_words=True))
    count: Annotated[int, Field(ge=0, le=999), AsWhole] | None = Field(default=None, description="How many.")
    where: Name | None = Field(default=None, description="Where they are.")
    length: Length | None = Field(default=None, description="How long, where a longer one would do harm.")
    odd_one: Name | None = Field(default=None, description="The one that differs, and where it goes.")


class Overlap(Part):
    """One piece over another."""

    piece: Id = Field(description="The piece on top.")
    over: Id = Field(description="The piece it lies over.")
    how: Literal["lies over", "overlaps the edge", "traps"] | None = Field(
        default=None, description="How they meet; the lower one tucks under."
    )


class First(Part):
    """A piece that has to be off before this one."""

    piece: Id = Field(description="Which piece.")
    why: Literal["overlap", "reach", "cable", "screw", "habit"] | None = Field(
        default=None, description="Habit is no must: it was done in that order and nothing asked for it."
    )


class ToolUsed(Part):
    """A tool that the piece wants."""

    tool: Name = Field(description="Which tool.", json_schema_extra=names("supply", in_words=True))
    reach: Many[Literal["stubby", "long", "deep", "extension", "swivel", "magnet", "right angle"]] = Field(
        default=(), description="What lets it get there."
    )
    not_here: Text | None = Field(default=None, description="What must not be used here, such as a powered driver.")


class PieceOff(Part):
    """One piece, as it came off."""

    piece: Id = Field(description="Which piece, by the vehicle's own list.")
    first: Many[Annotated[First, InAWord("piece")]] = Field(default=(), description="What has to be off before it.")
    fasteners: Many[Annotated[Fasteners, InAWord("kind")]] = Field(default=(), description="What holds it.")
    hidden: Text | None = Field(default=None, description="A fixing nobody would find.")
    lead_edge: Literal["front", "rear", "top", "bottom", "left", "right"] | None = Field(
        default=None, description="Which edge to start at."
    )
    pull: Many[Direction] = Field(default=(), description="Which way it comes, one move after the other.")
    hooks: Text | None = Field(default=None, description="Hooks that come last, and where.")
    plugs: Many[Name] = Field(
        default=(), description="Plugs to undo.", json_schema_extra=names("connector", in_words=True)
    )
    tools: Many[Annotated[ToolUsed, InAWord("tool")]] = Field(default=(), description="Tools it wants.")
    safety: Safety | None = Field(
        default=None, description="What could hurt someone here; the vehicle's service information rules."
    )
    took: Minutes | None = Field(default=None, description="How long it took.")
    clips_lost: Count | None = Field(default=None, description="Clips that broke or flew.")
    cup: Annotated[int, Field(ge=1, le=99), AsWhole] | None = Field(
        default=None, description="The cup in the tray that its screws went into."
    )
    refit: Text | None = Field(default=None, description="Where putting it back is not the reverse.")


class RemovalSeen(Part):
    """What coming off tells about the pieces."""

    lies_over: Many[Overlap] = Field(default=(), description="Which piece lies over which.")
    shares_screw: Many[Id] = Field(default=(), description="Pieces held by one and the same screw.")
    hidden: Text | None = Field(default=None, description="A fixing nobody would find.")
    fasteners: Many[Annotated[Fasteners, InAWord("kind")]] = Field(default=(), description="What holds it.")
    pieces: Many[Annotated[PieceOff, InAWord("piece")]] = Field(
        default=(), description="Each piece that came off, in the order it did."
    )
