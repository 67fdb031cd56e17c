"""The speaker that the car came with was looked at, and nobody wrote its impedance."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Seen
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all such notes of a place, until one gives it."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Seen]:
    """The looks at a factory speaker, where none gives an impedance or a reading."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    looked = [note for note in notes if isinstance(note, Seen) and note.factory_speaker is not None]
    speakers = [note.factory_speaker for note in looked if note.factory_speaker is not None]
    return [] if any(one.impedance is not None or one.dc_resistance is not None for one in speakers) else looked


def _finding(scope: PlaceScope, found: list[Seen]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="tidy up",
        says="the factory speaker was looked at, and nobody wrote its impedance",
        quotes=tuple(Quote.of(scope.book, note, ("factory_speaker",)) for note in found[:MOST_QUOTES]),
        difference="the load",
        proposals=(Proposal("which thing", "the load: a meter at its plug, and say whether a capacitor is on it"),),
        loss=NO_SOUND,
        question="Who meters the factory speaker, on which car?",
        answers=("the next car", "somebody remembers", "leave it"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("factory-load-blank", "Nobody read the factory speaker", "gap", __doc__ or "", PlaceScope, check)
