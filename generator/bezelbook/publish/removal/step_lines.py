"""A step as the page writes it: one line an act, in the order in which the hands do them."""

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.connector.record import Connector
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.removal.cautions import Caution, caution
from bezelbook.publish.removal.fixing_lines import fixing_lines, stop_words
from bezelbook.publish.removal.questions import questions
from bezelbook.publish.removal.trade_words import DIRECTIONS, FASTENERS, REACH, FirstUse
from bezelbook.publish.wording import counted
from bezelbook.reasoning.order.asking import by_whom
from bezelbook.reasoning.order.clocked import Clocked
from bezelbook.reasoning.order.fixings import record_of
from bezelbook.reasoning.order.near import RESTRAINT
from bezelbook.reasoning.order.precedence import NOT_SAID, Before
from bezelbook.reasoning.order.saying import Said
from bezelbook.reasoning.order.step import Step, ToolSaid
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_minutes

SIDES: Mapping[str | None, str] = {
    "left": "On the left, as you sit in the car facing forward",
    "right": "On the right, as you sit in the car facing forward",
    "centre": "In the middle",
    None: "Nobody wrote on which side it is",
}

WHY: Mapping[str, str] = {
    NOT_SAID: "somebody took it off first and did not write why",
    "reach": "no hand or tool gets past it",
    "cable": "a cable holds the two together",
    "screw": "a screw sits behind it",
}

_A_PLUG = re.compile(r"plug|lead|wire|block", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class StepLines:
    """A step ready for the page: an act a line.

    `marks` say what is odd about it, `explained` are words of the trade that are new, `asked` is what nobody wrote.
    `tools` are what to lay out for it.
    """

    number: int
    name: str
    where: str
    marks: tuple[str, ...]
    cautions: tuple[Caution, ...]
    lines: tuple[tuple[str, tuple[str, ...]], ...]
    explained: tuple[tuple[str, str], ...]
    asked: tuple[str, ...]
    tools: tuple[str, ...]


def step_lines(
    book: KnowledgeBase, number: int, step: Step, names: Mapping[str, str], told: FirstUse, argued: frozenset[str]
) -> StepLines:
    """A step as a page writes it; `names` are those of the pieces, `told` remembers what the page has explained.

    `argued` are the pieces that are argued over together with this one, itself among them; none when it is not. With a
    restraint near, a page says where the piece is and whose business it is, and nothing of how it comes off.
    """
    if RESTRAINT in step.safety:
        explained = tuple(told.said([step.name]))
        return StepLines(number, step.name, _where(step), (), (caution(RESTRAINT),), (), explained, (), ())
    lines = tuple((label, words) for label, words in _lines(book, number, step, names, argued) if words)
    texts = [step.name, *(text for label, words in lines for text in (label, *words))]
    return StepLines(
        number,
        step.name,
        _where(step),
        tuple(_marks(step, argued=bool(argued))),
        tuple(caution(one) for one in step.safety if one != "none"),
        lines,
        tuple(told.said(texts, *_meanings(book, step))),
        questions(step, told),
        tuple(_with_reach(tool) for tool in step.tools) or _drives(book, step),
    )


def _where(step: Step) -> str:
    return f"{SIDES[step.side]}{f': {step.where}' if step.where else ''}."


def _lines(
    book: KnowledgeBase, number: int, step: Step, names: Mapping[str, str], argued: frozenset[str]
) -> Iterator[tuple[str, tuple[str, ...]]]:
    yield "Argued over", tuple(_claim(book, one, names) for one in step.first if one.first in argued)
    yield "Only after", tuple(_before(one, names) for one in step.first if one.first not in argued)
    yield "Look for", tuple(f"a hidden fixing: {said.what}" for said in step.hidden)
    yield "Take", tuple(_tool(tool) for tool in step.tools) or _from_screws(book, step)
    undo, holds, ease = fixing_lines(book, step.held)
    yield from (undo, holds)
    yield (
        "Mind",
        tuple(f"one screw holds {_name(names, piece)} too, which is loose once it is out" for piece in step.shares),
    )
    yield "Start at", tuple(f"the {said.what} edge" for said in step.lead_edges)
    yield ease
    yield "Pull", tuple(", then ".join(said.what) for said in step.pulls)
    yield "Unhook last", _told(step.hooks)
    yield "Stop if", (stop_words(book, step.held),)
    yield "Unplug", tuple(_plug(book, said.what) for said in step.plugs)
    yield "Into cup", (_cup(number, step),) if step.held else ()
    yield "It took", (_took(step.took),) if step.took else ()


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


def _plug(book: KnowledgeBase, words: str) -> str:
    if words == "nothing":
        return "nothing: no wire goes to it"
    return words if book.named("connector", words) or _A_PLUG.search(words) else f"the plug of the {words}"


def _tool(tool: ToolSaid) -> str:
    return f"{_with_reach(tool)}{''.join(f' – not here: {words}' for words in tool.not_here)}"


def _with_reach(tool: ToolSaid) -> str:
    reach = f" ({', '.join(tool.reach)})" if tool.reach else ""
    return f"{tool.name}{reach}"


def _from_screws(book: KnowledgeBase, step: Step) -> tuple[str, ...]:
    """What turns its screws, where nobody wrote which tool it took."""
    return tuple(f"{drive} – by its screws; nobody wrote the tool" for drive in _drives(book, step))


def _drives(book: KnowledgeBase, step: Step) -> tuple[str, ...]:
    records = [record for fixing in step.held if (record := record_of(book, fixing.name))]
    return tuple(dict.fromkeys(record.drive for record in records if record.drive))


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
        yield (
            f"In {step.lists} of {step.out_of} jobs only. Leave it on unless you see that it holds or covers what "
            "comes after, and write down which."
        )
    if step.stands == "a layer":
        yield "Somebody saw it here; nobody wrote whether it comes off. Look what is behind it before you start."
    if not step.on_the_list:
        yield "Not on the vehicle's list of pieces."


def _meanings(book: KnowledgeBase, step: Step) -> Iterator[tuple[str, str]]:
    for fixing in step.held:
        record = record_of(book, fixing.name)
        if record:
            yield fixing.name, FASTENERS[record.fastener_kind]
    for pull in step.pulls:
        yield from ((word, meaning) for word, meaning in DIRECTIONS.items() if word in pull.what)
    for plug in step.plugs:
        named = book.named("connector", plug.what)
        if isinstance(named, Connector):
            yield plug.what, _plug_meaning(named)
    for tool in step.tools:
        yield from ((word, REACH[word]) for word in tool.reach)


def _plug_meaning(plug: Connector) -> str:
    """What a plug looks like, to somebody who has never heard its name."""
    colour = f"{listed(plug.shell_colours, 'or')} " if plug.shell_colours else ""
    places = f" with {plug.cavities} places for wires" if plug.cavities else ""
    return f"the name of a {colour}plug{places}"
