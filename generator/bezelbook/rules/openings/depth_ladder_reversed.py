"""Something deeper is said to go in where something shallower did not, for want of depth."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import common_values
from bezelbook.reasoning.differing.explaining import explained
from bezelbook.reasoning.evidence import ANY_CUT, UNCUT, Standing, evidence_at, standing_of
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.needs import Needs, needs_of_note
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.quote import quote
from bezelbook.values.span import NOTHING, Span
from bezelbook.values.words import NINTHS, STRONG, Ninth

# More than these nobody reads aloud.
MOST = 5
ANSWERS = ("the mount", "the build", "what was cut", "where the loom was", "one of them is wrong", "go and look")


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding for each state in which a yes is deeper than a no that nothing on record explains."""
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    tried = [_Tried(book, vehicle, note) for note in _comparable(book, vehicle, scope.place)]
    refused = [one for one in tried if one.note.verdict == "does not" and one.note.reason == "depth"]
    went_in = [one for one in tried if one.note.verdict == "goes in"]
    found: set[str] = set()
    for no in sorted(refused, key=lambda one: (one.note.sure not in STRONG, one.depth.low or 0, one.note.id)):
        for yes in sorted(went_in, key=lambda one: (one.note.sure not in STRONG, -(one.depth.low or 0), one.note.id)):
            key = "/".join((RULE.name, scope.vehicle, scope.place, _state(no), "depth"))
            if key not in found and _reversed(yes, no):
                found.add(key)
                yield _finding(scope, yes, no, key)


class _Tried:
    """A note of something tried, with its depth and the state it was tried in, strong or not."""

    def __init__(self, book: KnowledgeBase, vehicle: Vehicle, note: Tried) -> None:
        self.note = note
        self.needs: Needs = needs_of_note(book, note)
        self.state: Standing = standing_of(book, vehicle, note)

    @property
    def depth(self) -> Span:
        """Body depth, in nanometres."""
        return self.needs.spans["depth"]


def _comparable(book: KnowledgeBase, vehicle: Vehicle, place: str) -> list[Tried]:
    """Every note of something tried here, but those that wait to be read back and those that were replaced."""
    evidence = evidence_at(book, vehicle, place)
    notes = [one.note for one in evidence.standing] + [one.note for one in evidence.weak]
    return [note for note in notes if isinstance(note, Tried)]


def _reversed(yes: _Tried, no: _Tried) -> bool:
    """Whether the yes is certainly at least as deep as the no, and nothing that both say explains it."""
    if _explained(yes, no):
        return False
    deeper = NOTHING if yes.needs.key == no.needs.key else yes.depth.minus(no.depth)
    if yes.state.stack != no.state.stack:
        deeper = deeper.plus(_offset(no.state.stack)).minus(_offset(yes.state.stack))
    return deeper.low is not None and deeper.low >= 0


def _explained(yes: _Tried, no: _Tried) -> bool:
    """Whether both say something that differs, and the difference gives the yes more room."""
    return (
        not set(yes.state.builds) & set(no.state.builds)
        or (yes.state.cut not in (ANY_CUT, UNCUT, no.state.cut))
        or (yes.note.loom == "aside" and no.note.loom == "behind")
        or (yes.note.plugs == "off" and no.note.plugs == "on")
        or not _where_it_stopped(no) <= set(_behind(yes.state.stack))
    )


def _where_it_stopped(no: _Tried) -> set[Ninth]:
    """The ninths of which one stopped it: those that the note names, else all that lay behind it."""
    return set(no.note.where or _behind(no.state.stack))


def _behind(stack: Stack | None) -> tuple[Ninth, ...]:
    return NINTHS if stack is None else stack.ninths


def _offset(stack: Stack | None) -> Span:
    """How far out the part was held; a mount that nobody knows is taken as flush, and proposed as the difference."""
    return NOTHING if stack is None or stack.strange else stack.offset


def _state(no: _Tried) -> str:
    builds = common_values(no.state.builds)
    mounts = "mounts not said" if no.state.stack is None else " and ".join(no.state.stack.key) or "no mount"
    return f"{builds}, {mounts}"


def _finding(scope: PlaceScope, yes: _Tried, no: _Tried, key: str) -> Finding:
    both_strong = yes.note.sure in STRONG and no.note.sure in STRONG
    vehicle = scope.book.vehicles[scope.vehicle]
    why = explained(scope.book, vehicle, scope.place, yes.note, no.note)[: MOST - 1]
    wrong = Proposal("one is wrong", "one of the two is wrong: offer the deeper one up again")
    proposals = (*(one.proposal for one in why), wrong)
    return Finding(
        rule=RULE.name,
        key=key,
        weight="stop" if both_strong else "look first",
        says=_says(yes, no),
        quotes=tuple(Quote(one.note.id, quote(scope.book, one.note), ("verdict",)) for one in (yes, no)),
        difference=proposals[0].words if why else "nothing on record differs",
        proposals=proposals,
        loss=TOO_DEEP,
        question="Both of these cannot be true. What differs?",
        answers=ANSWERS,
        vehicle=scope.vehicle,
        place=scope.place,
    )


def _says(yes: _Tried, no: _Tried) -> str:
    if yes.needs.key == no.needs.key:
        return "one and the same thing is said to go in and not to go in, for want of depth"
    return "something deeper is said to go in where something shallower did not, for want of depth"


RULE = Rule("depth-ladder-reversed", "Deeper goes in, shallower does not", "conflict", __doc__ or "", PlaceScope, check)
