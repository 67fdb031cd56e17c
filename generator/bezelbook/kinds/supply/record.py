"""A supply: what gets used up, and the tools it is done with; one form for each sort of thing."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.record import AsWhole, Many, Name, Named, Text, names
from bezelbook.kinds.supply.fastener import FastenerKind, Grip
from bezelbook.values.ident import Id
from bezelbook.values.measures import Current, Length, Power, Resistance, Share, Size, Temperature
from bezelbook.values.wire_size import WireSize


class Supply(Named):
    """What every supply has."""

    pack: Annotated[int, Field(ge=1, le=9999), AsWhole] | None = Field(
        default=None, description="How many come in a pack; for what comes by length, 1."
    )
    single_use: Literal["single use", "goes back"] | None = Field(
        default=None, description="Whether it may go back in once it has come out."
    )
    purpose: Text | None = Field(default=None, description="What it is for, where the name does not say.")


class Fastener(Supply, Grip):
    """A screw, a clip, a rivet or a nut."""

    form: Literal["fastener"] = Field(description="This form: a fastener.")
    fastener_kind: FastenerKind = Field(description="What sort of fastener.")


class Foam(Supply):
    """Something soft that seals or couples."""

    form: Literal["foam"] = Field(description="This form: foam.")
    foam_kind: Literal["closed-cell tape", "open-cell ring", "closed-cell ring", "sheet"] = Field(
        description="What sort of foam."
    )
    width: Length | None = Field(default=None, description="How wide it is; of a ring, how wide its band is.")
    free_thickness: Length | None = Field(default=None, description="How thick it is with nothing pressing on it.")
    inner: Length | None = Field(default=None, description="Inner diameter of a ring.")
    firmness: Literal["soft", "medium", "firm"] | None = Field(default=None, description="What a thumb says.")
    squeeze: Share | None = Field(default=None, description="How much of its thickness goes when it is screwed down.")
    roll: Length | None = Field(default=None, description="How long a roll is.")
    hottest: Temperature | None = Field(default=None, description="The most it stands.")


class Tape(Supply):
    """Something that sticks or is wound round: tape, mat, butyl, sealant."""

    form: Literal["tape"] = Field(description="This form: tape.")
    tape_kind: Literal["fleece", "cloth", "plastic", "foil", "double-sided", "mat", "butyl", "sealant", "membrane"] = (
        Field(description="What sort of tape.")
    )
    width: Length | None = Field(default=None, description="How wide it is.")
    thickness: Length | None = Field(default=None, description="How thick it is.")
    roll: Length | None = Field(default=None, description="How long a roll is.")
    hottest: Temperature | None = Field(default=None, description="The most it stands; some run in summer.")
    outside: Literal["inside only", "outside too"] | None = Field(
        default=None, description="Whether it may be used where it gets wet."
    )


class Wire(Supply):
    """Wire or cable by length."""

    form: Literal["wire"] = Field(description="This form: wire.")
    size: WireSize = Field(description="How thick its copper is.")
    metal: Literal["copper", "copper-clad aluminium"] | None = Field(
        default=None, description="Clad aluminium drops half as much voltage again."
    )
    cores: Annotated[int, Field(ge=1, le=99), AsWhole] | None = Field(default=None, description="How many wires in it.")
    over_all: Length | None = Field(default=None, description="Diameter with its insulation.")
    colour: Name | None = Field(default=None, description="Its colour.")
    roll: Length | None = Field(default=None, description="How long a roll is.")


class Terminal(Supply):
    """What goes on the end of a wire."""

    form: Literal["terminal"] = Field(description="This form: a terminal.")
    terminal_kind: Literal["ring", "fork", "blade", "receptacle", "pin", "splice", "ferrule", "bullet"] = Field(
        description="What sort of terminal."
    )
    width: Size | None = Field(default=None, description="Width of a blade, or of what a receptacle takes.")
    stud: Name | None = Field(default=None, description="The stud a ring or fork goes on, such as M6.")
    wire_least: WireSize | None = Field(default=None, description="The thinnest wire it takes.")
    wire_most: WireSize | None = Field(default=None, description="The thickest wire it takes.")
    insulated: Literal["insulated", "bare"] | None = Field(default=None, description="Whether it has a sleeve.")


class Resistor(Supply):
    """A load resistor by itself. Which value a package wants was seen on a car, so it is a note."""

    form: Literal["resistor"] = Field(description="This form: a resistor.")
    value: Resistance = Field(description="Its value.")
    rated: Power | None = Field(default=None, description="What it may dissipate, on metal.")
    body: Literal["metal case", "cement", "wire-wound", "film"] | None = Field(default=None, description="Its body.")
    comes: Literal["loose", "on a plug lead"] | None = Field(default=None, description="How it comes.")


class Tool(Supply):
    """A tool, as far as a job depends on having the right one."""

    form: Literal["tool"] = Field(description="This form: a tool.")
    tool_kind: Name = Field(description="What sort of tool, such as hex socket, six-lobe bit, trim lever.")
    size: Name | None = Field(default=None, description="Its size as spoken, such as 7 mm or six-lobe 20.")
    reach: Many[Literal["stubby", "long", "deep", "extension", "swivel", "magnet", "right angle"]] = Field(
        default=(), description="What lets it get there."
    )
    length: Length | None = Field(default=None, description="How far it reaches.")
    instead: Many[Id] = Field(
        default=(), description="Other tools that will do, by file name.", json_schema_extra=names("supply")
    )
    not_on: Many[Text] = Field(default=(), description="What it must not be used on.")


class Other(Supply):
    """Anything else that a pull list has to name: a fuse, a relay, a grommet, ties, heat-shrink."""

    form: Literal["other"] = Field(description="This form: anything else.")
    size: Name | None = Field(default=None, description="Its size as spoken, such as M8, or blade fuse, mini.")
    rated: Current | None = Field(default=None, description="What it carries or breaks.")


AnySupply = Fastener | Foam | Tape | Wire | Terminal | Resistor | Tool | Other
SupplyFile = Annotated[AnySupply, Field(discriminator="form")]
