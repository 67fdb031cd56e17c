"""The shop: its name, the room it likes to leave, and how far it trusts each tool."""

from typing import Annotated, Literal

from pydantic import Field, StringConstraints

from bezelbook.kinds.record import AsWhole, ById, Name, Part, Record, Text
from bezelbook.values.measures import Length
from bezelbook.values.quantity import Quantity, read_quantity


def _mm(text: str) -> Quantity:
    return read_quantity(text, "length")


class Clearances(Part):
    """Room the shop likes to leave over; wanting it never turns an answer into a no."""

    width: Length = Field(default=_mm("1 mm"), description="To leave in width between a body and its opening.")
    height: Length = Field(default=_mm("0.5 mm"), description="To leave in height between a body and its opening.")
    depth: Length = Field(default=_mm("0 mm"), description="To leave behind a chassis and its plug.")
    glass: Length = Field(default=_mm("5 mm"), description="To leave to glass that moves.")
    fixed: Length = Field(default=_mm("3 mm"), description="To leave to anything that does not move.")
    grille: Length = Field(default=_mm("3 mm"), description="To leave in front, above a speaker's excursion.")


class Tools(Part):
    """The ± that a reading has when its author typed none, tool by tool."""

    bench_caliper: Length = Field(default=_mm("0.2 mm"), description="Caliper on a hard edge, on the bench.")
    caliper: Length = Field(default=_mm("0.5 mm"), description="Caliper on a hard edge, in the car.")
    depth_gauge: Length = Field(default=_mm("1 mm"), description="Depth gauge or slim rule with a stop.")
    tape: Length = Field(default=_mm("3 mm"), description="Tape measure.")
    wire: Length = Field(default=_mm("5 mm"), description="Stiff wire or cable tie poked to what stops it.")
    template: Length = Field(default=_mm("1 mm"), description="Card template, traced.")
    putty: Length = Field(default=_mm("1 mm"), description="Putty squeezed, then measured.")
    test_box: Length = Field(default=_mm("1 mm"), description="Box of known size, offered up.")
    none: Length = Field(default=_mm("5 mm"), description="Measured, but no tool named.")


class Shop(Record):
    """The one file that says whose book this is."""

    name: Name = Field(description="The shop's name, as it stands on the pages.")
    format: Annotated[int, Field(ge=1, le=9999), AsWhole] = Field(description="Which shape of book this is: 1.")
    about: Text | None = Field(default=None, description="A line under the name, such as that the shop is invented.")
    units_first: Literal["mm", "in"] = Field(default="mm", description="Which unit the pages show first.")
    clearances: Clearances = Field(default=Clearances(), description="Room the shop likes to leave over.")
    tools: Tools = Field(default=Tools(), description="How far the shop trusts each tool.")
    people: ById[Name] = Field(default={}, description="Initials or role, and what that person does. No full names.")
    new_file_address: Annotated[str, StringConstraints(min_length=1, max_length=500)] | None = Field(
        default=None, description="Address template for writing a new file in the shop's own file host."
    )
