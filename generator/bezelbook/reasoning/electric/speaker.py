"""What load a speaker is, whatever its coils, and whether it plays the low notes at all."""

from collections.abc import Sequence
from fractions import Fraction

from bezelbook.kinds.pieces import Filter
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.reasoning.electric.amounts import Range, above_zero
from bezelbook.reasoning.electric.wiring import Wiring, ways

# What a meter reads across a coil is 0.8 to 0.9 of its nominal load: trade 4.7, common practice without a source.
DC_LEAST, DC_MOST = Fraction(8, 10), Fraction(9, 10)


def coil(speaker: Speaker) -> Range | None:
    """The nominal load of one coil in ohm; None when it is not looked."""
    return above_zero(speaker.impedance)


def coil_ways(speaker: Speaker) -> tuple[Wiring, ...]:
    """Each even way to wire the coils of one speaker; none when a coil's load is not looked.

    A record that does not say how many coils there are is of a speaker with one, as nearly all are: it is said so.
    """
    one = coil(speaker)
    return ways(one, speaker.voice_coils or 1) if one else ()


def nominal_from_meter(reads: Range) -> Range:
    """What nominal load in ohm a meter's reading points at: worked out, so never a firm answer."""
    return Range(reads.low / DC_MOST, reads.high / DC_LEAST)


def high_only(filters: Sequence[object]) -> bool:
    """Whether one of these filters lets only the high notes through, so that it does not load the low ones."""
    return any(
        isinstance(one, Filter) and (one.lets_through == "high" or (one.capacitor is not None and not one.lets_through))
        for one in filters
    )
