"""What is seen and metered of a car's wiring: what cavities carry, how accessory comes, aerials, amplifier, sleep."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.pieces import Presence
from bezelbook.kinds.record import AsWhole, Count, Many, Name, Part, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Current, Minutes, Resistance, Voltage
from bezelbook.values.words import CIRCUITS, Sureness, Unknown


class CavityReading(Part):
    """One cavity and what was on it."""

    cavity: Annotated[int, Field(ge=1, le=200), AsWhole] = Field(description="Its number.")
    carries: Name = Field(
        description="What it carries: a circuit by its usual name, such as constant or left front +, or your words.",
        examples=[*CIRCUITS, "nothing"],
    )
    volts: Voltage | None = Field(default=None, description="What the meter said, in volts.")
    ohms: Resistance | Literal["open"] | None = Field(
        default=None, description="What the meter said, in ohms; open when it said nothing at all."
    )
    colour: Name | None = Field(default=None, description="Wire colour.")
    key: Literal["out", "off", "accessory", "on", "running"] | None = Field(
        default=None, description="Where the key was."
    )
    asleep: Literal["asleep", "awake"] | None = Field(default=None, description="Whether the bus was asleep.")
    sure: Sureness | None = Field(default=None, description="How you know, where it differs from the rest.")


class Channel(Part):
    """One output of a factory amplifier."""

    channel: Name = Field(description="Its name or its cavities.")
    feeds: Many[Id] = Field(default=(), description="The places it feeds, by the vehicle's own list.")
    band: Literal["full", "low", "mid", "high"] | None = Field(default=None, description="What part of the sound.")
    level: Voltage | None = Field(default=None, description="What the meter said, loud.")
    signal: Literal["differential", "single-ended"] | None = Field(default=None, description="How it comes.")


class SupplyFound(Part):
    """How 12 V and data reach the radio."""

    accessory_supply: Literal["wire", "data bus", "both", Unknown] | None = Field(
        default=None, description="How accessory comes. A red wire is not enough to say wire: meter it."
    )
    network: Literal["none", "bus", "optical ring", "digital line"] | None = Field(
        default=None, description="How sound or orders reach a factory amplifier."
    )
    bus_sleep: Minutes | None = Field(default=None, description="From key out until the bus sleeps.")
    rest_current: Current | None = Field(default=None, description="What the car draws once it sleeps.")
    ground_points: Many[Name] = Field(default=(), description="Places that make a good ground.")
    battery: Name | None = Field(default=None, description="Where the battery is.")


class Aerial(Part):
    """One aerial lead."""

    plug: Name | None = Field(
        default=None, description="The plug on it.", json_schema_extra=names("connector", in_words=True)
    )
    where: Name | None = Field(default=None, description="Where the aerial is.")
    amplified: Presence | None = Field(default=None, description="Whether it has an amplifier that wants feeding.")
    diversity: Presence | None = Field(default=None, description="Whether it is one of several that work together.")


class SoundSeen(Part):
    """What the car's sound is made of."""

    plug: Name | None = Field(
        default=None,
        description="The plug at this place: a connector's file name, or words.",
        json_schema_extra=names("connector", in_words=True),
    )
    plug_colour: Name | None = Field(default=None, description="Colour of its shell, as you would call it.")
    populated: Count | None = Field(default=None, description="How many cavities of it have a terminal here.")
    amplifier: Presence | None = Field(default=None, description="Whether a factory amplifier is there.")
    amplifier_is: Name | None = Field(
        default=None,
        description="Which one: its file name, or words.",
        json_schema_extra=names("amplifier", in_words=True),
    )
    amplifier_where: Name | None = Field(default=None, description="Where it sits.")
    speakers_counted: Count | None = Field(default=None, description="How many speakers the car has.")
    aerials: Many[Aerial] = Field(default=(), description="Its aerial leads.")
    sound_paths: Many[
        Literal[
            "chimes",
            "indicator sound",
            "noise cancelling",
            "engine sound",
            "emergency call",
            "pedestrian warning",
            "parking sensors",
        ]
    ] = Field(default=(), description="Other sounds that go through the radio or its speakers.")
