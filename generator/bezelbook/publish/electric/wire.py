"""What the page of a wire says: what a metre resists, the fuse before it, and how far it reaches."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.supply.record import Wire
from bezelbook.publish.electric.wording import amps_words
from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.conductor import Conductor, conductor
from bezelbook.reasoning.electric.drop import MOST_VOLTS
from bezelbook.reasoning.electric.fuse import MAKER, fuse, largest
from bezelbook.values.decimals import decimals

AMPS = (5, 10, 20, 30, 40, 60, 80, 100)
# No car wants a longer run than this, in metres.
LONGEST = 20


@dataclass(frozen=True, slots=True)
class WirePart:
    """A wire in words: its size both ways, its resistance, its largest usual fuse, and how far it reaches."""

    size: str
    metre: str
    fuse: str
    rows: tuple[tuple[str, str, str], ...]


def wire_part(wire: Wire) -> WirePart | None:
    """What a wire carries; None when its size is no size, such as 0 mm2."""
    if _is_nothing(wire.size):
        return None
    made = conductor(wire.size, wire.metal)
    return WirePart(made.words, _metre(made, wire), _fuse(made), tuple(_rows(made)))


def _is_nothing(size: str) -> bool:
    return not size.endswith("AWG") and not set(size.partition("mm")[0]) & set("123456789")


def _metre(made: Conductor, wire: Wire) -> str:
    low, high = (decimals(one * 1000, 2) for one in made.per_metre)
    said = low if low == high else f"{low} to {high}"
    return f"{said} milliohm a metre at 20 °C{'' if wire.metal else '; whether it is copper or clad is not looked'}"


def _fuse(made: Conductor) -> str:
    usual = largest(made)
    if usual is None:
        clad = "" if made.metal == "copper" else " The usual figures are for copper, and clad carries less."
        return f"No usual fuse is known for it: {MAKER}.{clad}"
    return f"Largest fuse before it: {usual.sure} A, up to {usual.most} A on a short run; {MAKER}."


def _rows(made: Conductor) -> Iterator[tuple[str, str, str]]:
    for amps in map(Fraction, AMPS):
        fused = fuse(Range(amps, amps), made)
        if fused.says == "the wire is too thin":
            return
        reach = MOST_VOLTS / (amps * made.per_metre.high)
        if reach > LONGEST:
            continue
        rating = amps_words(Range(fused.amps, fused.amps)) if fused.amps else ""
        yield f"{decimals(amps, 0)} A", f"{decimals(reach - reach % Fraction(1, 10), 1)} m", f"{rating}: {fused.says}"
