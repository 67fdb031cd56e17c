"""An amplifier as it lies on the bench: its room, its channels, the lowest load it drives, and what wakes it."""

from typing import Literal

from pydantic import Field

from bezelbook.kinds.record import Count, Many, Named, Part, Text, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Current, Length, Power, Resistance, Size, Voltage
from bezelbook.values.wire_size import WireSize
from bezelbook.values.words import Unknown


class Gives(Part):
    """What one channel gives into one load."""

    watts: Power = Field(description="Each channel, continuous, not peak.")
    load: Resistance = Field(description="Into which load.")
    volts: Voltage | None = Field(default=None, description="At which supply.")
    channels: Count | None = Field(default=None, description="How many channels give it at once.")
    bridged: Literal["single", "bridged"] | None = Field(default=None, description="One channel, or two as one.")


class Input(Part):
    """A way in for sound."""

    level: Literal["high", "low", "digital"] = Field(description="Speaker level, line level, or data.")
    most: Voltage | None = Field(default=None, description="The most it takes.")
    wakes: Literal["there", "not there"] | None = Field(
        default=None, description="Whether a signal here turns the amplifier on."
    )
    own_load: Resistance | Unknown | None = Field(
        default=None, description="The load it puts on a factory amplifier; not there when it puts none."
    )


class Amplifier(Named):
    """An amplifier, added or factory. Where one sits in a car and what its channels feed is seen, so it is a note."""

    origin: Literal["added", "factory"] = Field(description="Whether the shop adds it or the car came with it.")
    length: Size | None = Field(default=None, description="Longest side of its case.")
    width: Size | None = Field(default=None, description="Across.")
    height: Size | None = Field(default=None, description="How high it stands.")
    plug_allowance: Size | None = Field(default=None, description="Room beyond the case for its plugs and their bend.")
    plugs_leave: Many[Literal["one end", "both ends", "one side", "both sides", "top"]] = Field(
        default=(), description="Where that room is needed."
    )
    plugs: Many[Id] = Field(
        default=(), description="The connectors on it, by file name.", json_schema_extra=names("connector")
    )
    channels: Count | None = Field(default=None, description="How many channels.")
    power: Many[Gives] = Field(default=(), description="What its channels give, load by load.")
    least_load: Resistance | None = Field(default=None, description="The lowest load on one channel.")
    least_load_bridged: Resistance | Unknown | None = Field(
        default=None, description="The lowest load on two channels bridged; does not apply when they cannot be."
    )
    amplifier_class: Literal["switching", "linear"] | None = Field(
        default=None, description="Switching wastes about a fifth as heat, linear about half."
    )
    inputs: Many[Input] = Field(default=(), description="The ways in for sound.")
    network: Literal["none", "bus", "optical ring", "digital line"] | None = Field(
        default=None, description="The network that a factory amplifier wants, as printed on it."
    )
    fuses: Current | None = Field(default=None, description="All the fuses on it added up.")
    largest_wire: WireSize | None = Field(default=None, description="The thickest power wire its terminal takes.")
    heat_clearance: Length | None = Field(default=None, description="Air to leave round its fins.")
    air_path: Text | None = Field(default=None, description="Which way its air goes in and out.")
