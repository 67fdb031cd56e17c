"""What is said to tell one build from the seat is said of another build of the same split as well."""

from collections.abc import Iterator
from itertools import combinations

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Seen
from bezelbook.knowledge_base import folded
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal

# A tell, the value it is said to tell, and where that is written.
Tell = tuple[str, str, Quote]


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a split: the first two values that one tell is said of."""
    vehicle = scope.book.vehicles[scope.vehicle]
    for axis in vehicle.splits:
        said = [*_of_the_record(scope, axis), *_of_notes(scope, axis)]
        clash = next((pair for pair in combinations(said, 2) if _same_tell(*pair)), None)
        if clash:
            yield _finding(scope, axis, *clash)


def _same_tell(one: Tell, other: Tell) -> bool:
    return one[0] == other[0] and one[1] != other[1]


def _of_the_record(scope: VehicleScope, axis: str) -> Iterator[Tell]:
    for value, side in scope.book.vehicles[scope.vehicle].splits[axis].values.items():
        if side.tell:
            path = ("splits", axis, "values", value, "tell")
            yield _plain(side.tell), value, Quote(scope.vehicle, f"{value}: {side.tell}", path, "vehicle")


def _of_notes(scope: VehicleScope, axis: str) -> Iterator[Tell]:
    """What notes whose car is of a known value saw; where several splits are known it may tell any of them."""
    for note in unreplaced(scope.book.notes_of(scope.vehicle)):
        if isinstance(note, Seen) and note.tell and set(note.splits) == {axis}:
            yield _plain(note.tell), note.splits[axis], Quote.of(scope.book, note, ("tell",))


def _plain(words: str) -> str:
    return folded(words).rstrip(". ")


def _finding(scope: VehicleScope, axis: str, one: Tell, other: Tell) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{axis}",
        weight="stop",
        says=f"“{one[0]}” is said to tell {one[1]}, and to tell {other[1]}",
        quotes=(one[2], other[2]),
        difference="which build it tells",
        proposals=(
            Proposal("one is wrong", f"one of them changed {one[1]} and {other[1]} about"),
            Proposal("build", "it tells nothing of this split: both have it"),
        ),
        loss=WRONG_HARNESS,
        question="Which one does it tell?",
        answers=(one[1], other[1], "it tells nothing", "look at two cars"),
        vehicle=scope.vehicle,
    )


RULE = Rule("tell-of-both-sides", "One tell for two builds", "conflict", __doc__ or "", VehicleScope, check)
