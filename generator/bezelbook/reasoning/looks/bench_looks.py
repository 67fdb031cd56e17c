"""The looks at a head unit on the bench: sizes that are only printed or that nobody looked at, its plug and bend."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.looks.look import CHASSIS, PLUG, Look, Todo, look_of
from bezelbook.reasoning.looks.pair import Pair, is_firm, put
from bezelbook.reasoning.needs import Need, Needs, needs_of_unit
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.slip import LIMITS_MM, MM
from bezelbook.values.listed import listed
from bezelbook.values.span import Span, around

BODY: tuple[Need, ...] = ("width", "height", "nose width", "nose height", "depth")
# How many readings stand for all that are still possible.
TRIED = 3
BODY_MINUTES = 2
PLUG_MINUTES = 3
# Common practice, no source: a plug with the bend of its wires asks for this much behind a chassis.
PLUG_MM = (15, 65)


def bench_looks(
    book: KnowledgeBase, places: Mapping[tuple[str, str], Place], still_open: Sequence[Pair]
) -> Iterator[Look]:
    """Every look at a head unit that may settle any open pair, wherever that is."""
    for unit in book.head_units.values():
        needs = needs_of_unit(book, unit)
        mine = {pair: places[pair.vehicle, pair.place] for pair in still_open if pair.unit == unit.id}
        questions = {pair: put(place, pair) for pair, place in mine.items()}
        for todo, ways in (_body(unit, needs), _plug(unit, needs)):
            settled = [
                [pair for pair, one in questions.items() if is_firm(one.narrowed(needs=way), mine[pair].accounts)]
                for way in ways
            ]
            look = look_of(book, todo, settled)
            if look:
                yield look


def _body(unit: HeadUnit, needs: Needs) -> tuple[Todo, list[Needs]]:
    """A caliper on every size that is printed only or blank; what is printed is taken to be about right."""
    blank = [need for need in BODY if not needs.spans[need].known]
    todo = Todo(None, None, (), f"{listed(blank or ['nothing'])} of {unit.name}", "caliper", BODY_MINUTES, CHASSIS)
    return todo, [_measured(needs, blank, number) for number in range(TRIED)] if blank else []


def _measured(needs: Needs, blank: Sequence[Need], number: int) -> Needs:
    read = {need: _reading(needs, need, number) for need in blank}
    spans = {**needs.spans, **read}
    return _as_read(needs, spans, needs.plug_over_body)


def _reading(needs: Needs, need: Need, number: int) -> Span:
    """What the caliper may say: within a millimetre of a printed figure, else anything usual."""
    if need in needs.printed:
        return around(needs.printed[need] + (number - TRIED // 2) * MM // 2, MM // 5)
    low, high = LIMITS_MM[need]
    return around(low * MM + (high - low) * MM * (2 * number + 1) // (2 * TRIED), MM // 5)


def _plug(unit: HeadUnit, needs: Needs) -> tuple[Todo, list[Needs]]:
    """Plugging it in on the bench and ruling it."""
    todo = Todo(None, None, (), f"plug and bend of {unit.name}", "plug it in and rule it", PLUG_MINUTES, PLUG)
    if needs.plug_over_body.high is not None:
        return todo, []
    low, high = PLUG_MM
    over = (around(low * MM + (high - low) * MM * (2 * number + 1) // (2 * TRIED), MM) for number in range(TRIED))
    return todo, [_as_read(needs, dict(needs.spans), span) for span in over]


def _as_read(needs: Needs, spans: dict[Need, Span], over: Span) -> Needs:
    """The needs with these sizes, as a thing of its own: what notes say of it is not read anew."""
    spans["plug"] = spans["depth"].plus(over).at_least(spans["depth"])
    return replace(needs, key=f"{needs.key} as read", spans=spans, printed={}, plug_over_body=over)
