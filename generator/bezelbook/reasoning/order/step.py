"""One piece as its notes together describe how it comes off."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Literal, TypeVar

from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.note.removal import PieceOff, ToolUsed
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.order.clocked import Clocked, clocked
from bezelbook.reasoning.order.fixings import Fixing, fixings
from bezelbook.reasoning.order.precedence import Before
from bezelbook.reasoning.order.saying import Said, gathered
from bezelbook.values.words import Safety, Side

T = TypeVar("T")

# Needed: every list of pieces has it, or it lies over one that is. Asked: only some lists have it, so it is taken as
# needed until somebody says. A layer: it was seen there, and nobody wrote that it came off.
Stands = Literal["needed", "asked", "a layer"]


@dataclass(frozen=True, slots=True)
class ToolSaid:
    """A tool with everything that anybody said lets it get there, and what must not be used."""

    name: str
    record: str | None
    reach: tuple[str, ...]
    not_here: tuple[str, ...]
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Step:
    """A piece that comes off. Whatever nobody wrote is empty or None: it was not looked at.

    `first` are the pieces that have to be off before it, `shares` those that one screw holds together with it, and
    `lists` the independent jobs whose list of pieces has it, out of `out_of`.
    """

    piece: str
    name: str
    side: Side | None
    where: str | None
    on_the_list: bool
    stands: Stands
    lists: int
    out_of: int
    first: tuple[Before, ...]
    shares: tuple[str, ...]
    safety: tuple[Safety, ...]
    held: tuple[Fixing, ...]
    hidden: tuple[Said[str], ...]
    lead_edges: tuple[Said[str], ...]
    pulls: tuple[Said[tuple[str, ...]], ...]
    hooks: tuple[Said[str], ...]
    plugs: tuple[Said[str], ...]
    tools: tuple[ToolSaid, ...]
    refit: tuple[Said[str], ...]
    took: Clocked | None
    cups: tuple[Said[int], ...]
    notes: tuple[str, ...]

    @property
    def blank(self) -> tuple[str, ...]:
        """What nobody wrote of it, of what one has to know before pulling."""
        asked = (
            ("what holds it", self.held),
            ("which edge to start at", self.lead_edges),
            ("which way it comes", self.pulls),
            ("which tool", self.tools),
            ("what to unplug", self.plugs),
        )
        return tuple(words for words, known in asked if not known)


def name_of(vehicle: Vehicle, piece: str) -> str:
    """What the shop calls a piece; the words of its id when it has no name or is not on the vehicle's list."""
    trim = vehicle.trim.get(piece)
    return (trim.name if trim else None) or piece.replace("-", " ")


def offs(notes: Iterable[Seen], piece: str) -> tuple[tuple[PieceOff, Seen], ...]:
    """Every time this piece came off, with the note that says so."""
    return tuple((off, note) for note in notes for off in note.pieces if off.piece == piece)


def path_of(note: Seen, off: PieceOff) -> tuple[str | int, ...]:
    """Where a note tells of one piece, as a path from the top of its file."""
    return "pieces", note.pieces.index(off)


def step_of(
    book: KnowledgeBase,
    vehicle: Vehicle,
    piece: str,
    notes: Sequence[Seen],
    *,
    stands: Stands,
    lists: tuple[int, int],
    first: tuple[Before, ...],
    shares: tuple[str, ...],
) -> Step:
    """A piece as these notes describe it; `first`, `shares` and how it stands are the order's own affair."""
    off = offs(notes, piece)
    trim = vehicle.trim.get(piece)
    return Step(
        piece=piece,
        name=name_of(vehicle, piece),
        side=trim.side if trim else None,
        where=trim.where if trim else None,
        on_the_list=trim is not None,
        stands=stands,
        lists=lists[0],
        out_of=lists[1],
        first=first,
        shares=shares,
        safety=_safety(trim.safety if trim else None, off),
        held=fixings(book, [(one, note.id) for each, note in off for one in each.fasteners]),
        hidden=_one(off, lambda each: each.hidden),
        lead_edges=_one(off, lambda each: each.lead_edge),
        pulls=_one(off, lambda each: each.pull or None),
        hooks=_one(off, lambda each: each.hooks),
        plugs=gathered((_plug(book, plug), note.id) for each, note in off for plug in each.plugs),
        tools=_tools(book, [(tool, note.id) for each, note in off for tool in each.tools]),
        refit=_one(off, lambda each: each.refit),
        took=clocked((each.took.base, note) for each, note in off if each.took),
        cups=_one(off, lambda each: each.cup),
        notes=tuple(dict.fromkeys(note.id for _, note in off)),
    )


def _one(off: Sequence[tuple[PieceOff, Seen]], field: Callable[[PieceOff], T | None]) -> tuple[Said[T], ...]:
    return gathered((said, note.id) for each, note in off if (said := field(each)) is not None)


def _safety(own: Safety | None, off: Sequence[tuple[PieceOff, Seen]]) -> tuple[Safety, ...]:
    """Every class that the vehicle's list or a note gives; the word none only where nothing else is said."""
    said = dict.fromkeys(one for one in (own, *(each.safety for each, _ in off)) if one)
    return tuple(one for one in said if one != "none") or tuple(said)


def _plug(book: KnowledgeBase, words: str) -> str:
    return getattr(book.named("connector", words), "name", words)


def _tools(book: KnowledgeBase, said: Sequence[tuple[ToolUsed, str]]) -> tuple[ToolSaid, ...]:
    names = gathered((_tool_name(book, tool.tool), note) for tool, note in said)
    return tuple(_tool(book, name, _uses(book, name.what, said)) for name in names)


def _uses(book: KnowledgeBase, name: str, said: Sequence[tuple[ToolUsed, str]]) -> list[ToolUsed]:
    return [tool for tool, _ in said if folded(_tool_name(book, tool.tool)) == folded(name)]


def _tool_name(book: KnowledgeBase, words: str) -> str:
    return getattr(book.named("supply", words), "name", words)


def _tool(book: KnowledgeBase, name: Said[str], used: Sequence[ToolUsed]) -> ToolSaid:
    found = book.named("supply", used[0].tool)
    own: tuple[str, ...] = tuple(getattr(found, "reach", ()))
    reach = dict.fromkeys([*own, *(word for tool in used for word in tool.reach)])
    not_here = dict.fromkeys([*getattr(found, "not_on", ()), *(tool.not_here for tool in used if tool.not_here)])
    return ToolSaid(name.what, found.id if found else None, tuple(reach), tuple(not_here), name.notes)
