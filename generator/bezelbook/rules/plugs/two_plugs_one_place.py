"""Two different plugs were seen at one place of cars that nothing on record tells apart.

A car may have both: jobs that saw the one and the other together say so, and then nothing is wrong.
"""

from collections.abc import Iterator
from itertools import combinations

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Metered, Seen
from bezelbook.reasoning.builds import common_values
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.one_car import must_be_one, shared
from bezelbook.reasoning.circuits.plugs import plug_named, plugs_at
from bezelbook.reasoning.circuits.said import strong
from bezelbook.reasoning.evidence import job_key
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal

SawPlug = Seen | Metered
Pair = tuple[SawPlug, SawPlug]


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a place: a pair of one model year comes first, for that is a change within the year."""
    cars = cars_of(scope.book, scope.book.vehicles[scope.vehicle], scope.place)
    notes = [note for note in cars[0].notes if isinstance(note, SawPlug) and strong(note)]
    notes = [note for note in notes if plug_named(cars[0], note) in scope.book.connectors]
    pairs = [pair for pair in combinations(notes, 2) if _clash(cars, notes, pair)]
    if pairs:
        yield _finding(scope, cars, min(pairs, key=lambda pair: not _one_year(pair)))


def _one_year(pair: Pair) -> bool:
    return pair[0].year is not None and pair[0].year == pair[1].year


def _clash(cars: list[Car], notes: list[SawPlug], pair: Pair) -> bool:
    ours, theirs = (plug_named(cars[0], note) for note in pair)
    if ours == theirs or not any(shared(cars, *pair, "plug")):
        return False
    jobs = [{job_key(note) for note in notes if plug_named(cars[0], note) == name} for name in (ours, theirs)]
    return not jobs[0] & jobs[1] and not any(_known_elsewhere(cars, note) for note in pair)


def _known_elsewhere(cars: list[Car], note: SawPlug) -> bool:
    """Whether the build was left open, and a build that it may be is known to have this plug."""
    may = [car for car in cars if car.may_be(note, "plug")]
    name = plug_named(cars[0], note)
    return len(may) > 1 and any(
        plugs_at(car).state == "known" and name in plugs_at(car).connectors and not car.is_alone(note, "plug")
        for car in may
    )


def _finding(scope: PlaceScope, cars: list[Car], pair: Pair) -> Finding:
    one, other = (scope.book.connectors[plug_named(cars[0], note)].name for note in pair)
    within = f" in model year {pair[0].year}" if _one_year(pair) else ""
    new = "within the model year" if within else "while it was built"
    split = Proposal("build", f"the car was changed {new}: a new split, early and late, and a tell from the seat")
    blank = Proposal("build", "they were two builds that are known already: ask which")
    first = (split,) if must_be_one(cars, *pair, "plug") else (blank, split)
    builds = common_values([car.build for car in shared(cars, *pair, "plug")])
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{builds}/plug",
        weight="look first",
        says=f"{one} and {other}{within}, and nothing tells the cars apart",
        quotes=tuple(Quote.of(scope.book, note, ("plug",)) for note in pair),
        difference="the plug",
        proposals=(*first, Proposal("which thing", "the car has both, and each saw one")),
        loss=WRONG_HARNESS,
        question="Early and late, or both plugs in one car?",
        answers=(
            "a new split",
            "a build that we know",
            "both plugs are there",
            "one is wrong",
            "next car",
        ),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("two-plugs-one-place", "Two plugs at one place", "conflict", __doc__ or "", PlaceScope, check)
