"""A question that nobody in the shop could answer, and how often it came."""

from typing import Annotated

from pydantic import Field

from bezelbook.kinds.record import PART_KINDS, AsWhole, ById, Name, Record, Text, Year, names
from bezelbook.values.day import Day
from bezelbook.values.ident import Id


class Asked(Record):
    """A question as it was typed. The rest is only there when the words were understood."""

    words: Text = Field(description="The question, word for word.")
    times: Annotated[int, Field(ge=1, le=9999), AsWhole] = Field(default=1, description="How often it was asked.")
    last_asked: Day | None = Field(default=None, description="The day it was last asked.")
    vehicle: Id | None = Field(
        default=None, description="Which vehicle it is about, by file name.", json_schema_extra=names("vehicle")
    )
    place: Id | None = Field(default=None, description="Which place in it.")
    year: Year | None = Field(default=None, description="Model year, counted within the generation.")
    splits: ById[Id] = Field(default={}, description="Which build, as far as it was said.")
    what: Name | None = Field(
        default=None,
        description="What was to go in: a record's file name, or words.",
        json_schema_extra=names(*PART_KINDS, in_words=True),
    )
