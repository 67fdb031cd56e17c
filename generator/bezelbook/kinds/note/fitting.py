"""What goes in beside the thing itself, and what is written back after a job: times, resistors, what was used up."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.pieces import Screws
from bezelbook.kinds.record import AsWhole, Count, Many, Name, Part, names
from bezelbook.values.measures import Angle, Length, Minutes, Offset, Power, Resistance, Temperature
from bezelbook.values.words import FUNCTIONS, Circuit

RESULTS = ("works", "muted", "hiss", "shuts off", "not tried")
FunctionWords = Annotated[Name, Field(examples=[*FUNCTIONS])]
SCOPES = ("total", "removal", "bench", "wiring", "refit", "programming")


class ScreenSet(Part):
    """How a screen that stands off the dash was set."""

    offset: Offset | None = Field(default=None, description="How far it stands off the dash.")
    height: Offset | None = Field(default=None, description="+ above the middle, - below it.")
    tilt: Angle | None = Field(default=None, description="How far it leans back.")


class Fitted(Part):
    """What was used to get it in."""

    adapters: Many[Name] = Field(
        default=(),
        description="Adapters and modules used, car first: file names, or words.",
        json_schema_extra=names("adapter", "module", in_words=True),
    )
    gasket: Name | None = Field(
        default=None,
        description="Foam or other seal used: a file name, or words.",
        json_schema_extra=names("supply", in_words=True),
    )
    screws: Many[Screws] = Field(default=(), description="Screws used, by length.")
    screen_set: ScreenSet | None = Field(default=None, description="How a screen that stands off was set.")
    undo: Literal["can be undone", "cannot be undone"] | None = Field(
        default=None, description="Whether what was cut, drilled or moved can be put back."
    )


class Took(Part):
    """Time by scope."""

    scope: Name = Field(description="What the time covers.", examples=[*SCOPES])
    took: Minutes = Field(description="How long.")
    first_time: Literal["first time", "done before"] | None = Field(
        default=None, description="Whether it was the first of its kind here."
    )


class LoadResistor(Part):
    """A load resistor, with and without."""

    value: Resistance = Field(description="Its value.")
    rated: Power | None = Field(default=None, description="What it may dissipate.")
    across: Many[Circuit] = Field(default=(), description="The leads it sits across.")
    count: Count | None = Field(default=None, description="How many like it.")
    comes: Literal["loose", "on a plug lead"] | None = Field(default=None, description="How it was put in.")
    fixed_to: Literal["metal", "air", "foam or tape"] | None = Field(
        default=None, description="What it is fixed to. Foam and tape burn."
    )
    after_ten: Temperature | None = Field(default=None, description="How hot it was after ten minutes.")
    with_it: Name | None = Field(default=None, description="What happened with it.", examples=[*RESULTS])
    without_it: Name | None = Field(default=None, description="What happened without it.", examples=[*RESULTS])


class Hung(Part):
    """Speakers alike on one channel of an amplifier, or on two channels bridged."""

    amplifier: Name = Field(
        description="Which amplifier: a file name, or words.", json_schema_extra=names("amplifier", in_words=True)
    )
    speaker: Name = Field(
        description="Which speaker hangs there: a file name, or words.",
        json_schema_extra=names("speaker", in_words=True),
    )
    count: Count | None = Field(default=None, description="How many of it; one when left out.")
    wired: Literal["in series", "in parallel"] | None = Field(
        default=None, description="How those are wired to each other, where there is more than one."
    )
    coils: Literal["in series", "in parallel"] | None = Field(
        default=None, description="How the coils of each are wired, where it has more than one."
    )
    load: Resistance | None = Field(
        default=None, description="The load of each, where it has no record: nominal, not what a meter reads."
    )
    bridged: Literal["single", "bridged"] | None = Field(default=None, description="One channel, or two as one.")
    channel: Name | None = Field(default=None, description="Which channel, in your words: fronts, sub.")


class Used(Part):
    """Something used up."""

    what: Name = Field(description="What: a file name, or words.", json_schema_extra=names("supply", in_words=True))
    count: Annotated[int, Field(ge=0, le=9999), AsWhole] | None = Field(default=None, description="How many.")
    length: Length | None = Field(default=None, description="How much of what comes by length.")
