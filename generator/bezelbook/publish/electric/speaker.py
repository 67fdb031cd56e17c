"""What a speaker's page says of the load it is, of what takes its place, and of the filter in its lead."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.pieces import Filter
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.reasoning.electric.amounts import Range, amount
from bezelbook.reasoning.electric.capacitor import corner, corner_words
from bezelbook.reasoning.electric.decibel import power_change
from bezelbook.reasoning.electric.least_load import ohm, ohms
from bezelbook.reasoning.electric.speaker import coil, coil_ways, high_only
from bezelbook.reasoning.electric.wiring import in_parallel, in_series

# What car speakers are sold as.
USUAL_OHMS = (2, 3, 4, 6, 8)
FIRST_LOOK = "read it off the speaker, or meter a coil: the meter reads 0.8 to 0.9 of it, 2 min"


@dataclass(frozen=True, slots=True)
class SpeakerPart:
    """What a speaker's page shows: what it comes to, wired in which way; what changes in whose place; its filter."""

    loads: tuple[tuple[str, str], ...]
    unsaid: str
    instead: tuple[tuple[str, str], ...]
    filter: tuple[str, ...]


def speaker_part(speaker: Speaker) -> SpeakerPart:
    """The loads that one or two of it make, and what its filter does."""
    one = coil(speaker)
    unsaid = "" if speaker.voice_coils else "How many voice coils it has is not looked: the figures are for one coil."
    return SpeakerPart(
        tuple(_loads(speaker)),
        unsaid if one else f"Its load is not looked: {FIRST_LOOK}.",
        tuple(_instead(one.low)) if one and one.exact and speaker.voice_coils in (None, 1) else (),
        tuple(_filter(speaker, one)),
    )


def _loads(speaker: Speaker) -> Iterator[tuple[str, str]]:
    several = (speaker.voice_coils or 1) > 1
    for way in coil_ways(speaker):
        name = f"one, its coils {way.words}" if several else "one"
        yield name, ohms(way.comes_to)
        yield "two of that in parallel" if several else "two in parallel", ohms(in_parallel([way.comes_to] * 2))
        yield "two of that in series" if several else "two in series", ohms(in_series([way.comes_to] * 2))


def _instead(own: Fraction) -> Iterator[tuple[str, str]]:
    for other in map(Fraction, USUAL_OHMS):
        if other != own:
            yield f"in place of {ohm(other)}", power_change(other, own)


def _filter(speaker: Speaker, load: Range | None) -> Iterator[str]:
    supplied, needed = speaker.filter_supplied, speaker.filter_needed
    if high_only([supplied, needed]) or speaker.speaker_kind == "tweeter":
        yield (
            "Behind a capacitor it adds no load to the low notes. Where both play, count both: the lower figure is "
            "the one an amplifier's minimum is held against."
        )
    if isinstance(supplied, Filter) and supplied.capacitor and supplied.capacitor.base and load:
        acts = corner_words(load.low, amount(supplied.capacitor))
        yield f"The {supplied.capacitor.typed} in its lead acts from {acts} into {ohm(load.low)}."
        yield from _against(needed, corner(load.low, amount(supplied.capacitor)))
    if supplied == "not there" and isinstance(needed, Filter):
        yield "Nothing in its box protects it, and without a filter it dies: put one in before it plays."
    if speaker.speaker_kind == "tweeter" and needed is None:
        yield "The filter it needs is not looked: ask its sheet before it plays without one."


def _against(needed: object, acts: Range) -> Iterator[str]:
    if isinstance(needed, Filter) and needed.corner and needed.lets_through != "low":
        enough = acts.low >= amount(needed.corner)
        yield f"It wants {needed.corner.typed} or more: that is {'enough' if enough else 'too little'}."
