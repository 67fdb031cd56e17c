"""A note: one person, one car or one part on the bench, in one of six forms."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.note.state import Clips, Reason, Sizes, State
from bezelbook.kinds.record import AsWhole, Many, Name, Part, Record, Text
from bezelbook.values.day import Day
from bezelbook.values.ident import Id
from bezelbook.values.measures import Minutes, Power, Reading, Resistance, Voltage
from bezelbook.values.words import Datum, Ninth, Side, Sureness, Verdict

Tool = Literal["caliper", "depth gauge", "tape", "wire", "template", "putty", "test box", "eye"]
Room = Literal[
    "depth",
    "width",
    "height",
    "nose width",
    "nose height",
    "rear depth to fixed",
    "rear depth to glass down",
    "rear depth at worst of travel",
    "front clearance",
    "cut-out",
    "bolt circle",
    "hole spacing",
]
Presence = Literal["there", "not there", "not looked"]


class Signed(Record):
    """Who wrote it and when; the form and the command fill these in."""

    author: Id | None = Field(default=None, description="Initials or role of who saw it.")
    date: Day | None = Field(default=None, description="The day it was seen.")
    job: Id | None = Field(
        default=None, description="A tag for the job, never a customer. Two notes with one tag are one job."
    )
    words: Text | None = Field(default=None, description="Whatever else is worth saying, in your own words.")
    replaces: Id | None = Field(default=None, description="The older note that this one takes the place of.")
    numbers: Literal["read back"] | None = Field(
        default=None, description="Write read back once an odd number has been looked at again and stands."
    )


class Tried(Signed, State):
    """Something was offered up to a place."""

    form: Literal["tried"] = Field(description="This form: something was offered up.")
    what: Name = Field(description="What was tried: a record's file name, or words.")
    verdict: Verdict = Field(description="Whether it goes in.")
    sure: Sureness = Field(description="How you know.")
    sizes: Sizes | None = Field(default=None, description="Its sizes, when it has no record of its own.")
    reason: Reason | None = Field(default=None, description="What stopped it.")
    where: Many[Ninth] = Field(
        default=(), description="Where it hit, or where the room left over was read, seen from the front."
    )
    hit: Name | None = Field(default=None, description="Which thing it hit.")
    short_by: Reading | None = Field(default=None, description="How much room was missing.")
    to_spare: Reading | None = Field(default=None, description="How much room was left over.")
    condition: Name | None = Field(default=None, description="What it took, when the verdict is goes in if.")
    lost: Many[Name] = Field(default=(), description="What no longer worked or could no longer be reached.")
    kept: Many[Name] = Field(default=(), description="What was tried afterwards and still worked.")
    differed: Text | None = Field(default=None, description="What was not as the page said.")


class RoomReading(Part):
    """One number read in the car."""

    of: Room = Field(description="What was measured.")
    reads: Reading = Field(description="The reading, with ± when you know it.")
    zones: Literal["all"] | Many[Ninth] = Field(
        default=(), description="Which ninths of the opening, seen from the front; or the word all."
    )
    datum: Datum | None = Field(default=None, description="Which face the depth was measured from.")
    tool: Tool | None = Field(default=None, description="What it was measured with.")
    hits: Name | None = Field(default=None, description="The thing that stops it there.")
    moves: Literal["moves", "fixed"] | None = Field(default=None, description="Whether that thing moves.")


class Measured(Signed, State):
    """A place was measured. Unless it says otherwise: nothing cut, loom held aside, no mount."""

    form: Literal["measured"] = Field(description="This form: the place was measured.")
    readings: Many[RoomReading] = Field(min_length=1, description="The numbers, each from a named face.")


class Fasteners(Part):
    """Fasteners of one kind on one piece."""

    kind: Name = Field(description="Which fastener.")
    count: Annotated[int, Field(ge=0, le=999), AsWhole] | None = Field(default=None, description="How many.")
    where: Name | None = Field(default=None, description="Where they are.")


class Overlap(Part):
    """One piece over another."""

    piece: Id = Field(description="The piece on top.")
    over: Id = Field(description="The piece it lies over.")


class Seen(Signed, State):
    """Something was looked at: a plug, an amplifier, a tell, a layer of trim."""

    form: Literal["seen"] = Field(description="This form: something was looked at.")
    plug: Name | None = Field(default=None, description="The plug at this place.")
    amplifier: Presence | None = Field(default=None, description="Whether a factory amplifier is there.")
    tell: Text | None = Field(default=None, description="A way to know the build from the seat.")
    lies_over: Many[Overlap] = Field(default=(), description="Which piece lies over which.")
    shares_screw: Many[Id] = Field(default=(), description="Pieces held by one and the same screw.")
    hidden: Text | None = Field(default=None, description="A fixing nobody would find.")
    fasteners: Many[Fasteners] = Field(default=(), description="What holds it.")
    same_as: Side | None = Field(default=None, description="The side this one was compared with and found the same.")


class CavityReading(Part):
    """One cavity and what was on it."""

    cavity: Annotated[int, Field(ge=1, le=200), AsWhole] = Field(description="Its number.")
    carries: Name = Field(description="What it carries.")
    volts: Voltage | None = Field(default=None, description="What the meter said, in volts.")
    ohms: Resistance | None = Field(default=None, description="What the meter said, in ohms.")
    colour: Name | None = Field(default=None, description="Wire colour.")


class Metered(Signed, State):
    """A plug was metered."""

    form: Literal["metered"] = Field(description="This form: a plug was metered.")
    plug: Name = Field(description="Which plug.")
    view: Literal["mating face", "wire entry"] | None = Field(
        default=None, description="From which side the numbers were counted."
    )
    cavities: Many[CavityReading] = Field(min_length=1, description="Cavity by cavity.")


class BenchReading(Part):
    """One size read off a part."""

    of: Name = Field(description="Which of the record's sizes, by its field name.")
    reads: Reading = Field(description="The reading, with ± when you know it.")


class Bench(Signed):
    """A part was looked at on the bench, no car needed."""

    form: Literal["bench"] = Field(description="This form: a part on the bench.")
    part: Id = Field(description="Which part, by its file name.")
    readings: Many[BenchReading] = Field(default=(), description="What was measured on it.")


class Took(Part):
    """Time by scope."""

    scope: Name = Field(description="What the time covers.")
    took: Minutes = Field(description="How long.")
    first_time: Literal["first time", "done before"] | None = Field(
        default=None, description="Whether it was the first of its kind here."
    )


class LoadResistor(Part):
    """A load resistor, with and without."""

    value: Resistance = Field(description="Its value.")
    rated: Power | None = Field(default=None, description="What it may dissipate.")
    with_it: Name | None = Field(default=None, description="What happened with it.")
    without_it: Name | None = Field(default=None, description="What happened without it.")


class After(Signed, State):
    """Written back after a job."""

    form: Literal["after"] = Field(description="This form: the write-back after a job.")
    kept: Many[Name] = Field(default=(), description="What was tried and works.")
    lost: Many[Name] = Field(default=(), description="What no longer works.")
    times: Many[Took] = Field(default=(), description="Minutes by scope.")
    clips: Many[Clips] = Field(default=(), description="Clips handled and lost, by type.")
    resistors: Many[LoadResistor] = Field(default=(), description="Load resistors used.")
    settings: Text | None = Field(default=None, description="Module settings as left.")
    comeback: Text | None = Field(default=None, description="Why the car came back, if it did.")
    differed: Text | None = Field(default=None, description="What was not as the page said.")


AnyNote = Tried | Measured | Seen | Metered | Bench | After
Note = Annotated[AnyNote, Field(discriminator="form")]
