"""What a standing note says of the room for a speaker, written as bounds."""

from collections.abc import Iterable, Iterator

from bezelbook.kinds.note.record import Measured, RoomReading, Tried
from bezelbook.reasoning.bounds import STRICT, Case, Constraint, Either, Rise, Under, exactly
from bezelbook.reasoning.cells import between
from bezelbook.reasoning.claims import one_of, reading_span
from bezelbook.reasoning.evidence import ANY_CUT
from bezelbook.reasoning.speakers.cells import (
    FIXED,
    GLASS,
    MountHole,
    RoomSize,
    SpeakerCell,
    SpeakerDemand,
    SpeakerFrame,
    SpeakerSetting,
    SpeakerSize,
    demands,
    hole_cells,
    met,
)
from bezelbook.reasoning.speakers.evidence import DEPTHS, SpeakerStanding, refused_reading
from bezelbook.reasoning.speakers.needs import SpeakerNeeds, needs_of_note
from bezelbook.reasoning.speakers.stacks import BARE
from bezelbook.values.span import Span, around

SIZES_BY_REASON: dict[str, tuple[RoomSize, ...]] = {
    "depth": ("fixed", "glass"),
    "glass": ("glass",),
    "grille": ("front",),
    "width": ("long way", "short way"),
    "height": ("long way", "short way"),
}
READ_AS: dict[str, RoomSize] = {
    FIXED: "fixed",
    GLASS[0]: "glass",
    GLASS[1]: "glass",
    "front clearance": "front",
    "cut-out long way": "long way",
    "cut-out short way": "short way",
}


def claim(frame: SpeakerFrame, one: SpeakerStanding, varying: frozenset[str]) -> tuple[Constraint, ...]:
    """The bounds that a standing note sets; none when it says nothing that could be compared.

    The sizes of a speaker whose key is in `varying` are numbers of their own, shared by all notes about it; for any
    other, the end of its ± at which the note is certainly true is used. Where the worst point of the glass's travel
    was read (`frame.travel_read`), a reading of the glass fully down is of a size of its own that is no less.
    """
    note = one.note
    if one.stack is None:
        return ()
    settings = [SpeakerSetting(build, one.stack, one.cut, one.tabs, one.glass) for build in one.builds]
    if isinstance(note, Measured):
        return one_of(_readings(frame, note, setting) for setting in settings)
    needs = needs_of_note(frame.book, note)
    if note.verdict == "does not":
        return _refused(frame, note, needs, varying, settings)
    return one_of(
        Case(fit(demands(frame, needs, setting), needs, varying) + rises, eithers)
        for setting in settings
        for rises, eithers in [_gap(frame, note, needs, _own_cut(note, setting))]
    )


def fit(wanted: Iterable[SpeakerDemand], needs: SpeakerNeeds, varying: frozenset[str]) -> tuple[Rise, ...]:
    """The room meets every one of these demands."""
    return tuple(_at_least(demand, needs, varying) for demand in wanted)


def misfit(wanted: Iterable[SpeakerDemand], needs: SpeakerNeeds, varying: frozenset[str]) -> tuple[Either, ...]:
    """The room falls short of at least one of these demands; no bound when a need among them has no known end."""
    options = [_short_of(demand, needs, varying) for demand in wanted]
    known = tuple(option for option in options if option is not None)
    return (Either(known),) if len(known) == len(options) else ()


def blamed(note: Tried, wanted: Iterable[SpeakerDemand]) -> tuple[SpeakerDemand, ...]:
    """The demands of which a note says that one was not met; without a reason it may have been any."""
    named = SIZES_BY_REASON[note.reason] if note.reason else None
    return tuple(demand for demand in wanted if named is None or demand.size in named)


def _refused(
    frame: SpeakerFrame, note: Tried, needs: SpeakerNeeds, varying: frozenset[str], settings: list[SpeakerSetting]
) -> tuple[Constraint, ...]:
    named = [blamed(note, demands(frame, needs, setting)) for setting in settings]
    if not all(named):
        return ()  # what stopped it is not among what is known to be there, so that it says nothing of the rest
    plain = misfit([demand for wanted in named for demand in wanted], needs, varying)
    gaps = [_gap(frame, note, needs, _own_cut(note, setting)) for setting in settings]
    if not any(rises for rises, _ in gaps):
        return plain
    return one_of(
        Case(rises, (*misfit(wanted, needs, varying), *eithers))
        for wanted, (rises, eithers) in zip(named, gaps, strict=True)
    )


def _own_cut(note: Tried, setting: SpeakerSetting) -> SpeakerSetting:
    """By so much is true only in the very state it was seen in: where that is not said, only that car had that room."""
    if note.cut and (note.tabs or not setting.stack.has_tabs) and note.cut != ANY_CUT:
        return setting
    return setting._replace(cut=f"{ANY_CUT} ({note.id})")


def _at_least(demand: SpeakerDemand, needs: SpeakerNeeds, varying: frozenset[str]) -> Rise:
    key = needs.key_of(demand.need)
    if key in varying:
        return Rise(demand.cell, SpeakerSize(key, demand.need), -exactly(demand.shift))
    span = needs.spans[demand.need]
    return Rise(demand.cell, None, exactly((span.low or 0) - demand.shift) + (0 if span.closed else STRICT))


def _short_of(demand: SpeakerDemand, needs: SpeakerNeeds, varying: frozenset[str]) -> Under | None:
    key = needs.key_of(demand.need)
    if key in varying:
        return Under(demand.cell, SpeakerSize(key, demand.need), -exactly(demand.shift))
    span = needs.spans[demand.need]
    return None if span.high is None else Under(demand.cell, None, exactly(span.high - demand.shift))


def _gap(
    frame: SpeakerFrame, note: Tried, needs: SpeakerNeeds, setting: SpeakerSetting
) -> tuple[tuple[Rise, ...], tuple[Either, ...]]:
    """By so much is a reading of the one room that the note's reason names, against the size of what was tried."""
    gap = note.short_by if note.verdict == "does not" else note.to_spare
    spots = blamed(note, demands(frame, needs, setting)) if note.reason in SIZES_BY_REASON else ()
    if gap is None or len(spots) != 1 or not needs.spans[spots[0].need].known or _unsaid_there(frame, note, spots[0]):
        return (), ()
    by = around(gap.base, gap.give if gap.give is not None else frame.book.shop.tools.none.base)
    need = needs.spans[spots[0].need]
    return _bounded(spots[0].cell, need.minus(by) if note.verdict == "does not" else need.plus(by), spots[0].shift)


def _unsaid_there(frame: SpeakerFrame, note: Tried, spot: SpeakerDemand) -> bool:
    """Whether the note leaves open in which state of the tabs, or to which of glass and steel, it gives its number."""
    if isinstance(spot.cell, MountHole):
        return spot.cell.tabs is not None and note.tabs is None
    return spot.size == "fixed" and "glass" in frame.rears and note.glass is None


def _bounded(cell: SpeakerCell, span: Span, shift: int) -> tuple[tuple[Rise, ...], tuple[Either, ...]]:
    """`cell` plus `shift` lies within the span."""
    bounds = between(cell, None, span.minus(Span(shift, shift)))
    rises = tuple(bound for bound in bounds if isinstance(bound, Rise))
    return rises, tuple(bound for bound in bounds if isinstance(bound, Either))


def _readings(frame: SpeakerFrame, note: Measured, setting: SpeakerSetting) -> Case:
    """All that a measuring note says in one build."""
    rises: tuple[Rise, ...] = ()
    eithers: tuple[Either, ...] = ()
    for reading in note.readings:
        for cell, shift in _read(frame, note, setting, reading):
            more, tops = _bounded(cell, reading_span(frame.book.shop.tools, reading), shift)
            rises, eithers = rises + more, eithers + tops
    return Case(rises, eithers)


def _read(
    frame: SpeakerFrame, note: Measured, setting: SpeakerSetting, reading: RoomReading
) -> Iterator[tuple[SpeakerCell, int]]:
    """The numbers that a reading bounds, with what an exactly known offset adds; a round hole is one both ways."""
    of = frame.vehicle.places.get(frame.place)
    if refused_reading(of.kind if of else None, reading, setting.stack, note.shape):
        return
    if reading.of in DEPTHS:
        at = setting if reading.datum == "bracket seat" else setting._replace(stack=BARE)
        yield met(at, "glass down" if frame.travel_read and reading.of == GLASS[0] else READ_AS[reading.of])
    ways: tuple[RoomSize, ...] = ("long way", "short way")
    for way in ways:
        if reading.of == "cut-out" or READ_AS.get(reading.of) == way:
            holes = hole_cells(setting, way)
            yield from ((cell, 0) for cell in holes if len(holes) == 1 and not _tabs_unsaid(note, cell))


def _tabs_unsaid(note: Measured, cell: SpeakerCell) -> bool:
    return isinstance(cell, MountHole) and cell.tabs is not None and note.tabs is None
