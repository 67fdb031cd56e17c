"""A speaker as it lies on the bench: how deep, through which hole, on which screws, and the load it is."""

from typing import Annotated, Literal

from pydantic import Field

from bezelbook.kinds.pieces import Filter, HolePattern
from bezelbook.kinds.record import AsWhole, Name, Named, Part
from bezelbook.values.clock import Clock
from bezelbook.values.measures import Power, Resistance, Sensitivity, Size
from bezelbook.values.words import Unknown


class Bolts(HolePattern):
    """Its own screw holes, and how far slots let them move."""

    circle_least: Size | None = Field(default=None, description="The smallest bolt circle that its slots reach.")
    circle_most: Size | None = Field(default=None, description="The largest bolt circle that its slots reach.")


class Terminals(Part):
    """Where its leads go on."""

    at: Clock | None = Field(default=None, description="Where they sit, seen from the front, 12 on top.")
    width: Size | None = Field(default=None, description="Width of a blade; the wider one where they differ.")
    protrusion: Size | None = Field(default=None, description="How far they stand out past the basket, sideways.")


class Speaker(Named):
    """A speaker. Each size says caliper or printed, and none of them is the size it is sold as."""

    speaker_kind: Literal["coaxial", "component", "full range", "mid", "tweeter", "subwoofer"] = Field(
        description="What sort of speaker."
    )
    nominal: Name = Field(description="The size it is sold as, such as 6 1/2 in. A name: no sum is made with it.")
    shape: Literal["round", "oval", "square", "D"] | None = Field(default=None, description="Shape of its basket.")
    cut_out: Size | None = Field(default=None, description="The hole it needs: across, or the long way of an oval.")
    cut_out_short: Size | None = Field(default=None, description="The short way of the hole, for an oval.")
    basket: Size | None = Field(default=None, description="The basket below its flange: across, or the long way.")
    basket_short: Size | None = Field(default=None, description="The short way of the basket, for an oval.")
    flange: Size | None = Field(default=None, description="The flange that covers the hole: across, or the long way.")
    flange_short: Size | None = Field(default=None, description="The short way of the flange, for an oval.")
    flange_thickness: Size | None = Field(default=None, description="How thick its flange is.")
    flat: Clock | None = Field(default=None, description="Where its flange is cut flat, if it is.")
    mounting_depth: Size | None = Field(
        default=None, description="From under the flange to the furthest back of magnet and terminals."
    )
    bottom_mount_depth: Size | None = Field(
        default=None, description="The same from the top of the flange, for one that is put in from behind."
    )
    magnet: Size | None = Field(default=None, description="Diameter of the magnet at its back.")
    magnet_shape: Literal["straight", "tapered"] | None = Field(
        default=None, description="A straight one meets the glass with its corner first."
    )
    front_height: Size | None = Field(
        default=None, description="What stands out in front at rest, from under the flange: surround, tweeter bridge."
    )
    excursion: Size | None = Field(default=None, description="How much further out the cone comes when it plays.")
    bolts: Bolts | None = Field(default=None, description="Its screw holes.")
    terminals: Terminals | None = Field(default=None, description="Where its leads go on.")
    impedance: Resistance | None = Field(default=None, description="Nominal, of one voice coil.")
    dc_resistance: Resistance | None = Field(
        default=None, description="What a meter reads across one coil; a little less than nominal."
    )
    voice_coils: Annotated[int, Field(ge=1, le=4), AsWhole] | None = Field(default=None, description="How many coils.")
    power: Power | None = Field(default=None, description="Continuous, not peak.")
    sensitivity: Sensitivity | None = Field(default=None, description="At one watt and one metre.")
    filter_supplied: Filter | Unknown | None = Field(default=None, description="The filter in its box.")
    filter_needed: Filter | Unknown | None = Field(
        default=None, description="The filter without which it dies; not needed when it takes everything."
    )
    mesh: Literal["comes off", "fixed", "not there"] | None = Field(default=None, description="Its own grille mesh.")
    ears: Literal["whole", "cut", "not there"] | None = Field(
        default=None, description="Guides or ears on its flange, on the one that was measured."
    )
