"""What the channels of a car's own radio or amplifier see, as far as notes tell what hangs on them."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from bezelbook.kinds.note.record import Metered, Seen
from bezelbook.kinds.note.speaker_place import FactorySpeaker
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.electric import channel
from bezelbook.reasoning.electric.amounts import Range, above_zero
from bezelbook.reasoning.electric.channel import Hanging
from bezelbook.reasoning.electric.package import NOT_LOOKED, build_at
from bezelbook.reasoning.electric.speaker import high_only, nominal_from_meter
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.unknowns import Missing

METER = "meter at the speaker's plug, speaker off the loom, 3 min; a tweeter behind a capacitor reads open"
TRACE = "a tone on one speaker's leads, and listen which others play, 5 min"


@dataclass(frozen=True, slots=True)
class Look:
    """What one note says of the factory speaker at a place, in a build; `with_it` is None when nobody looked."""

    note: str
    place: str
    build: Build
    speaker: FactorySpeaker
    with_it: frozenset[str] | None


@dataclass(frozen=True, slots=True)
class FactoryChannel:
    """One channel: the places it feeds, what it sees, who says so, and what is unknown.

    `about` is what a meter's reading points at where nobody read the nominal. Where notes differ on a speaker's load
    the lower one counts until that is settled, and `differ` quotes them.
    """

    places: tuple[str, ...]
    build: Build
    driven_by: str
    hanging: tuple[Hanging, ...]
    sees: channel.Seen
    about: Range | None
    notes: tuple[str, ...]
    differ: tuple[str, ...]
    unknown: tuple[Missing, ...]


def factory_channels(book: KnowledgeBase, vehicle: Vehicle) -> tuple[FactoryChannel, ...]:
    """Every channel that a note tells of, in the vehicle's order of places; a place nobody looked at is in none."""
    looks = tuple(_looks(book, vehicle))
    order = [*vehicle.places, *sorted({look.place for look in looks} - set(vehicle.places))]
    found: dict[tuple[frozenset[str], Build], FactoryChannel] = {}
    for look in sorted(looks, key=lambda one: (order.index(one.place), one.build)):
        group = _group(look, looks)
        places = tuple(place for place in order if place in group) + tuple(sorted(group - set(order)))
        alike = [one for one in looks if one.place in group and _agree(one.build, look.build)]
        found.setdefault((group, look.build), _channel(places, look.build, alike))
    return tuple(found.values())


def _looks(book: KnowledgeBase, vehicle: Vehicle) -> Iterator[Look]:
    for note in unreplaced(book.notes_of(vehicle.id)):
        if isinstance(note, Seen) and note.factory_speaker is not None:
            said = note.factory_speaker
            alone = frozenset(said.together_with) if "together_with" in said.model_fields_set else None
            build = build_at(vehicle, note.place, "speakers", note.splits, note.year)
            yield Look(note.id, note.place, build, said, alone)
        elif isinstance(note, Metered):
            for place, others in _fed(note):
                build = build_at(vehicle, place, "speakers", note.splits, note.year)
                yield Look(note.id, place, build, FactorySpeaker(driven_by="factory amplifier"), others)


def _fed(note: Metered) -> Iterator[tuple[str, frozenset[str]]]:
    """Each place that a metered output feeds, and the others on the same output."""
    for output in note.channels:
        for place in output.feeds:
            yield place, frozenset(output.feeds) - {place}


def _agree(one: Build, other: Build) -> bool:
    """Whether two notes may be of one car, blanks matching nothing but blanks."""
    known = dict(other)
    return all(known.get(axis, value) == value for axis, value in one)


def _group(start: Look, looks: Iterable[Look]) -> frozenset[str]:
    """All places that hang together with this one, by any note of the same build."""
    pairs = [{one.place, *(one.with_it or ())} for one in looks if _agree(one.build, start.build)]
    group = {start.place}
    for _ in pairs:
        group = {place for pair in pairs if pair & group for place in pair}
    return frozenset(group)


def _channel(places: tuple[str, ...], build: Build, looks: Sequence[Look]) -> FactoryChannel:
    at = {place: [one for one in looks if one.place == place] for place in places}
    hanging = tuple(_hanging(place, at[place]) for place in places)
    traced = any(look.with_it is not None for look in looks)
    driven = sorted({look.speaker.driven_by for look in looks if look.speaker.driven_by})
    return FactoryChannel(
        places,
        build,
        " or ".join(driven) or NOT_LOOKED,
        hanging,
        channel.sees(hanging, nothing_else=traced),
        _about(looks) if len(places) == 1 else None,
        tuple(sorted({look.note for look in looks})),
        tuple(words for place in places for words in _differ(place, at[place])),
        tuple(_unknown(hanging, traced=traced)),
    )


def _hanging(place: str, looks: Sequence[Look]) -> Hanging:
    loads = _loads(looks)
    lowest = min(loads, default=None)
    return Hanging(place, lowest, bool(looks) and high_only([look.speaker.filter for look in looks]))


def _loads(looks: Sequence[Look]) -> list[Range]:
    loads = (above_zero(one.speaker.impedance) for one in looks)
    return list(dict.fromkeys(load for load in loads if load))


def _differ(place: str, looks: Sequence[Look]) -> Iterator[str]:
    if len(_loads(looks)) > 1:
        said = [f"{look.note} says {look.speaker.impedance.typed}" for look in looks if look.speaker.impedance]
        yield f"{place.replace('-', ' ')}: {', '.join(said)}"


def _about(looks: Sequence[Look]) -> Range | None:
    """What a meter's reading points at where nobody read the nominal off the speaker."""
    if _loads(looks):
        return None
    reads = [one.speaker.dc_resistance for one in looks]
    read = [found for one in reads if not isinstance(one, str) and (found := above_zero(one))]
    return nominal_from_meter(read[0]) if read else None


def _unknown(hanging: Iterable[Hanging], *, traced: bool) -> Iterator[Missing]:
    for one in hanging:
        if one.load is None:
            what = f"the load of the speaker at {one.where.replace('-', ' ')}"
            yield Missing(what, METER, "what the channel sees, and which amplifier may stand in for it")
    if not traced:
        yield Missing("what else hangs on this channel", TRACE, "a second speaker in parallel halves the load")
