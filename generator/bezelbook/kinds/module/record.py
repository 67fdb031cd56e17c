"""An interface module: what it makes out of a car's bus, how much of it, and what keeps working with it."""

from typing import Literal

from pydantic import Field

from bezelbook.kinds.circuits import ByCircuit, ByFunction
from bezelbook.kinds.pieces import MadeForAny
from bezelbook.kinds.record import Many, Name, Named, Part, Text, names
from bezelbook.values.ident import Id
from bezelbook.values.measures import Current, Minutes, Size, Voltage
from bezelbook.values.words import Circuit, Unknown


class Output(Part):
    """One circuit that it makes."""

    volts: Voltage | None = Field(default=None, description="At which level.")
    most: Current | None = Field(default=None, description="The most it gives; what draws more wants a relay.")


class Setting(Part):
    """One of its switches or menu lines. How they were left in a car stands in the note of that job."""

    name: Name = Field(description="As printed: switch 1, or the line in the menu.")
    does: Text = Field(description="What it does, position by position.")


class Module(Named):
    """A box between car and radio. What it was set to, and where it was put, is written back after each job."""

    module_kind: Literal["data", "digital audio", "wheel buttons", "camera", "chime"] = Field(
        description="What sort of module."
    )
    made_for: Many[MadeForAny] = Field(default=(), description="The vehicles and builds it is for.")
    needs_adapter: Many[Id] | Unknown | None = Field(
        default=None,
        description="Adapters it cannot do without, by file name; not needed when it plugs in by itself.",
        json_schema_extra=names("adapter"),
    )
    needs: Many[Circuit] = Field(default=(), description="The circuits it wants from the car.")
    outputs: ByCircuit[Output] = Field(default={}, description="The circuits it makes, and how much of each.")
    keeps: ByFunction[Literal["kept", "partly", "lost", "not looked", "does not apply"]] = Field(
        default={}, description="What goes on working with it, function by function."
    )
    settings: Many[Setting] = Field(default=(), description="What there is to set.")
    learns: Text | None = Field(default=None, description="How it is taught, such as button by button on the wheel.")
    network: Literal["bus", "optical ring", "digital line"] | None = Field(
        default=None, description="The network that it takes sound or orders from."
    )
    volume: Literal["fixed", "variable"] | None = Field(
        default=None, description="Whether the sound it gives follows the factory volume."
    )
    programming: Minutes | Unknown | None = Field(
        default=None, description="Time to program it before it goes in; not needed when it comes ready."
    )
    keep_alive: Minutes | Unknown | None = Field(
        default=None, description="How long its accessory stays on after the key is out, as printed or on the bench."
    )
    ends_on_door: Literal["ends with a door", "goes on"] | None = Field(
        default=None, description="Whether opening a door ends that."
    )
    sleep_current: Current | None = Field(default=None, description="What it draws asleep, as printed or on the bench.")
    asleep_after: Minutes | None = Field(default=None, description="How long until it sleeps.")
    length: Size | None = Field(default=None, description="Longest side of its case.")
    width: Size | None = Field(default=None, description="Across.")
    height: Size | None = Field(default=None, description="How high it is.")
