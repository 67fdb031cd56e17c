"""A decision: what the team settled about notes that could not all be true, why, and what would open it again."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.pieces import Circumstances, InAWord
from bezelbook.kinds.record import Dated, Many, Name, Part, Text, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Minutes
from bezelbook.values.words import Axis, Datum, PlugView, Side


class Weighed(Part):
    """A note that was on the table."""

    note: Id = Field(description="Which note, by file name.", json_schema_extra=names("note"))
    said: Text | None = Field(
        default=None, description="What it said then. If it says something else now, the question is open again."
    )


class ReadAs(Circumstances):
    """How a note is read from now on. It fills what its author left blank and never changes what he wrote."""

    note: Id = Field(description="Which note, by file name.", json_schema_extra=names("note"))
    datum: Datum | None = Field(default=None, description="Which face its depths were measured from.")
    tool: Name | None = Field(default=None, description="What it was measured with.")
    unit: Literal["mm", "in"] | None = Field(default=None, description="What its odd number was in.")
    measured_to: Literal["across", "to the middle", "bolt circle", "hole spacing"] | None = Field(
        default=None, description="What its odd number was of."
    )
    view: PlugView | None = Field(default=None, description="From which side its cavities were counted.")
    side: Side | None = Field(default=None, description="Which side it was, where it said driver or passenger.")


class Struck(Part):
    """A note that lost. It stays in the book, struck through, with the reason."""

    note: Id = Field(description="Which note, by file name.", json_schema_extra=names("note"))
    because: Text = Field(description="Why, in one line.")


class Look(Part):
    """Something to look at, instead of guessing."""

    what: Text = Field(description="What to look at or measure.")
    tool: Name | None = Field(default=None, description="With what.")
    next_car: Name | None = Field(default=None, description="On which next car. No plate, no owner.")
    who: Id | None = Field(default=None, description="Initials or role of who looks.")
    takes: Minutes | None = Field(default=None, description="How long it should take.")


class Decision(Dated):
    """What was settled in one minute, in front of the quotes."""

    question: Text = Field(description="The key of what was asked, as the list of findings gives it.")
    notes: Many[Annotated[Weighed, InAWord("note")]] = Field(default=(), description="The notes that were weighed.")
    decided: Literal["both true", "one stands", "go and look", "same job twice", "no problem"] = Field(
        description="Both true: say what differs. One stands: say which are struck. Go and look: say who, at what."
    )
    differs: Many[Axis] = Field(default=(), description="What the notes differ in, when both are true.")
    read_as: Many[ReadAs] = Field(default=(), description="How each note is read from now on.")
    struck: Many[Struck] = Field(default=(), description="The notes that lost.")
    look: Look | None = Field(default=None, description="Who goes and looks, at what.")
    reason: Text = Field(description="Why, in one line.")
    reopens: Text | None = Field(default=None, description="What would open it again.")
