"""Notes of a vehicle name things that no record goes by, so that a sheet would print a blank."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import AnyNote
from bezelbook.kinds.references import Reference, references
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WALK
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed

SHOWN = 3
# What a note may well name in the author's own words, with the sizes beside it or as the car had it.
FREE = ("tool", "kind", "speaker")


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle; a thing offered up that has sizes typed beside it needs no record."""
    book = scope.book
    notes = unreplaced(book.notes_of(scope.vehicle))
    lost = [(note, one) for note in notes for one in references(note) if _leads_nowhere(book, note, one)]
    words = list(dict.fromkeys(one.words for _, one in lost))
    if not words:
        return
    more = [f"{len(words) - SHOWN} more"] if len(words) > SHOWN else []
    quoted = {note.id: (note, one) for note, one in reversed(lost)}
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="tidy up",
        says=f"no record goes by {listed([*(f'“{one}”' for one in words[:SHOWN]), *more])}",
        quotes=tuple(Quote.of(book, note, one.path) for note, one in sorted_by_id(quoted)[:SHOWN]),
        difference="what the thing is",
        proposals=(Proposal("which thing", "it has a record under another name: add this one to its other words"),),
        loss=WALK,
        question="Which thing is meant?",
        answers=("add the words to its record", "write a record", "mend the note", "leave it as words"),
        vehicle=scope.vehicle,
    )


def sorted_by_id(quoted: dict[str, tuple[AnyNote, Reference]]) -> list[tuple[AnyNote, Reference]]:
    """The notes to quote, in order of id."""
    return [quoted[id_] for id_ in sorted(quoted)]


def _leads_nowhere(book: KnowledgeBase, note: AnyNote, one: Reference) -> bool:
    if not one.in_words or one.path[-1] in FREE or (one.path[0] == "what" and getattr(note, "sizes", None)):
        return False
    known = {folded(words) for words in ("nothing", "none")}
    return folded(one.words) not in known and all(book.named(kind, one.words) is None for kind in one.kinds)


RULE = Rule("name-that-leads-nowhere", "A name that leads nowhere", "gap", __doc__ or "", VehicleScope, check)
