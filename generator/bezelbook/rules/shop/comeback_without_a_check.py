"""A car came back, and nothing on the way of refitting tells the next person to look for that."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import After, Seen
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import GRILLE_BUZZ
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a place with a comeback, unless a note of its pieces says what to mind when they go back."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    back = [note for note in notes if isinstance(note, After) and note.comeback]
    minded = any(off.refit for note in notes if isinstance(note, Seen) for off in note.pieces)
    if back and not minded:
        said = [note.comeback or "" for note in back]
        yield Finding(
            rule=RULE.name,
            key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
            weight="tidy up",
            says=f"a car came back from here ({listed(said)}), and no refit line tells to look for it",
            quotes=tuple(Quote(note.id, f"came back: {note.comeback}", ("comeback",)) for note in back[:3]),
            difference="a line for the refit",
            proposals=(Proposal("scope", "write it beside the piece that it is about, under refit"),),
            loss=GRILLE_BUZZ,
            question="What should the next one look for when it goes back together?",
            answers=("write the line", "it was that car only", "ask its author"),
            vehicle=scope.vehicle,
            place=scope.place,
        )


RULE = Rule("comeback-without-a-check", "It came back, and no check for it", "gap", __doc__ or "", PlaceScope, check)
