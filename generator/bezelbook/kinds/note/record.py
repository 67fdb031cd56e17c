"""A note: one person, one car or one part on the bench, in one of six forms."""

from typing import Annotated, Literal

from pydantic import Field
from typing_extensions import TypeAliasType

from bezelbook.kinds.circuits import ByCircuit, Does
from bezelbook.kinds.note.fitting import Fitted, FunctionWords, Hung, LoadResistor, Took, Used
from bezelbook.kinds.note.opening import Control, OpeningSeen
from bezelbook.kinds.note.removal import RemovalSeen
from bezelbook.kinds.note.speaker_place import BoltHoles, SideRuled, SpeakerPlaceSeen
from bezelbook.kinds.note.state import Clips, Reason, Sizes, State
from bezelbook.kinds.note.wiring import CavityReading, Channel, SoundSeen, SupplyFound
from bezelbook.kinds.pieces import InAWord
from bezelbook.kinds.record import PART_KINDS, Dated, Many, Name, Part, Text, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Angle, Reading, Resistance
from bezelbook.values.words import Datum, Ninth, PlugView, Side, Sureness, Verdict

Tool = Literal["caliper", "depth gauge", "tape", "wire", "template", "putty", "test box", "eye"]
Room = Literal[
    "depth",
    "width",
    "height",
    "nose width",
    "nose height",
    "corner radius",
    "rear depth to fixed",
    "rear depth to glass down",
    "rear depth at worst of travel",
    "front clearance",
    "cut-out",
    "cut-out long way",
    "cut-out short way",
    "bolt circle",
    "hole spacing",
]


class Signed(Dated):
    """Who wrote it and when; the form and the command fill these in."""

    job: Id | None = Field(
        default=None, description="A tag for the job, never a customer. Two notes with one tag are one job."
    )
    words: Text | None = Field(default=None, description="Whatever else is worth saying, in your own words.")
    replaces: Id | None = Field(
        default=None, description="The older note that this one takes the place of.", json_schema_extra=names("note")
    )
    numbers: Literal["read back"] | None = Field(
        default=None, description="Write read back once an odd number has been looked at again and stands."
    )
    photos: Many[Name] = Field(
        default=(), description="Names of pictures kept elsewhere. No plate, no face, no address in any of them."
    )


class Tried(Fitted, Signed, State):
    """Something was offered up to a place."""

    form: Literal["tried"] = Field(description="This form: something was offered up.")
    what: Name = Field(
        description="What was tried: a record's file name, or words.",
        json_schema_extra=names(*PART_KINDS, in_words=True),
    )
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
    lost: Many[FunctionWords] = Field(default=(), description="What no longer worked or could no longer be reached.")
    kept: Many[FunctionWords] = Field(default=(), description="What was tried afterwards and still worked.")
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


class Measured(SideRuled, Signed, State):
    """A place was measured. Unless it says otherwise: nothing cut, loom held aside, no mount."""

    form: Literal["measured"] = Field(description="This form: the place was measured.")
    readings: Many[RoomReading] = Field(min_length=1, description="The numbers, each from a named face.")
    shape: Literal["round", "oval", "square", "D"] | None = Field(
        default=None, description="The shape of a cut-out for a speaker."
    )
    bolt_holes: BoltHoles | None = Field(default=None, description="The holes that a speaker is fixed by.")
    rake: Angle | None = Field(default=None, description="How far the opening leans back.")
    controls: Many[Control] = Field(
        default=(), description="Controls near the opening, for a screen that stands off the dash."
    )


class Seen(RemovalSeen, SupplyFound, SpeakerPlaceSeen, SideRuled, OpeningSeen, SoundSeen, Signed, State):
    """Something was looked at: a plug, an amplifier, a tell, a layer of trim."""

    form: Literal["seen"] = Field(description="This form: something was looked at.")
    tell: Text | None = Field(default=None, description="A way to know the build from the seat.")
    same_as: Side | None = Field(default=None, description="The side this one was compared with and found the same.")


class Metered(SupplyFound, Signed, State):
    """A plug was metered."""

    form: Literal["metered"] = Field(description="This form: a plug was metered.")
    plug: Name = Field(
        description="Which plug: a connector's file name, or words.",
        json_schema_extra=names("connector", in_words=True),
    )
    view: PlugView | None = Field(default=None, description="From which side the numbers were counted.")
    sure: Sureness | None = Field(
        default=None, description="How you know, when it was not a meter: told for what a sheet says."
    )
    cavities: Many[CavityReading] = Field(min_length=1, description="Cavity by cavity.")
    channels: Many[Channel] = Field(default=(), description="Outputs of a factory amplifier.")


class BenchReading(Part):
    """One size read off a part."""

    of: Name = Field(description="Which of the record's sizes, by its field name.")
    reads: Reading = Field(description="The reading, with ± when you know it.")


class BenchCircuit(Part):
    """One circuit of an adapter, metered from end to end."""

    does: Does = Field(description="What becomes of it, in the words that an adapter's record uses.")
    ohms: Resistance | Literal["open"] | None = Field(default=None, description="What the meter said from end to end.")


CircuitMetered = TypeAliasType("CircuitMetered", Annotated[BenchCircuit, InAWord("does")])


class Bench(Signed):
    """A part was looked at on the bench, no car needed."""

    form: Literal["bench"] = Field(description="This form: a part on the bench.")
    part: Id = Field(description="Which part, by its file name.", json_schema_extra=names(*PART_KINDS))
    readings: Many[BenchReading] = Field(default=(), description="What was measured on it.")
    circuits: ByCircuit[CircuitMetered] = Field(
        default={}, description="What was metered through it, written as in an adapter's record."
    )


class After(Fitted, Signed, State):
    """Written back after a job."""

    form: Literal["after"] = Field(description="This form: the write-back after a job.")
    kept: Many[FunctionWords] = Field(default=(), description="What was tried and works.")
    lost: Many[FunctionWords] = Field(default=(), description="What no longer works.")
    times: Many[Took] = Field(default=(), description="Minutes by scope.")
    clips: Many[Clips] = Field(default=(), description="Clips handled and lost, by type.")
    resistors: Many[LoadResistor] = Field(default=(), description="Load resistors used.")
    used: Many[Annotated[Used, InAWord("what")]] = Field(default=(), description="What was used up.")
    settings: Text | None = Field(default=None, description="Module settings as left.")
    firmware: Name | None = Field(default=None, description="Firmware of the radio or module as fitted.")
    stowed: Name | None = Field(default=None, description="Where a module or the loom was put.")
    gains: Text | None = Field(default=None, description="Gain and filter of an amplifier as left.")
    hung: Many[Hung] = Field(default=(), description="Which speakers hang on which amplifier, as left.")
    comeback: Text | None = Field(default=None, description="Why the car came back, if it did.")
    differed: Text | None = Field(default=None, description="What was not as the page said.")


AnyNote = Tried | Measured | Seen | Metered | Bench | After
Note = Annotated[AnyNote, Field(discriminator="form")]
