"""Strong notes of one place for a speaker cannot all be true, whatever hole and room it has."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.clashes.clash import Clash
from bezelbook.reasoning.clashes.speakers import speaker_clashes
from bezelbook.reasoning.clashes.telling import loss_of, path_of, proposals_of, quoted, says_of
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES

ANSWERS = ("the ring or bracket", "tabs in or out", "the build", "glass up or down", "one of them is wrong")


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each of hole, depth behind and room in front that the notes leave no room for."""
    place = scope.book.vehicles[scope.vehicle].places.get(scope.place)
    if place is not None and place.kind in SPEAKER_PLACES | EITHER_PLACES:
        for clash in speaker_clashes(scope.book, scope.vehicle, scope.place):
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


RULE = Rule("no-place-for-all", "No place fits all the notes", "conflict", __doc__ or "", PlaceScope, check)
