"""What a standing note says of the room, written as bounds."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import product
from math import prod
from types import MappingProxyType
from typing import get_args

from bezelbook.kinds.note.record import Measured, RoomReading, Tried
from bezelbook.kinds.shop.record import Tools
from bezelbook.reasoning.bounds import STRICT, Case, Constraint, Either, OneOf, Rise, Under, exactly
from bezelbook.reasoning.cells import (
    Cell,
    Demand,
    Frame,
    Loom,
    PartSize,
    Setting,
    between,
    demands,
    depth_cell,
    hole_cell,
)
from bezelbook.reasoning.evidence import ANY_CUT, Standing, refused_reading
from bezelbook.reasoning.mounting import BARE, HOLES, Stack
from bezelbook.reasoning.needs import Needs, needs_of_note
from bezelbook.values.quantity import Quantity
from bezelbook.values.span import Span, around, span_of
from bezelbook.values.words import NINTHS, Ninth

# A note that leaves more ways open than this keeps only what it says outright: still true, merely less.
MOST_CASES = 81
NO_EXITS: Mapping[str, Ninth] = MappingProxyType({})
LOOMS: tuple[Loom, ...] = get_args(Loom)
NEED_BY_REASON = {
    "depth": ("depth", "plug"),
    "width": ("width",),
    "height": ("height",),
    "nose": ("nose width", "nose height"),
    "plug": ("plug",),
}


def claim(
    frame: Frame,
    standing: Standing,
    varying: frozenset[str],
    exits: Mapping[str, Ninth] = NO_EXITS,
    *,
    split: bool,
) -> tuple[Constraint, ...]:
    """The bounds that a standing note sets; none when it says nothing that could be compared.

    The sizes of a part whose key is in `varying` are numbers of their own, shared by all notes about it; for any other,
    the end of its ± at which the note is certainly true is used. Where nobody said how a plug leaves, `exits` may say
    it for a part; else every way is a case if `split`, and if not that plug is left out of what went in.
    """
    note = standing.note
    if standing.stack is None:
        return ()
    settings = _made_in(standing, standing.stack)
    if isinstance(note, Measured):
        return one_of(case for setting in settings for case in _readings(frame, note, setting))
    needs = needs_of_note(frame.book, note)
    needs = replace(needs, exit=needs.exit or exits.get(needs.key))
    ways = [way for setting in settings for way in _ways(frame, note, needs, setting, split=split)]
    if standing.says == "goes in":
        return one_of(Case(fit(way.met, needs, varying) + way.rises, way.eithers) for way in ways)
    return _refused(note, needs, varying, ways)


@dataclass(frozen=True, slots=True)
class _Way:
    """One way a note may have been made: what was asked of the room there, and "by so much" as bounds."""

    met: tuple[Demand, ...]
    asked: tuple[Demand, ...]
    rises: tuple[Rise, ...]
    eithers: tuple[Either, ...]


def _made_in(standing: Standing, stack: Stack) -> list[Setting]:
    """Every build it may have been; "by so much" is true only in the very state it was seen in, so then every state."""
    note, cut = standing.note, standing.cut
    looms: tuple[Loom, ...] = (standing.loom,)
    plugs: tuple[bool, ...] = (standing.plugs_on,)
    if isinstance(note, Tried) and standing.has_gap:
        if cut == ANY_CUT or (standing.says == "does not" and note.cut is None):
            cut = f"{ANY_CUT} ({note.id})"  # whatever was cut there, only that car had that room
        looms = (note.loom,) if note.loom else LOOMS
        plugs = (standing.plugs_on,) if note.plugs or note.sure == "fitted" else (True, False)
    return [Setting(build, stack, cut, loom, on) for build, loom, on in product(standing.builds, looms, plugs)]


def _refused(note: Tried, needs: Needs, varying: frozenset[str], ways: list[_Way]) -> tuple[Constraint, ...]:
    blamed = [(way, _blamed(note, way)) for way in ways]
    blamed = [(way, named) for way, named in blamed if named]
    if any(way.rises for way, _ in blamed):
        return one_of(Case(way.rises, (*misfit(named, needs, varying), *way.eithers)) for way, named in blamed)
    return misfit([demand for _, named in blamed for demand in named], needs, varying) if blamed else ()


def fit(wanted: Iterable[Demand], needs: Needs, varying: frozenset[str]) -> tuple[Rise, ...]:
    """The room meets every one of these demands."""
    return tuple(_at_least(demand, needs, varying) for demand in wanted)


def misfit(wanted: Iterable[Demand], needs: Needs, varying: frozenset[str]) -> tuple[Either, ...]:
    """The room falls short of at least one of these demands; no bound when a need among them has no known end."""
    options = [_short_of(demand, needs, varying) for demand in wanted]
    known = tuple(option for option in options if option is not None)
    return (Either(known),) if len(known) == len(options) else ()


def one_of(cases: Iterable[Case]) -> tuple[Constraint, ...]:
    """At least one of these cases holds; what all of them have in common holds outright."""
    found = tuple(dict.fromkeys(cases))
    if not found:
        return (OneOf(()),)
    rises = tuple(rise for rise in found[0].rises if all(rise in case.rises for case in found))
    eithers = tuple(either for either in found[0].eithers if all(either in case.eithers for case in found))
    rests = tuple(dict.fromkeys(_without(case, rises, eithers) for case in found))
    return (*rises, *eithers) if Case() in rests else (*rises, *eithers, OneOf(rests))


def _without(case: Case, rises: tuple[Rise, ...], eithers: tuple[Either, ...]) -> Case:
    return Case(
        tuple(rise for rise in case.rises if rise not in rises),
        tuple(either for either in case.eithers if either not in eithers),
    )


def _at_least(demand: Demand, needs: Needs, varying: frozenset[str]) -> Rise:
    if needs.key_of(demand.need) in varying:
        return Rise(demand.cell, PartSize(needs.key_of(demand.need), demand.need), -exactly(demand.shift))
    span = needs.spans[demand.need]
    return Rise(demand.cell, None, exactly((span.low or 0) - demand.shift) + (0 if span.closed else STRICT))


def _short_of(demand: Demand, needs: Needs, varying: frozenset[str]) -> Under | None:
    if needs.key_of(demand.need) in varying:
        return Under(demand.cell, PartSize(needs.key_of(demand.need), demand.need), -exactly(demand.shift))
    span = needs.spans[demand.need]
    return None if span.high is None else Under(demand.cell, None, exactly(span.high - demand.shift))


def _ways(frame: Frame, note: Tried, needs: Needs, setting: Setting, *, split: bool) -> Iterator[_Way]:
    """What was asked of the room in one setting; one way for each ninth at which the plug may have left, if `split`."""
    sure, plug = demands(frame, needs, setting)
    by_exit = split and (note.verdict != "does not" or note.short_by is not None)
    for leaves_at in [(one,) for one in plug] if by_exit and plug else [plug]:
        met = sure + (leaves_at if len(leaves_at) == 1 else ())
        rises, eithers = _gap(frame, note, needs, met if len(leaves_at) < 2 else ())
        yield _Way(met, sure + leaves_at, rises, eithers)


def _blamed(note: Tried, way: _Way) -> tuple[Demand, ...]:
    """The demands of which one was not met."""
    if note.reason is None:
        return way.asked
    named = (demand for demand in way.asked if demand.need in NEED_BY_REASON[note.reason])
    return tuple(demand for demand in named if not note.where or demand.ninth is None or demand.ninth in note.where)


def _gap(
    frame: Frame, note: Tried, needs: Needs, wanted: tuple[Demand, ...]
) -> tuple[tuple[Rise, ...], tuple[Either, ...]]:
    """By so much, at one named spot, is a reading of the room there against the size of what was tried."""
    fitted = note.verdict != "does not"
    gap = note.to_spare if fitted else note.short_by
    spot = _spot(note, wanted)
    if gap is None or spot is None or not needs.spans[spot.need].known:
        return (), ()
    by = around(gap.base, gap.give if gap.give is not None else frame.book.shop.tools.none.base)
    need = needs.spans[spot.need]
    return _bounded(spot.cell, need.plus(by) if fitted else need.minus(by), spot.shift)


def _spot(note: Tried, wanted: tuple[Demand, ...]) -> Demand | None:
    """The one demand that "by so much" speaks of: the named side of the hole, or the deepest thing at one ninth.

    A no that gives no reason may have been short of anything there.
    """
    if note.reason in ("width", "height"):
        return next((demand for demand in wanted if demand.need == note.reason), None)
    if len(note.where) != 1 or (note.verdict == "does not" and note.reason not in ("depth", "plug")):
        return None
    at = [demand for demand in wanted if demand.ninth in note.where and note.reason in (None, "depth", demand.need)]
    return at[-1] if at else None


def _bounded(cell: Cell, span: Span, shift: int) -> tuple[tuple[Rise, ...], tuple[Either, ...]]:
    """`cell` plus `shift` lies within the span."""
    bounds = between(cell, None, span.minus(Span(shift, shift)))
    rises = tuple(bound for bound in bounds if isinstance(bound, Rise))
    return rises, tuple(bound for bound in bounds if isinstance(bound, Either))


def _readings(frame: Frame, note: Measured, setting: Setting) -> list[Case]:
    """The cases a measuring note leaves open in one build; a depth without its ninth may be any of them."""
    ways = [list(_reading(frame, setting, reading)) for reading in note.readings]
    if prod(map(len, ways)) > MOST_CASES:
        ways = [found for found in ways if len(found) == 1]
    return [
        Case(tuple(rise for case in cases for rise in case.rises), tuple(one for case in cases for one in case.eithers))
        for cases in product(*ways)
    ]


def _reading(frame: Frame, setting: Setting, reading: RoomReading) -> Iterator[Case]:
    if refused_reading(reading, setting.stack) or reading.of not in (*HOLES, "depth"):
        yield Case()
        return
    span = reading_span(frame.book.shop.tools, reading)
    if reading.of != "depth":
        yield Case(*_bounded(hole_cell(setting, reading.of), span, 0))
    else:
        at = setting if reading.datum == "kit seat" else setting._replace(stack=BARE)
        zones: tuple[Ninth, ...] = NINTHS if reading.zones == "all" else reading.zones
        for way in (zones,) if zones else ((ninth,) for ninth in NINTHS):
            yield _depths(at, way, span)


def _depths(setting: Setting, zones: tuple[Ninth, ...], span: Span) -> Case:
    rises: tuple[Rise, ...] = ()
    eithers: tuple[Either, ...] = ()
    for ninth in zones:
        cell, shift = depth_cell(setting, ninth)
        more_rises, more_eithers = _bounded(cell, span, shift)
        rises, eithers = rises + more_rises, eithers + more_eithers
    return Case(rises, eithers)


def reading_span(tools: Tools, reading: RoomReading) -> Span:
    """Where the true value lies: within the reading's own ±, else within the house ± of its tool."""
    return span_of(reading.reads, house_tolerance(tools, reading))


def house_tolerance(tools: Tools, reading: RoomReading) -> int:
    """How far off the house takes a reading with this tool to be, in nanometres."""
    house: Quantity = getattr(tools, (reading.tool or "none").replace(" ", "_"))
    return house.base
