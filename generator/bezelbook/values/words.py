"""The closed word lists of the trade, each as a type and as a tuple in the order that people say them."""

from typing import Literal, get_args

Verdict = Literal["goes in", "goes in if", "does not", "not tried"]
"""What a note says of a part in a place."""

AnswerVerdict = Literal["goes in", "goes in if", "too close", "does not", "nobody has tried", "argued over"]
"""What the book answers."""

Sureness = Literal["fitted", "dry-fitted", "measured", "eyeballed", "told", "worked out"]
"""How the author of a note knows, strongest first."""

Side = Literal["left", "right", "centre"]
"""Sides as they are sitting in the vehicle facing forward."""

Ninth = Literal["upper-left", "upper", "upper-right", "left", "centre", "right", "lower-left", "lower", "lower-right"]
"""One of the nine fields of an opening, seen from the seat."""

Datum = Literal[
    "sub-dash face",
    "kit seat",
    "finished bezel face",
    "door metal",
    "bracket seat",
    "inside face of panel",
]
"""The face a depth is measured from."""

Weight = Literal["stop", "look first", "tidy up"]
"""How much a finding matters to the job on the bench."""

Unknown = Literal["not looked", "not there", "not needed", "does not apply"]
"""The four ways in which a value is missing; a blank is `not looked`."""

Safety = Literal["none", "stored energy", "restraint near", "high voltage near"]
"""What could hurt someone at a place or a piece; the vehicle's service information rules."""

PlugSide = Literal["vehicle side", "unit side"]
"""Which half of a pair of plugs: the one on the car's loom, or the one on the radio or other device."""

PlugView = Literal["mating face", "wire entry"]
"""From which side cavities were counted; the one is the mirror image of the other."""

Edge = Literal["top", "bottom", "left", "right"]
"""A side of something looked at from the front."""

Circuit = Literal[
    "constant",
    "accessory",
    "ignition",
    "illumination",
    "dimmer",
    "ground",
    "amplifier turn-on",
    "aerial feed",
    "left front +",
    "left front -",
    "right front +",
    "right front -",
    "left rear +",
    "left rear -",
    "right rear +",
    "right rear -",
    "reverse",
    "park brake",
    "speed",
    "wheel buttons",
    "mute",
    "microphone",
    "camera",
    "camera supply",
    "USB",
    "bus",
]
"""A wire, or the signal on a bus, that a radio, an adapter or a module may need, pass or make."""

Function = Literal[
    "wheel buttons",
    "camera",
    "parking sensors",
    "chimes",
    "indicator sound",
    "reverse warning",
    "pedestrian warning",
    "emergency call",
    "hazard switch",
    "climate readout",
    "menus",
    "clock",
    "outlet",
    "USB",
    "phone",
    "microphone",
    "factory amplifier",
    "fader",
]
"""Something the car did before the job, and that a customer or the law expects it to do afterwards."""

Axis = Literal[
    "build",
    "package",
    "body",
    "hand",
    "display",
    "side",
    "mount",
    "tabs",
    "glass",
    "loom",
    "cut",
    "plugs",
    "datum",
    "tool",
    "view",
    "unit",
    "how sure",
    "which thing",
    "scope",
    "one is wrong",
]
"""What two notes may differ in, so that both are true; the last two words are for where nothing else explains it."""

VERDICTS: tuple[Verdict, ...] = get_args(Verdict)
ANSWER_VERDICTS: tuple[AnswerVerdict, ...] = get_args(AnswerVerdict)
SURENESSES: tuple[Sureness, ...] = get_args(Sureness)
STRONG: tuple[Sureness, ...] = SURENESSES[:3]
SIDES: tuple[Side, ...] = get_args(Side)
NINTHS: tuple[Ninth, ...] = get_args(Ninth)
DATUMS: tuple[Datum, ...] = get_args(Datum)
WEIGHTS: tuple[Weight, ...] = get_args(Weight)
UNKNOWNS: tuple[Unknown, ...] = get_args(Unknown)
SAFETIES: tuple[Safety, ...] = get_args(Safety)
PLUG_SIDES: tuple[PlugSide, ...] = get_args(PlugSide)
PLUG_VIEWS: tuple[PlugView, ...] = get_args(PlugView)
EDGES: tuple[Edge, ...] = get_args(Edge)
CIRCUITS: tuple[Circuit, ...] = get_args(Circuit)
FUNCTIONS: tuple[Function, ...] = get_args(Function)
AXES: tuple[Axis, ...] = get_args(Axis)
