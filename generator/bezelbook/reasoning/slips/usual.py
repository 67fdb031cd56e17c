"""What a shop ever meets: the least and the most of each number that a record or a note may hold."""

# All common practice, no source; outside them is asked about, never refused.

from collections.abc import Iterator
from typing import NamedTuple

from pydantic import BaseModel

from bezelbook.kinds.amplifier.record import Amplifier, Gives
from bezelbook.kinds.head_unit.record import HeadUnit, SideScrew
from bezelbook.kinds.mount.record import Mount, Presents
from bezelbook.kinds.note.fitting import LoadResistor, Took
from bezelbook.kinds.note.record import Bench
from bezelbook.kinds.note.speaker_place import FactorySpeaker
from bezelbook.kinds.note.state import Sizes
from bezelbook.kinds.pieces import HolePattern, Screws
from bezelbook.kinds.speaker.record import Bolts, Speaker
from bezelbook.kinds.supply.record import Fastener, Foam, Resistor
from bezelbook.values.quantity import Quantity

Path = tuple[str | int, ...]
MM, OHM, WATT, SECOND, AMP, VOLT = 1_000_000, 1_000_000, 1_000_000, 1, 1_000_000, 1_000_000


class Usual(NamedTuple):
    """The least and the most that is usual, in base units, and both in the words of the trade."""

    low: int
    high: int
    words: str


def _usual(low: str, high: str, unit: int, name: str) -> Usual:
    tenths = [int(end.replace(".", "")) * unit // (10 if "." in end else 1) for end in (low, high)]
    return Usual(tenths[0], tenths[1], f"{low} to {high} {name}")


CHASSIS_DEPTH = _usual("20", "220", MM, "mm")
WIDE = _usual("40", "300", MM, "mm")
HIGH = _usual("25", "200", MM, "mm")
SPEAKER_DEPTH = _usual("8", "200", MM, "mm")
HOLE = _usual("30", "300", MM, "mm")
CIRCLE = _usual("70", "320", MM, "mm")
SPACER = _usual("3", "60", MM, "mm")
FOAM_THICK = _usual("0.8", "50", MM, "mm")
FOAM_WIDE = _usual("3", "50", MM, "mm")
SHANK = _usual("3", "12", MM, "mm")
SCREW = _usual("6", "60", MM, "mm")
SIDE_SCREW = _usual("3", "60", MM, "mm")
IMPEDANCE = _usual("1", "16", OHM, "ohm")
DC = _usual("0.8", "14", OHM, "ohm")
LOAD_RESISTOR = _usual("4", "330", OHM, "ohm")
RATED = _usual("2", "100", WATT, "W")
MINUTES = _usual("5", "900", 60 * SECOND, "min")
AMPS = _usual("0.5", "300", AMP, "A")
SUPPLY = _usual("10", "16", VOLT, "V")

LIMITS: dict[type[BaseModel], dict[str, Usual]] = {
    HeadUnit: {
        "body_depth": CHASSIS_DEPTH,
        "body_width": WIDE,
        "body_height": HIGH,
        "nose_width": WIDE,
        "nose_height": HIGH,
        "least_load": IMPEDANCE,
        "most_current": AMPS,
        "fuse": AMPS,
    },
    SideScrew: {"longest": SIDE_SCREW},
    Speaker: {
        "mounting_depth": SPEAKER_DEPTH,
        "bottom_mount_depth": SPEAKER_DEPTH,
        "cut_out": HOLE,
        "cut_out_short": HOLE,
        "basket": HOLE,
        "basket_short": HOLE,
        "impedance": IMPEDANCE,
        "dc_resistance": DC,
    },
    Bolts: {"circle": CIRCLE, "circle_least": CIRCLE, "circle_most": CIRCLE},
    HolePattern: {"circle": CIRCLE},
    Mount: {
        "basket": HOLE,
        "basket_short": HOLE,
        "inner": HOLE,
        "inner_short": HOLE,
        "tabs_in": HOLE,
        "tabs_out": HOLE,
        "longest_screw": SCREW,
    },
    Presents: {"width": WIDE, "height": HIGH, "nose_width": WIDE, "nose_height": HIGH},
    Screws: {"length": SCREW},
    Foam: {"width": FOAM_WIDE, "free_thickness": FOAM_THICK},
    Fastener: {"shank": SHANK, "hole": SHANK, "length": SCREW},
    Resistor: {"value": LOAD_RESISTOR, "rated": RATED},
    LoadResistor: {"value": LOAD_RESISTOR, "rated": RATED},
    FactorySpeaker: {"impedance": IMPEDANCE, "dc_resistance": DC},
    Took: {"took": MINUTES},
    Amplifier: {"fuses": AMPS},
    Gives: {"volts": SUPPLY},
    Sizes: {"basket_short": HOLE, "bolt_circle": CIRCLE},
}


OF_PARTS = {
    name: usual
    for model in (Fastener, Foam, Mount, Speaker, HeadUnit)
    for name, usual in LIMITS[model].items()
    if name not in ("length", "width")  # which mean something else from part to part
}


def on_the_bench(note: Bench) -> Iterator[tuple[Path, str, Quantity, Usual]]:
    """Every reading of a bench note whose field has limits, whatever part it is of."""
    for index, reading in enumerate(note.readings):
        if reading.of in OF_PARTS:
            yield ("readings", index, "reads"), reading.of.replace("_", " "), reading.reads, OF_PARTS[reading.of]


def limited(record: BaseModel, path: Path = ()) -> Iterator[tuple[Path, str, Quantity, Usual]]:
    """Every number in a record that has limits: where it stands, its name in words, what it says, what is usual."""
    # A kit or a plate may be as thin as its sheet; a ring that thin would be none.
    if isinstance(record, Mount) and record.mount_kind == "spacer" and record.thickness is not None:
        yield (*path, "thickness"), "thickness", record.thickness, SPACER
    limits = {name: usual for model, of in LIMITS.items() if isinstance(record, model) for name, usual in of.items()}
    for name in type(record).model_fields:
        value = getattr(record, name)
        if isinstance(value, Quantity):
            if name in limits:
                yield (*path, name), name.replace("_", " "), value, limits[name]
        else:
            yield from _inside(value, (*path, name))


def _inside(value: object, path: Path) -> Iterator[tuple[Path, str, Quantity, Usual]]:
    if isinstance(value, BaseModel):
        yield from limited(value, path)
    elif isinstance(value, tuple):
        for index, one in enumerate(value):
            yield from _inside(one, (*path, index))
    elif isinstance(value, dict):
        for key, one in value.items():
            yield from _inside(one, (*path, key))
