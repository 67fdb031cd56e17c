"""A wiring adapter: what each of its ends mates with, and what becomes of every circuit on the way."""

from typing import Annotated, Literal

from pydantic import Field
from typing_extensions import TypeAliasType

from bezelbook.kinds.circuits import ByCircuit, Does
from bezelbook.kinds.pieces import InAWord, MadeForAny
from bezelbook.kinds.record import AsWhole, ById, Count, Many, Name, Named, Part, Text, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Current, Length, Power, Resistance, Voltage
from bezelbook.values.words import Circuit, PlugSide, Unknown

Cavity = Annotated[int, Field(ge=1, le=200), AsWhole]


class End(Part):
    """One end of it."""

    connector: Id | None = Field(
        default=None, description="Which connector, by file name.", json_schema_extra=names("connector")
    )
    side: PlugSide | None = Field(
        default=None,
        description="Which half it is. Vehicle side is shaped like the car's loom and goes into a radio; unit side is "
        "shaped like the radio and takes the car's plug.",
    )
    ends_in: Name | None = Field(
        default=None, description="What it ends in when that is no connector: bare leads, 2.8 mm blades, phono."
    )
    polarity_mark: Name | None = Field(default=None, description="How its plus is marked.")


class Way(Part):
    """What becomes of one circuit."""

    does: Does = Field(
        description="Passes: straight through. Broken out: cut, both halves on leads. Tapped: goes through, and also "
        "out on a lead. Looped: closed inside. Makes: made by a module in it. Not there: looked, and no lead. Unknown: "
        "a lead is there and nobody traced it. A circuit left out was not looked at."
    )
    between: Many[Id] = Field(default=(), description="The ends it runs between; left out, a and b.")
    out_at: ById[Id] = Field(
        default={}, description="For broken out, tapped and makes: from which end it comes out at which, such as b: c."
    )
    cavities: ById[Cavity] = Field(default={}, description="Its cavity at each end, such as a: 4.")
    lead: Name | None = Field(default=None, description="Colour or label of the lead it comes out on.")
    made_by: Id | None = Field(
        default=None, description="The module that makes it, by file name.", json_schema_extra=names("module")
    )
    known_by: Literal["meter", "looking", "printed"] | None = Field(
        default=None, description="A label is often wrong and a lead may end in an empty cavity: meter it."
    )


CircuitWay = TypeAliasType("CircuitWay", Annotated[Way, InAWord("does")])


class LoopBack(Part):
    """Circuits to be closed again because the job does not use them."""

    closes: Many[Circuit] = Field(min_length=1, description="The circuits that it closes.")
    how: Literal["supplied", "to be made"] = Field(description="Whether it came with the adapter.")


class LooksLike(Part):
    """Another one that is easily taken for it."""

    adapter: Id = Field(description="Which one.", json_schema_extra=names("adapter"))
    difference: Text = Field(description="The one line that tells them apart.")


class LoadResistor(Part):
    """The load in a load resistor lead or a converter."""

    value: Resistance = Field(description="Its value.")
    rated: Power | None = Field(default=None, description="What it may dissipate.")
    wired: Literal["in line", "parallel"] | None = Field(default=None, description="How it sits in the lead.")
    count: Count | None = Field(default=None, description="How many, one a channel.")


class Adapter(Named):
    """A wiring adapter of any sort, down to a lead with a plug on it."""

    adapter_kind: Literal[
        "plug-in",
        "reverse",
        "T",
        "tap",
        "loop-back",
        "amplifier bypass",
        "amplifier integration",
        "speaker lead",
        "load resistor lead",
        "line converter",
        "camera",
        "USB and aux",
        "aerial",
        "power",
        "chime speaker",
        "extension",
        "splitter",
    ] = Field(description="What sort of adapter.")
    ends: ById[End] = Field(default={}, description="Every end by its letter; a goes to the car, b to the radio.")
    circuits: ByCircuit[CircuitWay] = Field(
        default={}, description="What becomes of each circuit: one word, or fields where there is more to say."
    )
    loop_backs: Many[LoopBack] = Field(default=(), description="What has to be closed when a circuit is not used.")
    fuse: Current | Unknown | None = Field(default=None, description="The fuse inside; not there when there is none.")
    length: Length | None = Field(default=None, description="From end to end.")
    needs_module: Many[Id] | Unknown | None = Field(
        default=None,
        description="Modules it cannot do without, by file name; not needed when it works alone.",
        json_schema_extra=names("module"),
    )
    made_for: Many[MadeForAny] = Field(default=(), description="The vehicles and builds it is for.")
    looks_like: Many[LooksLike] = Field(default=(), description="What it must not be confused with.")
    known_faults: Many[Text] = Field(default=(), description="What is wrong with it as it comes out of its bag.")
    resistor: LoadResistor | Unknown | None = Field(default=None, description="The load in it, if it has one.")
    level: Voltage | None = Field(default=None, description="The signal it gives a factory amplifier.")
    signal: Literal["differential", "single-ended"] | None = Field(default=None, description="How it gives it.")
    turn_on: Literal["from the signal", "wants a lead", "gives a lead", "not needed"] | None = Field(
        default=None, description="What wakes whatever is behind it."
    )
    most_input: Voltage | None = Field(default=None, description="The most a line converter takes.")
    supply: Voltage | None = Field(default=None, description="What it gives a camera; some want about 6 V.")
    trigger: Name | None = Field(default=None, description="What makes a camera come on.")
    feed_from: Name | None = Field(default=None, description="Where the feed of an amplified aerial comes from.")
    sockets: Many[Name] = Field(default=(), description="The factory sockets it keeps.")
