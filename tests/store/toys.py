"""Small kinds of record that have one of everything the store has to deal with."""

from typing import Annotated, Literal

from pydantic import Field, StringConstraints, TypeAdapter, field_validator

from bezelbook.kinds import Kind
from bezelbook.kinds.record import AsWhole, ById, Many, Name, Part, Record
from bezelbook.values.complaint import Wrong
from bezelbook.values.day import Day
from bezelbook.values.ident import Id
from bezelbook.values.measures import Length, Size
from bezelbook.values.words import Side, Verdict


class Screw(Part):
    thread: Annotated[str, StringConstraints(pattern="^M[1-9]$")] = Field(description="Thread, such as M5.")
    length: Length = Field(description="How long it is.")


class Box(Record):
    """A box with sizes."""

    name: Name = Field(description="What people call it.")
    verdict: Verdict = Field(description="Whether it goes in.")
    height: Size | None = Field(default=None, description="From top to bottom.")
    depth: Size | Literal["not looked"] = Field(default="not looked", description="From front to back.")
    lid: Length | Literal["not there", "not looked"] | None = Field(default=None, description="How thick the lid is.")
    sides: Literal["all"] | Many[Side] = Field(default=(), description="Which sides; or the word all.")
    count: Annotated[int, Field(ge=1, le=9), AsWhole] | None = Field(default=None, description="How many.")
    screws: Many[Screw] = Field(default=(), description="What holds it.")
    splits: ById[Id] = Field(default={}, description="Which builds.")
    colour: str | None = None

    @field_validator("colour")
    @classmethod
    def _no_grey(cls, colour: str) -> str:
        if colour == "grey":
            raise Wrong("grey is not a colour", "Say light or dark")
        if colour == "none":
            raise ValueError("none of that")
        return colour


class Tried(Record):
    form: Literal["tried"] = Field(description="It was tried.")
    what: Name = Field(description="What was tried.")
    tried: Name | None = Field(default=None, description="A field that is called like its form.")


class Seen(Record):
    form: Literal["seen"] = Field(description="It was seen.")
    what: Name = Field(description="What was seen.")
    day: Day | None = Field(default=None, description="When.")
    at: Many[Length] = Field(default=(), description="Where, from the left.")


class Top(Record):
    name: Name = Field(description="The book's name.")


BOX = Kind("box", "boxes", TypeAdapter(Box), "A box.")
LOG = Kind("log", "logs", TypeAdapter(Annotated[Tried | Seen, Field(discriminator="form")]), "A log.", by_year=True)
TOP = Kind("top", "top", TypeAdapter(Top), "The one at the top.", single=True)
TOYS = {kind.folder: kind for kind in (BOX, LOG, TOP)}
