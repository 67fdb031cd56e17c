"""Something is said to have been stopped by what its place and the mount that is named do not have."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.evidence import Standing, evidence_at
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.mounting import BARE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.quote import quote

MOST_QUOTES = 3
NOSE = ("nose width", "nose height")
SAYS = {
    "nose": "a nose is said to have stopped it with no mount there, and nothing else there is known to frame a nose",
    "depth": "it is said to have met something where the mount that is named has no hole",
}


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for a nose that nothing frames, and one for depths that the named mounts do not open."""
    strong = evidence_at(scope.book, scope.book.vehicles[scope.vehicle], scope.place).standing
    for what, found in (("nose", _without_frame(scope, strong)), ("depth", [*filter(_beside_the_hole, strong)])):
        if found:
            yield _finding(scope, what, found)


def _without_frame(scope: PlaceScope, strong: tuple[Standing, ...]) -> list[Standing]:
    """The one note in which a nose stopped it with no mount, where no other tells of a nose that the car frames."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    if place is None or place.kind != "plain opening":
        return []
    found = [one for one in strong if _meets_a_frame(one)]
    return found if len(found) == 1 and found[0].stack == BARE and isinstance(found[0].note, Tried) else []


def _meets_a_frame(one: Standing) -> bool:
    """Whether it tells of something that framed a nose and is not known to be of a mount."""
    if isinstance(one.note, Measured):
        return any(reading.of in NOSE for reading in one.note.readings)
    return one.note.reason == "nose" and not (one.stack and any(hole in one.stack.holes for hole in NOSE))


def _beside_the_hole(one: Standing) -> bool:
    """Whether every ninth at which it was too deep lies where its mounts have no hole."""
    note = one.note
    if not isinstance(note, Tried) or one.stack is None or note.reason not in ("depth", "plug"):
        return False
    return bool(note.where) and not set(note.where) & set(one.stack.ninths)


def _finding(scope: PlaceScope, what: str, found: list[Standing]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{what}",
        weight="look first",
        says=SAYS[what],
        quotes=tuple(Quote(one.note.id, quote(scope.book, one.note), ("reason",)) for one in found[:MOST_QUOTES]),
        difference="the mount",
        proposals=(
            Proposal("mount", "the mount: another one was used than the note says"),
            Proposal("one is wrong", "the reason is wrong: something else stopped it"),
        ),
        loss=SALE_LOST,
        question="Which mount was used?",
        answers=("another mount", "no mount", "the reason is another", "ask its author"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("stopped-by-nothing-there", "Stopped by what is not there", "conflict", __doc__ or "", PlaceScope, check)
