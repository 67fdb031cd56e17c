"""Stock: how many of a thing lay where, on the day somebody counted them."""

from typing import Annotated

from pydantic import Field

from bezelbook.kinds.record import PART_KINDS, AsWhole, Name, Record, Text, names
from bezelbook.values.day import Day
from bezelbook.values.ident import Id
from bezelbook.values.measures import Length


class Stock(Record):
    """A place on the shelf. Nothing counts it down: it says what it said on the day it was counted."""

    thing: Id = Field(description="What lies there, by file name.", json_schema_extra=names(*PART_KINDS))
    count: Annotated[int, Field(ge=0, le=99_999), AsWhole] = Field(description="How many, each counted by itself.")
    left: Length | None = Field(default=None, description="How much is left of what comes by length.")
    place: Name | None = Field(default=None, description="Where in the shop.")
    counted_on: Day | None = Field(default=None, description="The day it was counted.")
    about: Text | None = Field(default=None, description="Anything worth knowing, in a sentence or two.")
