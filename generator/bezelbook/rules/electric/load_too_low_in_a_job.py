"""A job hung speakers on an amplifier that come to less than the lowest load it is made for."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.fitting import Hung
from bezelbook.kinds.note.record import After
from bezelbook.kinds.record import Named
from bezelbook.reasoning.electric.hung import hung_sight, would_do
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import NO_SOUND
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding an amplifier: the first write-back here with too low a load on it."""
    done: set[str] = set()
    for note in unreplaced(scope.book.notes_at(scope.vehicle, scope.place)):
        for at, hung in enumerate(note.hung if isinstance(note, After) else ()):
            amplifier = scope.book.named("amplifier", hung.amplifier)
            if isinstance(note, After) and isinstance(amplifier, Named) and amplifier.id not in done:
                sight = hung_sight(scope.book, hung)
                if sight.says == "below the minimum":
                    done.add(amplifier.id)
                    yield _finding(scope, amplifier, note, (at, hung), sight.why)


def _finding(scope: PlaceScope, amplifier: Named, note: After, said: tuple[int, Hung], why: str) -> Finding:
    at, hung = said
    limit = "least_load_bridged" if hung.bridged == "bridged" else "least_load"
    ways = would_do(scope.book, hung)
    other = f"wire them {listed(ways, 'or')}" if ways else "fewer of them, others, or another amplifier"
    held = (Quote(amplifier.id, limit.replace("_", " "), (limit,), "amplifier"),) if _has(amplifier, limit) else ()
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{amplifier.id}",
        weight="stop",
        says=f"{hung.count or 1} {hung.speaker} on {amplifier.name}: {why}",
        quotes=(Quote.of(scope.book, note, ("hung", at)), *held),
        difference="the load",
        proposals=(
            Proposal("one is wrong", f"its lowest load stands, and that it ran is no advice: {other}"),
            Proposal("which thing", "the note has one channel, or the wiring, otherwise than the car"),
        ),
        loss=NO_SOUND,
        question="How do they hang there?",
        answers=("as written: call it back", "in series", "on one channel each", "another amplifier"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


def _has(amplifier: Named, limit: str) -> bool:
    return getattr(amplifier, limit, None) is not None


RULE = Rule("load-too-low-in-a-job", "A load too low, in a car", "conflict", __doc__ or "", PlaceScope, check)
