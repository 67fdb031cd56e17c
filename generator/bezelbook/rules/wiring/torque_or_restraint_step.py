"""A note tells a torque or what to do at a restraint, which only the vehicle's service information may."""

import re
from collections.abc import Iterator

from bezelbook.finding import Finding, NoteScope, Quote, Rule
from bezelbook.kinds.note.record import Bench
from bezelbook.reasoning.losses import SOMEONE_HURT
from bezelbook.reasoning.proposal import Proposal

_TORQUE = re.compile(
    r"\d\s*(?:nm|n·m|newton[- ]?met(?:er|re)s?|(?:ft|foot|in|inch)[- ]?(?:lbs?|pounds?))\b", re.IGNORECASE
)
_WAIT = re.compile(r"\bwait\b[^.;]*?\d+\s*(?:s|sec|seconds?|min|minutes?)\b", re.IGNORECASE)
_RESTRAINT = re.compile(r"\b(?:air ?bags?|restraints?|srs|pretensioners?|belt tensioners?)\b", re.IGNORECASE)


def check(scope: NoteScope) -> Iterator[Finding]:
    """One finding a note; a wait counts only beside the word for a restraint, and the value is not said again."""
    note = scope.note
    words = note.words or ""
    if not _TORQUE.search(words) and not (_WAIT.search(words) and _RESTRAINT.search(words)):
        return
    vehicle, place = ("", "") if isinstance(note, Bench) else (note.vehicle, note.place)
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{note.id}",
        weight="stop",
        says="a note tells a torque or what to do at a restraint; only the vehicle's service information may",
        quotes=(Quote(note.id, "a value in its words, not said again here", ("words",)),),
        difference="what the service information says",
        proposals=(Proposal("one is wrong", "strip it from the note, and point to the service information"),),
        loss=SOMEONE_HURT,
        question="Who strips it from the note?",
        answers=("its author", "strip it now"),
        vehicle=vehicle,
        place=place,
    )


RULE = Rule("torque-or-restraint-step", "Not for a note to tell", "slip", __doc__ or "", NoteScope, check)
