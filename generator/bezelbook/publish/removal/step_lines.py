"""A step as the page writes it: one line a thing that the hands have to know, in the order in which they need it."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.removal.trade_words import DIRECTIONS, FASTENERS, REACH, FirstUse
from bezelbook.publish.wording import counted
from bezelbook.reasoning.order.asking import by_whom
from bezelbook.reasoning.order.clocked import Clocked
from bezelbook.reasoning.order.fixings import Fixing, record_of
from bezelbook.reasoning.order.precedence import NOT_SAID, Before
from bezelbook.reasoning.order.saying import Said
from bezelbook.reasoning.order.step import Step, ToolSaid
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_minutes

SIDES: Mapping[str | None, str] = {
    "left": "On the left, as you sit in the car facing forward.",
    "right": "On the right, as you sit in the car facing forward.",
    "centre": "In the middle.",
    None: "Nobody wrote on which side it is.",
}

WHY: Mapping[str, str] = {
    NOT_SAID: "somebody took it off first and did not write why",
    "reach": "no hand or tool gets past it",
    "cable": "a cable holds the two together",
    "screw": "a screw sits behind it",
}

RESTRAINT = "restraint near"


@dataclass(frozen=True, slots=True)
class StepLines:
    """A step ready for the page; `marks` say what is odd about it, `explained` are words of the trade that are new."""

    number: int
    name: str
    where: str
    marks: tuple[str, ...]
    cautions: tuple[str, ...]
    lines: tuple[tuple[str, tuple[str, ...]], ...]
    explained: tuple[tuple[str, str], ...]
    blank: str


def step_lines(
    book: KnowledgeBase, number: int, step: Step, names: Mapping[str, str], told: FirstUse, argued: frozenset[str]
) -> StepLines:
    """A step as a page writes it; `names` are those of the pieces, `told` remembers what the page has explained.

    `argued` are the pieces that are argued over together with this one, itself among them; none when it is not. With a
    restraint near, a page says where the piece is and whose business it is, and nothing of how it comes off.
    """
    if RESTRAINT in step.safety:
        return StepLines(number, step.name, SIDES[step.side], (), (RESTRAINT,), (), (), "")
    lines = tuple((label, words) for label, words in _lines(book, number, step, names, argued) if words)
    texts = [step.name, *(word for _, words in lines for word in words)]
    return StepLines(
        number,
        step.name,
        SIDES[step.side],
        tuple(_marks(step, argued=bool(argued))),
        tuple(one for one in step.safety if one != "none"),
        lines,
        tuple(told.said(texts, *_meanings(book, step))),
        ", ".join(step.blank),
    )


def fixing_words(book: KnowledgeBase, fixing: Fixing) -> tuple[str, ...]:
    """Fasteners in a line: how many, which, what turns them, where, how long; and a line for each odd one."""
    counts = " or ".join(str(said.what) for said in fixing.counts)
    record = record_of(book, fixing.name)
    said = (
        f"{f'{counts} × ' if counts else ''}{fixing.name}",
        record.drive if record and record.drive else "",
        fixing.where or "",
        f"{' or '.join(said.what for said in fixing.lengths)} long" if fixing.lengths else "",
        "" if counts else "not counted",
        f"the notes differ, so have {fixing.most} ready" if len(fixing.counts) > 1 else "",
    )
    return ", ".join(one for one in said if one), *(f"Odd one: {said.what}" for said in fixing.odd_ones)


def _lines(
    book: KnowledgeBase, number: int, step: Step, names: Mapping[str, str], argued: frozenset[str]
) -> Iterator[tuple[str, tuple[str, ...]]]:
    yield "Argued over", tuple(_claim(book, one, names) for one in step.first if one.first in argued)
    yield "Off before it", tuple(_before(one, names) for one in step.first if one.first not in argued)
    yield "Look for", _told(step.hidden)
    yield "Tool", tuple(_tool(tool) for tool in step.tools) or _from_screws(book, step)
    yield "What holds it", tuple(words for fixing in step.held for words in fixing_words(book, fixing))
    yield "One screw with", tuple(f"{_name(names, piece)}, which is loose once it is out" for piece in step.shares)
    yield "Start at", tuple(f"the {said.what} edge" for said in step.lead_edges)
    yield "Pull", tuple(", then ".join(said.what) for said in step.pulls)
    yield "Hooks, last", _told(step.hooks)
    yield "Unplug", _told(step.plugs)
    yield "Into cup", (_cup(number, step),) if step.held else ()
    yield "Took", (_took(step.took),) if step.took else ()


def _before(one: Before, names: Mapping[str, str]) -> str:
    why = one.why[0]
    return f"{_name(names, one.first)}: {WHY.get(why, f'it {why} this')}"


def _claim(book: KnowledgeBase, one: Before, names: Mapping[str, str]) -> str:
    says = "; ".join(by_whom(book, id_) for id_ in one.notes)
    return f"{_before(one, names)} ({says})"


def _name(names: Mapping[str, str], piece: str) -> str:
    return names.get(piece, piece.replace("-", " "))


def _told(sayings: Iterable[Said[str]]) -> tuple[str, ...]:
    return tuple(said.what for said in sayings)


def _tool(tool: ToolSaid) -> str:
    reach = f" ({', '.join(tool.reach)})" if tool.reach else ""
    return f"{tool.name}{reach}{''.join(f' – not here: {words}' for words in tool.not_here)}"


def _from_screws(book: KnowledgeBase, step: Step) -> tuple[str, ...]:
    """What turns its screws, where nobody wrote which tool it took."""
    records = [record for fixing in step.held if (record := record_of(book, fixing.name))]
    return tuple(
        f"{drive} – by its screws; nobody wrote the tool"
        for drive in dict.fromkeys(record.drive for record in records if record.drive)
    )


def _cup(number: int, step: Step) -> str:
    other = [str(said.what) for said in step.cups if said.what != number]
    return f"{number} (last time it was cup {listed(other, 'or')})" if other else str(number)


def _took(time: Clocked) -> str:
    return f"{minutes(time)} ({counted(time.jobs, 'job')}{', thin' if time.thin else ''})"


def minutes(time: Clocked) -> str:
    """The median, and the range where there is one."""
    middle = show_minutes(round(time.median))
    if time.least == time.most:
        return middle
    return f"{middle} ({show_minutes(time.least)} to {show_minutes(time.most)})"


def _marks(step: Step, *, argued: bool) -> Iterator[str]:
    if argued:
        yield "Argued over: look which edge lies on top before you pull."
    if step.stands == "asked":
        yield f"In {step.lists} of {step.out_of} jobs only: needed or habit?"
    if step.stands == "a layer":
        yield "Somebody saw it here; nobody wrote whether it comes off."
    if not step.on_the_list:
        yield "Not on the vehicle's list of pieces."


def _meanings(book: KnowledgeBase, step: Step) -> Iterator[tuple[str, str]]:
    for fixing in step.held:
        record = record_of(book, fixing.name)
        if record:
            yield fixing.name, FASTENERS[record.fastener_kind]
    for pull in step.pulls:
        yield from ((word, meaning) for word, meaning in DIRECTIONS.items() if word in pull.what)
    for tool in step.tools:
        yield from ((word, REACH[word]) for word in tool.reach)
