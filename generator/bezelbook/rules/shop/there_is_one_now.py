"""An older note says that there is no kit or plug for this, and a newer one fitted with one."""

import re
from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import After, Tried
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import STRONG

_THERE_IS_NONE = re.compile(
    r"\b(?:no|not any|nobody (?:makes|sells|has))(?: \w+){0,2} (?:kit|bracket|adapter|harness|plug|surround|plate)\b"
    r"(?! (?:used|needed|on|fitted|was))",
    re.IGNORECASE,
)


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a place: a strong yes with a mount or an adapter, newer than the word that there is none."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    none = [note for note in notes if isinstance(note, Tried) and _says_none(note)]
    done = [note for note in notes if isinstance(note, Tried | After) and _used_one(note)]
    pairs = [(old, new) for old in none for new in done if old.date and new.date and old.date < new.date]
    if pairs:
        old, new = min(pairs, key=lambda pair: (pair[0].date or "", pair[1].id))
        yield Finding(
            rule=RULE.name,
            key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
            weight="tidy up",
            says="an older note says that there is none, and a newer one used one",
            quotes=tuple(Quote.of(scope.book, note, ("date",)) for note in (old, new)),
            difference="when it was written",
            proposals=(Proposal("one is wrong", f"let {new.id} replace {old.id}, and say why"),),
            loss=SALE_LOST,
            question="Is the old one over?",
            answers=("yes, replaced", "no, it is for another build", "ask its author"),
            vehicle=scope.vehicle,
            place=scope.place,
        )


def _says_none(note: Tried) -> bool:
    return note.verdict in ("does not", "not tried") and bool(_THERE_IS_NONE.search(note.words or ""))


def _used_one(note: Tried | After) -> bool:
    went_in = isinstance(note, After) or (note.verdict == "goes in" and note.sure in STRONG)
    return went_in and bool(note.adapters or isinstance(note.mounts, tuple))


RULE = Rule("there-is-one-now", "There is one now", "conflict", __doc__ or "", PlaceScope, check)
