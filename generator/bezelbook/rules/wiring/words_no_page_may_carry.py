"""A note carries a tightening figure or work on a restraint, where the vehicle's service information rules."""

from collections.abc import Iterator

from bezelbook.finding import Finding, NoteScope, Quote, Rule
from bezelbook.reasoning.losses import SOMEONE_HURT
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.withheld import found_in, withheld

FIELDS = ("words", "differed", "tell", "hidden", "settings", "condition", "comeback")
SORTS = ("a tightening figure", "work on a restraint")


def check(scope: NoteScope) -> Iterator[Finding]:
    """One finding a note; what it quotes has the figure or the procedure withheld."""
    said = {field: getattr(scope.note, field, None) or "" for field in FIELDS}
    found = {field: [sort for sort in found_in(text) if sort.startswith(SORTS)] for field, text in said.items()}
    fields = [field for field in FIELDS if found[field]]
    if not fields:
        return
    sorts = dict.fromkeys(sort.split(",")[0] for field in fields for sort in found[field])
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.note.id}",
        weight="stop",
        says=f"the words carry {listed(list(sorts))}",
        quotes=tuple(Quote(scope.note.id, withheld(said[field]), (field,)) for field in fields),
        difference="the words",
        proposals=(Proposal("one is wrong", "strip it, and point to the vehicle's service information"),),
        loss=SOMEONE_HURT,
        question="Who strips it from the note?",
        answers=("its author", "strip it now", "it is something else"),
        vehicle=getattr(scope.note, "vehicle", ""),
        place=getattr(scope.note, "place", ""),
    )


RULE = Rule("words-no-page-may-carry", "Service information in a note", "conflict", __doc__ or "", NoteScope, check)
