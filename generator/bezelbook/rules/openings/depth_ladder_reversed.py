"""Something deeper is said to go in where something shallower did not, for want of depth."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.reasoning.builds import common_values
from bezelbook.reasoning.clashes.ladder import Rung, leave_it_open, reversed_pairs
from bezelbook.reasoning.differing.explaining import explained
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import STRONG

Pair = tuple[Rung, Rung]
# More proposals or quotes than this nobody reads aloud.
MOST = 5
MOST_QUOTES = 6
ANSWERS = ("the mount", "the build", "what was cut", "where the loom was", "one of them is wrong", "go and look")


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each state in which a yes is deeper than a no that nothing on record explains."""
    found: dict[str, list[Pair]] = {}
    car = scope.book.vehicles[scope.vehicle]
    for yes, no in reversed_pairs(scope.book, car, scope.place):
        if leave_it_open(scope.book, car, scope.place, yes, no):
            continue
        key = "/".join((RULE.name, scope.vehicle, scope.place, _state(no), "depth"))
        found.setdefault(key, []).append((yes, no))
    for key, pairs in found.items():
        yield _finding(scope, pairs, key)


def _state(no: Rung) -> str:
    builds = common_values(no.state.builds)
    mounts = "mounts not said" if no.state.stack is None else " and ".join(no.state.stack.key) or "no mount"
    return f"{builds}, {mounts}"


def _finding(scope: PlaceScope, pairs: list[Pair], key: str) -> Finding:
    yes, no = pairs[0]
    both_strong = yes.note.sure in STRONG and no.note.sure in STRONG
    vehicle = scope.book.vehicles[scope.vehicle]
    why = explained(scope.book, vehicle, scope.place, (yes.note, no.note), weighed=both_strong)[: MOST - 1]
    wrong = Proposal("one is wrong", "one of the two is wrong: offer the deeper one up again")
    proposals = (*(one.proposal for one in why), wrong)
    return Finding(
        rule=RULE.name,
        key=key,
        weight="stop" if both_strong else "look first",
        says=_says(yes, no),
        quotes=tuple(Quote.of(scope.book, one.note, ("verdict",)) for one in _told(pairs)),
        difference=proposals[0].words if why else "nothing on record differs",
        proposals=proposals,
        loss=TOO_DEEP,
        question="Both of these cannot be true. What differs?",
        answers=ANSWERS,
        vehicle=scope.vehicle,
        place=scope.place,
    )


def _told(pairs: list[Pair]) -> list[Rung]:
    """The first pair, and after it every other strong note that clashes in the same way."""
    first = [*pairs[0]]
    rest = [one for pair in pairs[1:] for one in pair if one.note.sure in STRONG]
    return [*{one.note.id: one for one in (*first, *rest)}.values()][:MOST_QUOTES]


def _says(yes: Rung, no: Rung) -> str:
    if yes.needs.key == no.needs.key:
        return "one and the same thing is said to go in and not to go in, for want of depth"
    return "something deeper is said to go in where something shallower did not, for want of depth"


RULE = Rule("depth-ladder-reversed", "Deeper goes in, shallower does not", "conflict", __doc__ or "", PlaceScope, check)
