"""What is seen and ruled at a place for a speaker: its holes, the factory speaker, its filter and what drives it."""

from typing import Literal

from pydantic import Field

from bezelbook.kinds.pieces import Filter, Presence
from bezelbook.kinds.record import Count, Many, Name, Part
from bezelbook.values.clock import Clock
from bezelbook.values.ident import Id
from bezelbook.values.measures import Resistance
from bezelbook.values.words import Unknown

OtherSide = Literal["measured the same", "assumed the same", "not the same"]


class BoltHoles(Part):
    """The holes a speaker or its bracket is fixed by. How far apart they are is one of the readings."""

    count: Count | None = Field(default=None, description="How many.")
    first: Clock | None = Field(default=None, description="Where the first one sits, seen from the front, 12 on top.")
    kind: (
        Literal[
            "plain",
            "plastic boss",
            "clip nut",
            "rivet nut",
            "heat-staked",
            "riveted",
            "twist-lock",
            "toothed retainer",
            "guide posts",
            "snap-in",
            "glued",
        ]
        | None
    ) = Field(default=None, description="What a screw goes into, or what holds instead of screws.")


class FilterSeen(Filter):
    """A filter that came with the car."""

    where: Literal["on the speaker", "in the lead", "in the amplifier"] | None = Field(
        default=None, description="Where it is."
    )


class FactorySpeaker(Part):
    """The speaker that the car came with."""

    nominal: Name | None = Field(default=None, description="The size people call it, such as 6 1/2 in. A name.")
    one_piece: Literal["one piece", "separate"] | None = Field(
        default=None, description="Whether speaker and bracket are one moulding."
    )
    impedance: Resistance | None = Field(default=None, description="As printed on it.")
    dc_resistance: Resistance | Literal["open"] | None = Field(
        default=None, description="As a meter reads across it; a tweeter behind a capacitor reads open."
    )
    filter: FilterSeen | Unknown | None = Field(
        default=None, description="What filters it; not there when somebody looked and found none."
    )
    driven_by: Literal["radio", "factory amplifier"] | None = Field(default=None, description="What drives it.")
    channel: Name | None = Field(default=None, description="Which channel, in the words of whoever traced it.")
    together_with: Many[Id] = Field(
        default=(), description="Places whose speakers hang on the same channel, by the vehicle's own list."
    )


class SpeakerPlaceSeen(Part):
    """What a look at a place for a speaker tells."""

    factory_speaker: FactorySpeaker | None = Field(default=None, description="The speaker that the car came with.")
    grille: Name | None = Field(default=None, description="What covers it: moulded slots, metal mesh, cloth.")
    own_mesh: Literal["needed", "not needed"] | None = Field(
        default=None, description="Whether a speaker here wants its own mesh."
    )
    membrane: Presence | None = Field(default=None, description="Whether a membrane has to be opened and closed again.")
    near: Many[Name] = Field(
        default=(), description="What is near and must be left alone: drain, beam, wiring, parts of a restraint."
    )


class SideRuled(Part):
    """Whether the other side was looked at too."""

    other_side: OtherSide | None = Field(
        default=None, description="How the other side compares: assumed is not measured, and a page says so."
    )
