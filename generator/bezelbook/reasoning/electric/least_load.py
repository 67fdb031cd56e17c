"""Whether an amplifier may see a load, single or bridged: fine, below the minimum, or unknown and why."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from bezelbook.reasoning.electric.amounts import Range, between
from bezelbook.reasoning.electric.wiring import each_side
from bezelbook.values.decimals import exact_or_about
from bezelbook.values.quantity import Quantity

Says = Literal["fine", "below the minimum", "unknown", "does not apply"]
How = Literal["single", "bridged"]


@dataclass(frozen=True, slots=True)
class Sight:
    """What an amplifier sees and whether it may; `look` is where to look when that is unknown, else empty."""

    says: Says
    why: str
    look: str = ""


@dataclass(frozen=True, slots=True)
class Least:
    """The lowest loads that an amplifier is made for, as its record has them; None is not looked."""

    single: Quantity | None
    bridged: Quantity | str | None


def may_see(load: Range | None, least: Least, how: How) -> Sight:
    """Whether a load in ohm, None when nobody knows it, is at or above the lowest that the amplifier is made for.

    A load that its ± leaves on both sides of the limit is unknown, as is one on an amplifier whose limit nobody read.
    """
    if how == "bridged" and isinstance(least.bridged, str) and least.bridged != "not looked":
        return Sight("does not apply", "it cannot be bridged")
    if load is None:
        return Sight("unknown", "the load is not known", "read it off the speakers, and see what else hangs there")
    limit = least.single if how == "single" else least.bridged
    if isinstance(limit, Quantity):
        return _against(load, between(limit), how)
    return _by_halves(load, least, how)


def _by_halves(load: Range, least: Least, how: How) -> Sight:
    """Without a printed bridged limit, one that is under half of the single limit a side is under it all the same."""
    if how == "bridged" and least.single is not None:
        half, floor = each_side(load), between(least.single)
        if half.high < floor.low:
            why = f"each side sees half, {ohms(half)}, and {ohms(floor)} is the lowest on one channel"
            return Sight("below the minimum", why)
    return Sight("unknown", f"its lowest load {how} is not looked", limit_look(how))


def _against(load: Range, limit: Range, how: How) -> Sight:
    why = f"{ohms(load)}, and {ohms(limit)} is the lowest it is made for {how}"
    if load.low >= limit.high:
        return Sight("fine", why)
    if load.high < limit.low:
        return Sight("below the minimum", why)
    return Sight("unknown", f"{why}: too near to tell", "ohmmeter across the leads, amplifier unplugged, 2 min")


def limit_look(how: How) -> str:
    """Where to look for an amplifier's lowest load."""
    return f"the lowest load {how}, printed on the amplifier or in its sheet, 2 min"


def ohms(load: Range) -> str:
    """A load in words: `2.67 ohm` with about before what two places do not hold, both ends where they differ."""
    if load.exact:
        return ohm(load.low)
    return f"{ohm(load.low)} to {ohm(load.high)}"


def ohm(value: Fraction) -> str:
    """One value in ohm in words."""
    return exact_or_about(value, 2, "ohm")
