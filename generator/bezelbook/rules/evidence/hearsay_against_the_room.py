"""A weak note says of something what the strong notes of the opening rule out."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.cells import frame_of
from bezelbook.reasoning.clashes.ladder import reversed_pairs
from bezelbook.reasoning.evidence import ROOM_REASONS, evidence_at, standing_of
from bezelbook.reasoning.losses import WALK
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.room import Rooms
from bezelbook.reasoning.vocabulary import OPENINGS
from bezelbook.values.words import STRONG

MOST_QUOTES = 3


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for all weak notes of an opening that the strong ones, which agree, leave no room for."""
    found = _found(scope)
    if found:
        yield _finding(scope, found)


def _found(scope: PlaceScope) -> list[Tried]:
    """The weak notes that no room agrees with; where the ladder tells it already, it is not told again."""
    car = scope.book.vehicles[scope.vehicle]
    place = car.places.get(scope.place)
    evidence = evidence_at(scope.book, car, scope.place)
    rooms = Rooms(frame_of(scope.book, car, scope.place), evidence.standing)
    if place is None or place.kind not in OPENINGS or not rooms.notes or not rooms.possible:
        return []
    told = {one.note.id for pair in reversed_pairs(scope.book, car, scope.place) for one in pair}
    weak = [beside.note for beside in evidence.weak if isinstance(beside.note, Tried) and beside.note.id not in told]
    heard = [note for note in weak if note.verdict in ("goes in", "does not") and note.sure not in STRONG]
    heard = [note for note in heard if note.reason in ROOM_REASONS]
    return [note for note in heard if not rooms.agreeing((*rooms.notes, standing_of(scope.book, car, note))).possible]


def _finding(scope: PlaceScope, found: list[Tried]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}",
        weight="tidy up",
        says="somebody said so, and what was fitted and measured here rules it out",
        quotes=tuple(Quote.of(scope.book, note, ("sure",)) for note in found[:MOST_QUOTES]),
        difference="how sure",
        proposals=(Proposal("how sure", "how sure: the strong notes stand, and this one stays as told"),),
        loss=WALK,
        question="Does the strong note stand?",
        answers=("it stands", "open again", "ask what differed"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("hearsay-against-the-room", "Somebody said otherwise", "conflict", __doc__ or "", PlaceScope, check)
