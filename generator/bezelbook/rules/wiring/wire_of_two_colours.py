"""One wire of a plug was seen in different colours on cars of one build."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Metered
from bezelbook.reasoning.builds import common_values
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.contents import cavities_meant
from bezelbook.reasoning.circuits.plugs import plug_named
from bezelbook.reasoning.circuits.said import circuit_said
from bezelbook.reasoning.circuits.wire_colour import colours_said
from bezelbook.reasoning.losses import OUT_OF_PHASE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed

SHOWN = 4


@dataclass(frozen=True, slots=True)
class _Wire:
    note: Metered
    at: int
    carries: str
    cavities: frozenset[int]
    colour: str
    colours: frozenset[str]


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a plug: the wires of which notes of one build tell different colours."""
    done: set[str] = set()
    for car in cars_of(scope.book, scope.book.vehicles[scope.vehicle], scope.place):
        notes = [note for note in car.notes if isinstance(note, Metered)]
        for name in dict.fromkeys(plug_named(car, note) for note in notes):
            wires = list(_wires(car, name, notes)) if name in scope.book.connectors and name not in done else []
            pairs = [(one, other) for one, other in combinations(wires, 2) if _differ(one, other)]
            if pairs:
                done.add(name)
                yield _finding(scope, car, name, pairs)


def _wires(car: Car, plug: str, notes: list[Metered]) -> Iterator[_Wire]:
    """The wires of this plug whose colour is told for cars of this build and of no other."""
    for note in notes:
        for at, one in enumerate(note.cavities if plug_named(car, note) == plug else ()):
            colours = colours_said(one.colour) if one.colour else None
            if colours and car.is_sure(note.model_copy(update={"sure": one.sure or note.sure}), "circuits"):
                cavities = cavities_meant(car.book.connectors[plug], one.cavity, note.view)
                carries = circuit_said(one.carries) or one.carries.casefold()
                yield _Wire(note, at, carries, cavities, one.colour or "", colours)


def _differ(one: _Wire, other: _Wire) -> bool:
    """Whether two notes speak of the same wire, which has what they carry and its cavity in common, and differ."""
    same = one.carries == other.carries and one.cavities & other.cavities
    return bool(same) and one.note.id != other.note.id and one.colours != other.colours


def _finding(scope: PlaceScope, car: Car, name: str, pairs: list[tuple[_Wire, _Wire]]) -> Finding:
    told = dict.fromkeys(f"{one.carries} is {one.colour} or {other.colour}" for one, other in pairs)
    first = {wire.note.id: wire for wire in reversed([wire for pair in pairs for wire in pair])}
    stripe = any(one.colours < other.colours or other.colours < one.colours for one, other in pairs)
    unseen = Proposal("how sure", "one of them saw no stripe: look again in good light")
    differ = Proposal("build", "the cars differ: a split that nobody has written")
    repaired = Proposal("one is wrong", "one wire was mended before, or another was meant: meter it on the next car")
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, scope.vehicle, scope.place, common_values([car.build]), name)),
        weight="look first",
        says=f"{car.book.connectors[name].name}: {listed(list(told)[:SHOWN])}",
        quotes=tuple(
            Quote.of(scope.book, wire.note, ("cavities", wire.at, "colour"))
            for wire in sorted(first.values(), key=lambda wire: wire.note.id)[:SHOWN]
        ),
        difference="the colour",
        proposals=(unseen, differ, repaired) if stripe else (differ, repaired),
        loss=OUT_OF_PHASE,
        question="Which colour is it?",
        answers=("the first", "the second", "the cars differ", "meter next car"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("wire-of-two-colours", "One wire, two colours", "conflict", __doc__ or "", PlaceScope, check)
