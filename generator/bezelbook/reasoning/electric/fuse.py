"""Which fuse protects a wire and still carries what is drawn."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, NamedTuple

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.conductor import Conductor
from bezelbook.values.decimals import decimals

# Up to 100 A as ISO 8820-3:2015 (types C, E and F) has them; the larger bolted ones are what shops stock.
RATINGS = tuple(
    Fraction(tenths, 10)
    for tenths in (
        *(10, 20, 30, 40, 50, 75, 100, 150, 200, 250, 300, 350, 400, 500, 600, 700, 800, 1000),
        *(1250, 1500, 1750, 2000, 2250, 2500, 3000),
    )
)


class Usual(NamedTuple):
    """The largest fuse in A on a copper wire: `sure` is what every shop would put in, `most` only on a short run."""

    sure: int
    most: int


# By gauge, copper, short run. Trade 4.9: common practice and no code table; the wire maker's figure rules.
USUAL: Mapping[int, Usual] = {
    16: Usual(10, 15),
    14: Usual(15, 20),
    12: Usual(20, 30),
    10: Usual(30, 40),
    8: Usual(50, 60),
    4: Usual(100, 150),
    2: Usual(150, 200),
    0: Usual(250, 300),
}

Says = Literal["fine", "only on a short run", "the wire is too thin", "unknown"]
MAKER = "the wire maker's figure rules"


@dataclass(frozen=True, slots=True)
class Fusing:
    """The fuse in A for a draw on a wire, None when there is none; `says` whether the wire may carry it."""

    amps: Fraction | None
    says: Says
    why: str


def largest(wire: Conductor) -> Usual | None:
    """The largest usual fuse on a copper wire: that of its gauge, or of the next thinner one that has a figure.

    None for wire that is not known to be copper: clad carries less, and nobody here has a figure for it.
    """
    if wire.metal != "copper":
        return None
    known = [gauge for gauge in USUAL if wire.gauge is not None and gauge >= wire.gauge]
    return USUAL[min(known)] if known else None


def fuse(amps: Range, wire: Conductor) -> Fusing:
    """The smallest standard fuse that carries the most that is drawn, and whether it is one the wire may carry."""
    usual = largest(wire)
    rating = next((one for one in RATINGS if one >= amps.high), None)
    if rating is None:
        return Fusing(None, "the wire is too thin", f"no usual fuse carries {decimals(amps.high, 0)} A: split the run")
    if usual is None:
        return Fusing(rating, "unknown", f"no usual fuse is known for {wire.size} {wire.metal or 'wire'}: {MAKER}")
    return Fusing(rating, *on_wire(rating, usual))


def on_wire(rating: Fraction, usual: Usual) -> tuple[Says, str]:
    """Whether a fuse of so many A is one that a wire with this usual largest fuse may carry, and why."""
    if rating <= usual.sure:
        return "fine", f"the wire carries up to {usual.sure} A; {MAKER}"
    if rating <= usual.most:
        return "only on a short run", f"{usual.sure} A for sure, {usual.most} A at most; {MAKER}"
    return "the wire is too thin", f"no more than {usual.most} A on this wire"
