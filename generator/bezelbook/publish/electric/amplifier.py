"""What an amplifier's page says of the loads it may see, of what it draws, and of the wire and fuse that want."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.amplifier.record import Amplifier
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.electric.wording import amps_words, volts_words
from bezelbook.publish.wording import NUMBERS
from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.conductor import Conductor, conductor
from bezelbook.reasoning.electric.current import Draw, draw
from bezelbook.reasoning.electric.drop import drop
from bezelbook.reasoning.electric.fuse import USUAL, fuse
from bezelbook.reasoning.electric.gauge import gauge_words
from bezelbook.reasoning.electric.least_load import How, Least, Sight, limit_look, may_see, ohms
from bezelbook.reasoning.electric.speaker import coil, coil_ways
from bezelbook.reasoning.electric.wiring import in_parallel, in_series
from bezelbook.values.quantity import Quantity

RUNS = (2, 3, 4, 5, 6, 8)
HOWS: tuple[How, How] = ("single", "bridged")
UNREAD = "load not looked"

Sorts = Mapping[str, Sequence[Speaker]]
THINNEST_FIRST = sorted(USUAL, reverse=True)


@dataclass(frozen=True, slots=True)
class LoadRow:
    """One load: what it comes to, whether one channel or two bridged may see it, and in which ways it comes about."""

    load: str
    single: Sight
    bridged: Sight
    made_by: tuple[str, ...]


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
    """What an amplifier's page shows; `runs` is empty when its power is not looked.

    `limits` say what it is made for and where to look for what is blank, `sorts` which speakers of the book make which
    sort, the last of them those whose load nobody read.
    """

    limits: tuple[str, ...]
    rows: tuple[LoadRow, ...]
    sorts: tuple[tuple[str, str], ...]
    draw: str
    asks: tuple[str, ...]
    runs: tuple[RunRow, ...]


def amplifier_part(sorts: Sorts, amplifier: Amplifier) -> AmplifierPart:
    """The loads that the book's speakers make on it, and the wire and fuse for what it draws."""
    drawn = draw(amplifier)
    least = Least(amplifier.least_load, amplifier.least_load_bridged)
    return AmplifierPart(
        tuple(_limits(least)),
        tuple(_rows(least, [speakers[0] for name, speakers in sorts.items() if name != UNREAD])),
        tuple((name, ", ".join(one.name for one in speakers)) for name, speakers in sorts.items()),
        _draw_words(drawn),
        tuple(_asks(amplifier, drawn)),
        tuple(_run(drawn, metres) for metres in RUNS) if drawn else (),
    )


def sorts_of(book: KnowledgeBase) -> Sorts:
    """The speakers of the book by the load of a coil and the number of coils, in words; those not looked at last."""
    found: dict[str, list[Speaker]] = {}
    for speaker in sorted(book.speakers.values(), key=lambda one: one.name):
        found.setdefault(_sort(speaker), []).append(speaker)
    return dict(sorted(found.items(), key=lambda row: (row[0] == UNREAD, row[0])))


def _sort(speaker: Speaker) -> str:
    one = coil(speaker)
    if one is None:
        return UNREAD
    coils = speaker.voice_coils or 1
    return f"{ohms(one)} speaker" if coils == 1 else f"speaker of {NUMBERS[coils]} {ohms(one)} coils"


def _limits(least: Least) -> Iterator[str]:
    for how, limit in (("one channel", least.single), ("two bridged", least.bridged)):
        if isinstance(limit, Quantity):
            yield f"Made for {limit.typed} and more on {how}"
    sights = [may_see(None, least, how) for how in HOWS]
    yield from (sight.why.capitalize() for sight in sights if sight.says == "does not apply")
    blank = [
        how for how, limit in zip(HOWS, (least.single, least.bridged), strict=True) if limit in (None, "not looked")
    ]
    yield from (f"Its lowest load {how} is not looked: {limit_look(how)}" for how in blank)


def _rows(least: Least, speakers: Iterable[Speaker]) -> Iterator[LoadRow]:
    """From the highest load to the lowest: one speaker of each sort, and two alike."""
    found: dict[Range, list[str]] = {}
    for speaker in speakers:
        for made_by, load in _ways(speaker):
            found.setdefault(load, []).append(made_by)
    for load, ways in sorted(found.items(), reverse=True):
        yield LoadRow(
            ohms(load),
            may_see(load, least, "single"),
            may_see(load, least, "bridged"),
            tuple(sorted(ways, key=_pairs_last)),
        )


def _pairs_last(words: str) -> bool:
    return not words.startswith("one")


def _ways(speaker: Speaker) -> Iterator[tuple[str, Range]]:
    sort, several = _sort(speaker), (speaker.voice_coils or 1) > 1
    plural = sort.replace("speaker", "speakers", 1)
    for way in coil_ways(speaker):
        coils = f", coils {way.words}" if several else ""
        pair = [way.comes_to] * 2
        yield f"one {sort}{coils}", way.comes_to
        yield f"two {plural} in parallel{coils}", in_parallel(pair)
        yield f"two {plural} in series{coils}", in_series(pair)


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
        yield f"the fuses on it add up to {amplifier.fuses.typed}: a smaller one in the run goes first"


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
