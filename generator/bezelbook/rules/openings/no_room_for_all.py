"""Strong notes of one opening cannot all be true, whatever room it has, and nothing simpler explains it."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.clash import Clash
from bezelbook.reasoning.clashes.openings import opening_clashes
from bezelbook.reasoning.clashes.telling import loss_of, path_of, proposals_of, quoted, says_of
from bezelbook.reasoning.speakers.cells import SPEAKER_PLACES

ANSWERS = ("the mount", "the build", "what was cut", "the face it was measured from", "one of them is wrong")


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each size and build about which the notes leave no room at all."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    if place is None or place.kind not in SPEAKER_PLACES:
        for clash in opening_clashes(scope.book, scope.vehicle, scope.place):
            if clash.first.explained.why == "room":
                yield _finding(scope, clash)


def _finding(scope: PlaceScope, clash: Clash) -> Finding:
    proposals = proposals_of(scope.book, scope.vehicle, scope.place, clash.first)
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{clash.state}/{clash.first.size}",
        weight="stop",
        says=says_of(clash.first),
        quotes=tuple(Quote.of(scope.book, note, path_of(note)) for note in quoted(clash)),
        difference=proposals[0].words,
        proposals=proposals,
        loss=loss_of(clash),
        question="These cannot all be true. What differs?",
        answers=ANSWERS,
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("no-room-for-all", "No opening fits all the notes", "conflict", __doc__ or "", PlaceScope, check)
