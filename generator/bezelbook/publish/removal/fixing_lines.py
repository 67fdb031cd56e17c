"""What holds a piece as a page writes it: what is undone, what lets go when it is pulled, and when to stop pulling."""

from collections.abc import Iterable, Iterator

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.order.fixings import Fixing, record_of

UNDO, EASE, HOLDS = "Undo", "Ease out", "What holds it"
# Every kind of fastener is either undone by itself or lets go as its piece is pulled.
_LETS_GO = {"fir-tree clip", "W-base clip", "metal claw", "ball stud", "slide stud", "hook tab", "tethered pillar clip"}
_WORDS = {
    UNDO: ("screw", "bolt", "nut", "rivet", "quarter"),
    EASE: ("clip", "claw", "tree", "stud", "hook", "tab", "pin"),
}


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


def fixing_lines(book: KnowledgeBase, held: Iterable[Fixing]) -> Iterator[tuple[str, tuple[str, ...]]]:
    """The fasteners by what to do about them: what is undone, what nobody can tell, what is eased."""
    fixings = tuple(held)
    for act in (UNDO, HOLDS, EASE):
        yield act, tuple(words for one in fixings if _act(book, one) == act for words in fixing_words(book, one))


def stop_words(book: KnowledgeBase, held: Iterable[Fixing]) -> str:
    """When to stop pulling, with the number that has to be out before anything moves where it is known."""
    undone = [one for one in held if _act(book, one) == UNDO]
    counts = [one.most for one in undone if one.most is not None]
    if undone and len(counts) == len(undone):
        number = sum(counts)
        out = "its one screw out" if number == 1 else f"all {number} out"
        return f"it bends, or does not move with {out}: something still holds it"
    return "it bends and does not come: something still holds it"


def _act(book: KnowledgeBase, fixing: Fixing) -> str:
    record = record_of(book, fixing.name)
    if record:
        return EASE if record.fastener_kind in _LETS_GO else UNDO
    name = fixing.name.casefold()
    return next((act for act, words in _WORDS.items() if any(word in name for word in words)), HOLDS)
