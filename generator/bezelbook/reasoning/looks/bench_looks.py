"""The looks at a head unit or a mount on the bench: what is only printed, or coarse, or what nobody looked at."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import partial

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.record import Named
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.looks.look import CHASSIS, PLUG, Todo
from bezelbook.reasoning.looks.met import OFFSET, Spot
from bezelbook.reasoning.looks.readings import TRIED, likely_lengths, middles, numbered, one_of_likely
from bezelbook.reasoning.looks.way import Way
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.needs import Need, Needs, needs_of_unit
from bezelbook.reasoning.slip import LIMITS_MM, MM
from bezelbook.values.listed import listed
from bezelbook.values.span import Span, around
from bezelbook.values.words import Ninth

BODY: tuple[Need, ...] = ("width", "height", "nose width", "nose height", "depth")
BODY_MINUTES = 2
PLUG_MINUTES = 3
MOUNT_MINUTES = 2
CALIPER, RULER = "caliper", "plug it in and rule it"
# What is known less closely than this is worth a caliper, or a ruler; each reads to the ± of an imagined reading.
COARSE, COARSE_PLUG = MM, 4 * MM
READ, RULED = MM // 5, MM
# Common practice, no source: a plug with the bend of its wires asks for this much behind a chassis, it leaves near the
# middle, and a kit holds a part out by so much.
PLUG_MM = (15, 65)
EXITS: tuple[Ninth, ...] = ("centre", "left", "right", "upper", "lower")
OFFSET_MM = (-10, 20)
# A unit and a mount do not go up and down with the opening either.
SHIFT = 4
# The lengths that each size may likely have, in nanometres, shortest first, each as likely as any other.
Likely = Mapping[Need, Sequence[int]]


def likely_sizes(book: KnowledgeBase, unit: HeadUnit) -> Likely:
    """What a unit may measure where nothing is known of it: what the others of its class in the book do."""
    others = (one for one in book.head_units.values() if one.id != unit.id and one.size_class == unit.size_class)
    known = [needs_of_unit(book, one).spans for one in others]
    return {need: middles([spans[need] for spans in known]) for need in BODY}


def unit_ways(book: KnowledgeBase, unit: Named, needs: Needs, likely: Likely) -> tuple[Way, ...]:
    """A caliper on every size of a unit that is printed only, coarse or blank; and plugging it in and ruling it.

    What was read as closely as it can be is not read again, however coarse it is together with something else.
    """
    most = _closely(book)
    behind = is_coarse(needs.behind, most)
    coarse = [
        need
        for need in BODY
        if is_coarse(needs.alone.get(need, needs.spans[need]), most) or (behind and need == "depth")
    ]
    ways = []
    if coarse:
        words = [*coarse, *(["what stands out behind"] if behind else [])]
        todo = Todo(None, None, (), f"{listed(words)} of {unit.name}", CALIPER, BODY_MINUTES, CHASSIS, unit.id)
        ways.append(Way(todo, needs=partial(_measured, coarse, likely)))
    if _bend_is_coarse(needs) or needs.exit is None:
        todo = Todo(None, None, (), f"plug and bend of {unit.name}", RULER, PLUG_MINUTES, PLUG, unit.id)
        ways.append(Way(todo, needs=_plugged))
    return tuple(ways)


def mount_ways(book: KnowledgeBase, stacks: Sequence[Stack]) -> tuple[Way, ...]:
    """A caliper on the hole and the offset of each mount among these, where either is printed only, coarse or blank."""
    keys = dict.fromkeys(key for stack in stacks for key in stack.key if key in book.mounts)
    coarse = {key: spans for key in keys if (spans := _coarse(stacks, key, _closely(book)))}
    return tuple(
        Way(_of_mount(book.mounts[key], spans), partial(_presented, book, key, spans)) for key, spans in coarse.items()
    )


def _of_mount(mount: Mount, coarse: Mapping[str, Span]) -> Todo:
    words = listed([one if one == OFFSET else f"{one} of the hole" for one in coarse])
    return Todo(None, None, (), f"{words} of {mount.name}", CALIPER, MOUNT_MINUTES, CHASSIS, mount.id)


def _closely(book: KnowledgeBase) -> int:
    """The widest span of a size that a caliper on this bench would not tell better."""
    return max(COARSE, 2 * book.shop.tools.bench_caliper.base)


def _bend_is_coarse(needs: Needs) -> bool:
    """Whether plug and bend are worth a ruler; how far they reach over the body goes by what stands out behind too."""
    return is_coarse(needs.alone.get("plug", needs.plug_over_body), COARSE_PLUG)


def _coarse(stacks: Sequence[Stack], mount: str, most: int) -> Mapping[str, Span]:
    """What of a mount a caliper would tell better: sizes of its hole, and how far it alone holds a part out."""
    known = {size: span for stack in stacks for size, (of, span) in stack.holes.items() if of == mount}
    alone = next((stack for stack in stacks if stack.key == (mount,)), None)
    known |= {OFFSET: alone.offset} if alone else {}
    return {what: span for what, span in known.items() if is_coarse(span, most)}


def is_coarse(span: Span, most: int) -> bool:
    """Whether a size may be anything in a wider span than that, in nanometres."""
    return span.low is None or span.high is None or span.high - span.low > most


def _measured(coarse: Sequence[Need], likely: Likely, needs: Needs, number: int) -> Needs:
    read = {need: _reading(needs, need, likely.get(need, ()), number) for need in coarse}
    return _as_read(needs, {**needs.spans, **read}, needs.plug_over_body)


def _reading(needs: Needs, need: Need, likely: Sequence[int], number: int) -> Span:
    """What the caliper may say: what is known to be possible, else about what is printed, else what is likely."""
    low, high = (limit * MM for limit in LIMITS_MM[need])
    known = needs.spans[need]
    if known.low is not None and known.high is not None:
        low, high, likely = known.low, known.high, ()
    elif need in needs.printed:
        low, high, likely = needs.printed[need] - MM, needs.printed[need] + MM, ()
    return around(one_of_likely(likely, low, high, numbered(need, number + SHIFT)), READ)


def _plugged(needs: Needs, number: int) -> Needs:
    """What the ruler may say, and where the plug turns out to leave."""
    low, high = (limit * MM for limit in PLUG_MM)
    over = around(one_of_likely((), low, high, (4 * number + SHIFT) % TRIED), RULED)
    kept = over if _bend_is_coarse(needs) else needs.plug_over_body
    return replace(_as_read(needs, dict(needs.spans), kept), exit=needs.exit or EXITS[number % len(EXITS)])


def _as_read(needs: Needs, spans: dict[Need, Span], over: Span) -> Needs:
    """The needs with these sizes."""
    spans["plug"] = spans["depth"].plus(over).at_least(spans["depth"])
    return replace(needs, spans=spans, printed={}, plug_over_body=over)


def _presented(book: KnowledgeBase, mount: str, coarse: Mapping[str, Span], number: int) -> Mapping[Spot, Span]:
    """What the caliper may say of a mount."""
    return {(mount, what): _presents(book, what, known, number) for what, known in coarse.items()}


def _presents(book: KnowledgeBase, what: str, known: Span, number: int) -> Span:
    likely: Sequence[int] = ()
    low, high = (limit * MM for limit in (OFFSET_MM if what == OFFSET else LIMITS_MM[what]))
    if known.low is not None and known.high is not None:
        low, high = known.low, known.high
    else:
        likely = next((likely_lengths(book, need) for need in BODY if need == what), ())
    other = number if what == OFFSET else numbered(what, number + 2 * SHIFT)
    return around(one_of_likely(likely, low, high, other), READ)
