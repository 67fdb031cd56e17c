"""What every record has in common: an id from its file name, and no field that the book does not know."""

from typing import Annotated, Any, TypeVar

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, Strict, StringConstraints

from bezelbook.values.day import Day
from bezelbook.values.ident import Id

T = TypeVar("T")

Text = Annotated[str, StringConstraints(min_length=1, max_length=2000)]
Name = Annotated[str, StringConstraints(min_length=1, max_length=120)]
Many = Annotated[tuple[T, ...], Strict(strict=False)]
# JSON Schema lets keys of any other shape through unless it is told not to.
ById = Annotated[dict[Id, T], Field(json_schema_extra={"additionalProperties": False})]


def _whole(value: object) -> object:
    """A float without a fraction counts as whole, as JSON Schema has it; everything else is left to the model."""
    return int(value) if isinstance(value, float) and value.is_integer() else value


# Bounds stand before it: `Annotated[int, Field(ge=1), AsWhole]`. Behind it, the JSON schema would lose them.
AsWhole = BeforeValidator(_whole)
Count = Annotated[int, Field(ge=0, le=99), AsWhole]
Year = Annotated[int, Field(ge=1, le=40), AsWhole]

NAMES, IN_WORDS = "x-names", "x-in-words"
# What can lie on the bench or be carried to a car.
PART_KINDS = ("head_unit", "speaker", "amplifier", "module", "adapter", "mount", "connector", "supply")


def names(*kinds: str, in_words: bool = False) -> dict[str, Any]:
    """Mark a field, in the model and in its schema, as naming records of these kinds.

    With `in_words` it may hold a record's name, or words that no record goes by; without, it holds nothing but ids.
    """
    return {NAMES: list(kinds)} | ({IN_WORDS: True} if in_words else {})


class Part(BaseModel):
    """A piece of a record: frozen, and closed to fields that nobody defined."""

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True)


class Record(Part):
    """One file of the book; `id` is the file's name and is never written inside it."""

    id: Id = Field(description="The file's name without its ending; never written inside the file.")


def kind_of(record: type[Record]) -> str:
    """The name of the kind of record that a model reads: a kind is called as the folder its model lies in."""
    return record.__module__.split(".")[-2]


class Dated(Record):
    """A record that one person stands behind: a note, a decision."""

    author: Id | None = Field(default=None, description="Initials or role of whose word it is. No full name.")
    date: Day | None = Field(default=None, description="The day it was seen or settled.")


class Named(Record):
    """A record that people call by name: a vehicle, a part, a mount."""

    name: Name = Field(description="What the shop calls it. No maker's name.")
    also: Many[Name] = Field(default=(), description="Other words people use for the same thing.")
    about: Text | None = Field(default=None, description="Anything worth knowing, in a sentence or two.")
