"""Something at least as deep that went in where something else did not, for want of depth: the pairs at one place."""

from collections.abc import Iterator

from bezelbook.kinds.note.record import Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.cells import frame_of
from bezelbook.reasoning.evidence import ANY_CUT, UNCUT, Standing, evidence_at, standing_of
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.needs import Needs, needs_of_note
from bezelbook.reasoning.room import Rooms
from bezelbook.values.span import NOTHING, Span
from bezelbook.values.words import NINTHS, STRONG, Ninth


class Rung:
    """A note of something tried, with its depth and the state it was tried in, strong or not."""

    def __init__(self, book: KnowledgeBase, vehicle: Vehicle, note: Tried) -> None:
        self.note = note
        self.needs: Needs = needs_of_note(book, note)
        self.state: Standing = standing_of(book, vehicle, note)

    @property
    def depth(self) -> Span:
        """Body depth, in nanometres."""
        return self.needs.spans["depth"]


def reversed_pairs(book: KnowledgeBase, vehicle: Vehicle, place: str) -> Iterator[tuple[Rung, Rung]]:
    """Each yes with each no that it is at least as deep as and that nothing on record explains, the strong first."""
    tried = [Rung(book, vehicle, note) for note in _comparable(book, vehicle, place)]
    refused = [one for one in tried if one.note.verdict == "does not" and one.note.reason == "depth"]
    went_in = [one for one in tried if one.note.verdict == "goes in"]
    for no in sorted(refused, key=lambda one: (one.note.sure not in STRONG, one.depth.low or 0, one.note.id)):
        for yes in sorted(went_in, key=lambda one: (one.note.sure not in STRONG, -(one.depth.low or 0), one.note.id)):
            if _reversed(yes, no):
                yield yes, no


def leave_it_open(book: KnowledgeBase, vehicle: Vehicle, place: str, yes: Rung, no: Rung) -> bool:
    """Whether both can be true after all, because one of them left something blank; so for strong notes only."""
    if not {yes.note.sure, no.note.sure} <= set(STRONG):
        return False
    return Rooms(frame_of(book, vehicle, place), (yes.state, no.state)).possible


def _comparable(book: KnowledgeBase, vehicle: Vehicle, place: str) -> list[Tried]:
    """Every note of something tried here, but those that wait to be read back and those that were replaced."""
    evidence = evidence_at(book, vehicle, place)
    notes = [one.note for one in evidence.standing] + [one.note for one in evidence.weak]
    return [note for note in notes if isinstance(note, Tried)]


def _reversed(yes: Rung, no: Rung) -> bool:
    """Whether the yes is certainly at least as deep as the no, and nothing that both say explains it."""
    if _explained(yes, no):
        return False
    deeper = NOTHING if yes.needs.key == no.needs.key else yes.depth.minus(no.depth)
    if yes.state.stack != no.state.stack:
        deeper = deeper.plus(_offset(no.state.stack)).minus(_offset(yes.state.stack))
    return deeper.low is not None and deeper.low >= 0


def _explained(yes: Rung, no: Rung) -> bool:
    """Whether both say something that differs, and the difference gives the yes more room."""
    return (
        not set(yes.state.builds) & set(no.state.builds)
        or (yes.state.cut not in (ANY_CUT, UNCUT, no.state.cut))
        or (yes.note.loom == "aside" and no.note.loom == "behind")
        or (yes.note.plugs == "off" and no.note.plugs == "on")
        or not _where_it_stopped(no) <= set(_behind(yes.state.stack))
    )


def _where_it_stopped(no: Rung) -> set[Ninth]:
    """The ninths of which one stopped it: those that the note names, else all that lay behind it."""
    return set(no.note.where or _behind(no.state.stack))


def _behind(stack: Stack | None) -> tuple[Ninth, ...]:
    return NINTHS if stack is None else stack.ninths


def _offset(stack: Stack | None) -> Span:
    """How far out the part was held; a mount that nobody knows is taken as flush, and proposed as the difference."""
    return NOTHING if stack is None or stack.strange else stack.offset
