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

VERDICTS: tuple[Verdict, ...] = get_args(Verdict)
ANSWER_VERDICTS: tuple[AnswerVerdict, ...] = get_args(AnswerVerdict)
SURENESSES: tuple[Sureness, ...] = get_args(Sureness)
STRONG: tuple[Sureness, ...] = SURENESSES[:3]
SIDES: tuple[Side, ...] = get_args(Side)
NINTHS: tuple[Ninth, ...] = get_args(Ninth)
DATUMS: tuple[Datum, ...] = get_args(Datum)
WEIGHTS: tuple[Weight, ...] = get_args(Weight)
UNKNOWNS: tuple[Unknown, ...] = get_args(Unknown)
