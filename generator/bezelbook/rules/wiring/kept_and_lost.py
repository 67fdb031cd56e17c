"""Something still worked after one job and was lost after another, on cars that nothing on record tells apart."""

from collections.abc import Iterator
from itertools import product

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import After, Tried
from bezelbook.knowledge_base import folded
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.kept import BEARS
from bezelbook.reasoning.circuits.one_car import shared
from bezelbook.reasoning.circuits.said import functions_said, strong
from bezelbook.reasoning.losses import CAMERA_BLACK, SOUND_LOST
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import FUNCTIONS, Function

Done = After | Tried


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a function; other boxes, or another radio, explain it and nothing is wrong."""
    cars = cars_of(scope.book, scope.book.vehicles[scope.vehicle], scope.place)
    notes = [note for note in cars[0].notes if isinstance(note, Done) and strong(note)]
    for function in FUNCTIONS:
        kept = [note for note in notes if function in _functions(note.kept)]
        lost = [note for note in notes if function in _functions(note.lost)]
        pair = next((pair for pair in product(kept, lost) if _clash(cars, *pair)), None)
        if pair:
            yield _finding(scope, function, *pair)


def _functions(words: tuple[str, ...]) -> set[Function]:
    return {one for said in words for one in functions_said(said)}


def _clash(cars: list[Car], kept: Done, lost: Done) -> bool:
    radios = {note.what for note in (kept, lost) if isinstance(note, Tried)}
    return len(radios) < 2 and _with_what(kept) == _with_what(lost) and any(shared(cars, kept, lost, *BEARS))


def _with_what(note: Done) -> set[str]:
    return {folded(words) for words in (*note.adapters, *(note.mounts or () if note.mounts != "none" else ()))}


def _finding(scope: PlaceScope, function: Function, kept: Done, lost: Done) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{function}",
        weight="look first",
        says=f"{function}: kept in one job, lost in another",
        quotes=(
            Quote.of(scope.book, kept, ("kept",)),
            Quote.of(scope.book, lost, ("lost",)),
        ),
        difference=f"what became of the {function}",
        proposals=(
            Proposal("build", "the builds or the packages differ"),
            Proposal("which thing", "another box or another radio was used, and one did not write it"),
            Proposal("one is wrong", "its supply or its trigger was not joined: meter both on the next car"),
        ),
        loss=CAMERA_BLACK if function == "camera" else SOUND_LOST,
        question="What differed?",
        answers=("the build or package", "the box or the radio", "one was not joined", "meter next car"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("kept-and-lost", "Kept, and lost", "conflict", __doc__ or "", PlaceScope, check)
