"""Something deeper is said to go in where something shallower did not, for want of depth."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.clashes.ladder import Rung, leave_it_open, reversed_pairs
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.quote import quote
from bezelbook.values.listed import listed
from bezelbook.values.words import STRONG

Pair = tuple[Rung, Rung]
# More quotes than this nobody reads aloud.
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
    builds = "+".join("-".join(value for _, value in build) for build in no.state.builds) or "any build"
    mounts = "mounts not said" if no.state.stack is None else " and ".join(no.state.stack.key) or "no mount"
    return f"{builds}, {mounts}"


def _finding(scope: PlaceScope, pairs: list[Pair], key: str) -> Finding:
    yes, no = pairs[0]
    both_strong = yes.note.sure in STRONG and no.note.sure in STRONG
    proposals = tuple(_proposals(yes, no))
    return Finding(
        rule=RULE.name,
        key=key,
        weight="stop" if both_strong else "look first",
        says=_says(yes, no),
        quotes=tuple(Quote(one.note.id, quote(scope.book, one.note), ("verdict",)) for one in _told(pairs)),
        difference=proposals[0].words if proposals else "nothing on record differs",
        proposals=proposals or (Proposal("one is wrong", "one of the two is wrong: offer the deeper one up again"),),
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


def _unsaid(ids: list[str], what: str) -> str:
    return f"{listed(ids)} {'does' if len(ids) == 1 else 'do'} not say {what}"


def _proposals(yes: Rung, no: Rung) -> Iterator[Proposal]:
    """What would make both true, the likeliest first: whatever one of them left blank or nobody can compare."""
    both = (yes, no)
    unsaid = [one.note.id for one in both if one.note.mounts is None]
    if unsaid:
        yield Proposal("mount", f"the mount: {_unsaid(unsaid, 'which was used')}")
    if yes.state.stack != no.state.stack:
        strange = [words for one in both if one.state.stack for words in one.state.stack.strange]
        for words in strange:
            yield Proposal("mount", f'the mount: nobody has written how far "{words}" holds a thing out')
    split = [one.note.id for one in both if len(one.state.builds) > 1]
    if split:
        yield Proposal("build", f"the build: {_unsaid(split, 'which the car was')}")
    if yes.note.cut is None:
        yield Proposal("cut", f"a cut: {_unsaid([yes.note.id], 'whether anything was cut')}")
    yield from _moved(yes.note, no.note)
    weak = [f"{one.note.id} was only {one.note.sure}" for one in both if one.note.sure not in STRONG]
    if weak:
        yield Proposal("how sure", f"how sure: {listed(weak)}")


def _moved(yes: Tried, no: Tried) -> Iterator[Proposal]:
    """The loom and the plugs, where a blank may have given the yes more room."""
    looms = [note.id for note in (yes, no) if note.loom is None]
    if looms and yes.loom != "behind" and no.loom != "aside":
        yield Proposal("loom", f"the loom: {_unsaid(looms, 'where it went')}")
    plugs = [note.id for note in (yes, no) if note.plugs is None]
    fitted = yes.plugs is None and yes.sure == "fitted"  # which takes the plugs along
    if plugs and not fitted and yes.plugs != "on" and no.plugs != "off":
        yield Proposal("plugs", f"the plugs: {_unsaid(plugs, 'whether they were on')}")


RULE = Rule("depth-ladder-reversed", "Deeper goes in, shallower does not", "conflict", __doc__ or "", PlaceScope, check)
