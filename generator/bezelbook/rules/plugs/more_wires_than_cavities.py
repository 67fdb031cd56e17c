"""More terminals, or a higher number, were seen in a plug than its record has cavities."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.note.record import Metered, Seen
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a connector: the first note at the place that its record has no room for."""
    done: set[str] = set()
    for note in unreplaced(scope.book.notes_at(scope.vehicle, scope.place)):
        words = note.plug if isinstance(note, Seen | Metered) else None
        plug = scope.book.named("connector", words or "")
        most = _most(note) if isinstance(note, Seen | Metered) else 0
        if isinstance(plug, Connector) and plug.cavities and most > plug.cavities and plug.id not in done:
            done.add(plug.id)
            yield Finding(
                rule=RULE.name,
                key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{plug.id}",
                weight="look first",
                says=f"{most} in the plug, and {plug.name} has {plug.cavities} cavities",
                quotes=(
                    Quote.of(scope.book, note, ("plug",)),
                    Quote(plug.id, f"{plug.name}: {plug.cavities} cavities", ("cavities",), "connector"),
                ),
                difference="how many cavities there are",
                proposals=(
                    Proposal("one is wrong", "its record counted the wires, not the cavities: it keeps both numbers"),
                    Proposal("which thing", "that was another plug that looks like it"),
                ),
                loss=WRONG_HARNESS,
                question="How many cavities does it have?",
                answers=(str(most), str(plug.cavities), "another plug", "count them on the next car"),
                vehicle=scope.vehicle,
                place=scope.place,
            )


def _most(note: Seen | Metered) -> int:
    return max((one.cavity for one in note.cavities), default=0) if isinstance(note, Metered) else note.populated or 0


RULE = Rule("more-wires-than-cavities", "More wires than cavities", "conflict", __doc__ or "", PlaceScope, check)
