"""A job to come: which car, as far as it is known, and what is wished for; never whose it is."""

from typing import Literal

from pydantic import Field

from bezelbook.kinds.record import PART_KINDS, ById, Many, Name, Part, Record, Year, names
from bezelbook.values.day import Day
from bezelbook.values.ident import Id
from bezelbook.values.words import Function


class Wish(Part):
    """One thing that is to be done."""

    want: Literal["replace", "add", "keep", "remove", "mend"] = Field(description="What to do about it.")
    what: Name = Field(
        description="With what: a record's file name, or words.", json_schema_extra=names(*PART_KINDS, in_words=True)
    )
    place: Id | None = Field(default=None, description="Where, by the vehicle's own list.")
    mounts: Many[Id] = Field(
        default=(), description="Mounts that are settled, nearest the car first.", json_schema_extra=names("mount")
    )


class Job(Record):
    """A request for a job sheet. It holds nothing about a person: no name, no phone, no plate."""

    tag: Id = Field(description="A tag that means nothing outside the shop; the notes of the job carry the same.")
    vehicle: Id = Field(description="Which vehicle, by file name.", json_schema_extra=names("vehicle"))
    year: Year | None = Field(default=None, description="Model year, counted within the generation.")
    splits: ById[Id] = Field(default={}, description="Which build, as far as it is known.")
    wishes: Many[Wish] = Field(min_length=1, description="What is wished for.")
    must_keep: Many[Function] = Field(default=(), description="What has to work afterwards.")
    cutting: Literal["not allowed", "agreed in writing", "not asked"] | None = Field(
        default=None, description="Whether anything may be cut or drilled."
    )
    day: Day | None = Field(default=None, description="The day the bay is kept for it.")
    in_hand: Many[Id] = Field(
        default=(),
        description="Parts that are already there, by file name.",
        json_schema_extra=names(*PART_KINDS),
    )
