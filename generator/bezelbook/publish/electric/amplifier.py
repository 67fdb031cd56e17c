"""What an amplifier's page says of the loads it may see, of what it draws, and of the wire and fuse that want."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.amplifier.record import Amplifier
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.electric.wording import amps_words, volts_words
from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.conductor import Conductor, conductor
from bezelbook.reasoning.electric.current import Draw, draw
from bezelbook.reasoning.electric.drop import drop
from bezelbook.reasoning.electric.fuse import USUAL, fuse
from bezelbook.reasoning.electric.gauge import gauge_words
from bezelbook.reasoning.electric.least_load import Least, Sight, may_see, ohms
from bezelbook.reasoning.electric.speaker import coil, coil_ways
from bezelbook.reasoning.electric.wiring import in_parallel, in_series

RUNS = (2, 3, 4, 5, 6, 8)
THINNEST_FIRST = sorted(USUAL, reverse=True)


@dataclass(frozen=True, slots=True)
class LoadRow:
    """One load: what it comes to, how it comes about, and whether one channel or two bridged may see it."""

    load: str
    wired: str
    speakers: str
    single: Sight
    bridged: Sight


@dataclass(frozen=True, slots=True)
class RunRow:
    """A run of so many metres, there and back: the thinnest usual wire for it, its drop and its fuse; and in clad."""

    metres: int
    wire: str
    drops: str
    fuse: str
    clad: str


@dataclass(frozen=True, slots=True)
class AmplifierPart:
    """What an amplifier's page shows; `runs` is empty when its power is not looked, and `unread` names the speakers."""

    rows: tuple[LoadRow, ...]
    unread: tuple[str, ...]
    draw: str
    asks: tuple[str, ...]
    runs: tuple[RunRow, ...]


def amplifier_part(book: KnowledgeBase, amplifier: Amplifier) -> AmplifierPart:
    """The loads that the book's speakers make on it, and the wire and fuse for what it draws."""
    drawn = draw(amplifier)
    return AmplifierPart(
        tuple(_rows(amplifier, [*book.speakers.values()])),
        tuple(one.name for one in book.speakers.values() if coil(one) is None),
        _draw_words(drawn),
        tuple(_asks(amplifier, drawn)),
        tuple(_run(drawn, metres) for metres in RUNS) if drawn else (),
    )


def _rows(amplifier: Amplifier, speakers: Sequence[Speaker]) -> Iterator[LoadRow]:
    """From the highest load to the lowest: one speaker, and two alike of those with one coil."""
    least = Least(amplifier.least_load, amplifier.least_load_bridged)
    found: dict[tuple[Range, str], list[str]] = {}
    for speaker in speakers:
        for wired, load in _ways(speaker):
            found.setdefault((load, wired), []).append(speaker.name)
    for (load, wired), names in sorted(found.items(), key=lambda row: (-row[0][0].low, row[0][1])):
        said = ", ".join(sorted(names))
        yield LoadRow(ohms(load), wired, said, may_see(load, least, "single"), may_see(load, least, "bridged"))


def _ways(speaker: Speaker) -> Iterator[tuple[str, Range]]:
    several = (speaker.voice_coils or 1) > 1
    for way in coil_ways(speaker):
        yield (f"one, its coils {way.words}" if several else "one"), way.comes_to
        pair = [way.comes_to] * 2
        tail = f", the coils of each {way.words}" if several else ""
        yield f"two in parallel{tail}", in_parallel(pair)
        yield f"two in series{tail}", in_series(pair)


def _draw_words(drawn: Draw | None) -> str:
    if drawn is None:
        return "What it draws is not known, because its power is not written down: read it off its sheet, 2 min."
    return f"{amps_words(drawn.amps)} at 13.8 V, with a clean tone on every channel; music takes about a third of that."


def _asks(amplifier: Amplifier, drawn: Draw | None) -> Iterator[str]:
    yield from (drawn.unknown if drawn else ())
    if amplifier.largest_wire is None:
        yield "the thickest wire its terminal takes is not looked"
    else:
        yield f"its terminal takes up to {conductor(amplifier.largest_wire).words}"
    if amplifier.fuses is not None:
        yield f"the fuses on it add up to {amplifier.fuses.typed}"


def _run(drawn: Draw, metres: int) -> RunRow:
    wires = [conductor(gauge_words(gauge)) for gauge in THINNEST_FIRST]
    wire = next((one for one in wires if _will_do(drawn, one, one, metres)), None)
    clad = next(
        (one for one in wires if _will_do(drawn, one, conductor(one.size, "copper-clad aluminium"), metres)), None
    )
    if wire is None:
        return RunRow(metres, "no one wire: split the run", "", "", "")
    chosen = fuse(drawn.amps, wire)
    dropped = volts_words(drop(drawn.amps, wire, Fraction(metres)).volts)
    return RunRow(metres, wire.words, dropped, amps_words(Range(*[chosen.amps or drawn.amps.high] * 2)), _size(clad))


def _will_do(drawn: Draw, fused_as: Conductor, wire: Conductor, metres: int) -> bool:
    return fuse(drawn.amps, fused_as).says == "fine" and drop(drawn.amps, wire, Fraction(metres)).says == "fine"


def _size(wire: Conductor | None) -> str:
    return wire.size if wire else "none"
