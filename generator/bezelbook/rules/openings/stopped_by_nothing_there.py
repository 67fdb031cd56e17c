"""Something is said to have been stopped by what its place and the mount that is named do not have."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.evidence import Standing, evidence_at
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.mounting import BARE
from bezelbook.reasoning.needs import needs_of_note
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import Ninth

MOST_QUOTES = 6
NOSE = ("nose width", "nose height")
SAYS = {
    "nose": "a nose is said to have stopped it with no mount there, and nothing else there is known to frame a nose",
    "depth": "it is said to have met something where the mount that is named has no hole",
}


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for a nose that nothing frames, and one for depths that the named mounts do not open."""
    strong = evidence_at(scope.book, scope.book.vehicles[scope.vehicle], scope.place).standing
    beside = [one for one in strong if _beside_the_hole(scope.book, one)]
    for what, found in (("nose", _without_frame(scope, strong)), ("depth", beside)):
        if found:
            yield _finding(scope, what, found)


def _without_frame(scope: PlaceScope, strong: tuple[Standing, ...]) -> list[Standing]:
    """The one note in which a nose met something with no mount there, where no other says that the car frames it."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    if place is None or place.kind != "plain opening":
        return []
    found = [one for one in strong if one.stack == BARE and _is_about_a_nose(one)]
    return found if len(found) == 1 and found[0].says == "does not" else []


def _is_about_a_nose(one: Standing) -> bool:
    if isinstance(one.note, Measured):
        return any(reading.of in NOSE for reading in one.note.readings)
    return one.note.reason == "nose"


def _beside_the_hole(book: KnowledgeBase, one: Standing) -> bool:
    """Whether every ninth at which it was too deep lies where its mounts have no hole and its plug does not leave.

    A plug may leave anywhere, so that nothing is said of one on whose exit nobody looked.
    """
    note, stack = one.note, one.stack
    if not isinstance(note, Tried) or one.says != "does not" or stack is None or stack.strange:
        return False
    leaves = {needs_of_note(book, note).exit} if one.plugs_on else set[Ninth | None]()
    return note.reason in ("depth", "plug") and bool(note.where) and not {*note.where, None} & {*stack.ninths, *leaves}


def _finding(scope: PlaceScope, what: str, found: list[Standing]) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{what}",
        weight="look first",
        says=SAYS[what],
        quotes=tuple(Quote.of(scope.book, one.note, ("reason",)) for one in found[:MOST_QUOTES]),
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
