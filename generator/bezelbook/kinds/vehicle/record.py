"""A vehicle platform: what it is called, which builds of it differ and how to tell, and where things go in it."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.record import AsWhole, ById, Many, Name, Named, Part, Text, Year, names
from bezelbook.values.ident import Id
from bezelbook.values.words import Safety, Side

Subject = Literal["room", "plug", "circuits", "amplifier", "speakers", "trim", "kept"]
PlaceKind = Literal[
    "plain opening",
    "opening behind a bezel",
    "shaped opening",
    "display opening",
    "module bay",
    "pocket",
    "overhead console",
    "glovebox",
    "under seat",
    "dash corner",
    "dash centre speaker",
    "pillar",
    "mirror triangle",
    "door upper",
    "door lower",
    "kick panel",
    "rear door",
    "rear quarter",
    "parcel shelf",
    "wheel well",
    "load bay side",
    "column or pod",
    "engine bay",
    "whole vehicle",
]


class SplitValue(Part):
    """One side of a split, and how to know it."""

    tell: Text | None = Field(default=None, description="How to know it from the seat, before anything comes apart.")
    years: Many[Year] = Field(default=(), description="Model years, counted within the generation, it was seen in.")
    also: Many[Name] = Field(default=(), description="Other words for it, such as facelift.")


class BearsOn(Part):
    """What a split makes a difference to; a blank list means all."""

    places: Many[Id] = Field(default=(), description="The places it changes.")
    subjects: Many[Subject] = Field(default=(), description="The subjects it changes.")


class Split(Part):
    """An axis on which cars of one platform differ, such as early or late build."""

    differs_in: Literal["build", "body", "hand", "audio", "display", "equipment"] | None = Field(
        default=None, description="What sort of difference it is, so that a hand or a package is known for one."
    )
    values: ById[SplitValue] = Field(min_length=1, description="Each value with its tell.")
    bears_on: BearsOn = Field(default=BearsOn(), description="What it makes a difference to; blank means everything.")


class Place(Part):
    """Somewhere a part goes."""

    kind: PlaceKind = Field(description="What sort of place it is.")
    side: Side = Field(description="Left, right or centre, sitting in the vehicle facing forward.")
    name: Name | None = Field(default=None, description="What the shop calls it; the id serves when this is blank.")
    also: Many[Name] = Field(default=(), description="Other words people use for it.")
    other_side: Id | None = Field(
        default=None, description="The same place on the other side, by this list; left and right are never one place."
    )
    safety: Safety | None = Field(
        default=None, description="What could hurt someone here; the vehicle's service information rules."
    )


class Trim(Part):
    """A piece that comes off, by the shop's own name."""

    name: Name | None = Field(default=None, description="What the shop calls it.")
    also: Many[Name] = Field(default=(), description="Other words people use for it.")
    side: Side | None = Field(default=None, description="Left, right or centre, facing forward.")
    where: Name | None = Field(
        default=None,
        description="Where it sits, for somebody who has never heard its name: below the vents, over the radio.",
    )
    safety: Safety | None = Field(
        default=None, description="What could hurt someone here; the vehicle's service information rules."
    )


class Vehicle(Named):
    """A platform: a class of vehicle and its generation. Never a maker.

    Packages, bodies, hands and displays are splits. What is behind its panels was seen, so it stands in notes.
    """

    vehicle_class: Name = Field(description="Such as compact hatch, cargo van.")
    generation: Annotated[int, Field(ge=1, le=20), AsWhole] = Field(description="Which generation of that class.")
    model_years: Year = Field(description="How many model years it ran, counted from 1.")
    splits: ById[Split] = Field(default={}, description="The axes on which cars of this platform differ.")
    never_built: Many[ById[Id]] = Field(default=(), description="Combinations of split values that do not exist.")
    places: ById[Place] = Field(default={}, description="The places where parts go.")
    trim: ById[Trim] = Field(default={}, description="The pieces that come off, by name.")
    supply: Literal["12 V", "12 V from a converter", "48 V present", "high voltage present"] | None = Field(
        default=None, description="What feeds the car's 12 V side."
    )
    sisters: Many[Id] = Field(
        default=(),
        description="Platforms said to have the same plugs; lent at told only.",
        json_schema_extra=names("vehicle"),
    )
