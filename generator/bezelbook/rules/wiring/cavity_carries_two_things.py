"""What was metered in one plug of one build cannot all be true: a circuit in two cavities, or two in one."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Metered
from bezelbook.reasoning.builds import common_values
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.plugs import plug_named
from bezelbook.reasoning.losses import BOUGHT_TWICE, OUT_OF_PHASE, Loss
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import Circuit

SHOWN = 4
HOW = "meter or tone on the next car; no battery across a tweeter or behind a factory amplifier"


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a plug: the circuits that notes of one build put in different cavities, or change about."""
    done: set[str] = set()
    for car in cars_of(scope.book, scope.book.vehicles[scope.vehicle], scope.place):
        names = [plug_named(car, note) for note in car.notes if isinstance(note, Metered)]
        for name in dict.fromkeys(names):
            argued = _argued(car, name) if name in scope.book.connectors and name not in done else {}
            if argued:
                done.add(name)
                yield _finding(scope, car, name, argued)


def _argued(car: Car, name: str) -> dict[Circuit, tuple[str, ...]]:
    """The circuits that metered notes alone quarrel about, with those notes."""
    metered = {note.id for note in car.notes if isinstance(note, Metered) and plug_named(car, note) == name}
    found = {
        circuit: tuple(note for note in held.notes if note in metered)
        for circuit, held in contents(car, name).items()
        if held.state == "argued over" and held.cavities
    }
    return {circuit: notes for circuit, notes in found.items() if len(notes) > 1}


def _finding(scope: PlaceScope, car: Car, name: str, argued: dict[Circuit, tuple[str, ...]]) -> Finding:
    plug = scope.book.connectors[name]
    phase = _only_turned(argued)
    loss: Loss = OUT_OF_PHASE if phase else BOUGHT_TWICE
    notes = [scope.book.notes[id_] for id_ in dict.fromkeys(id_ for ids in argued.values() for id_ in ids)]
    about = listed([f"{circuit}" for circuit in argued][:SHOWN])
    view = Proposal("view", "one counted from the wire side, which mirrors the numbers: meter one wire again")
    new = Proposal("build", "the cars differ: a split that nobody has written")
    turned = Proposal("one is wrong", "plus and minus were changed about: check the phase and the label")
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, scope.vehicle, scope.place, common_values([car.build]), name)),
        weight="look first",
        says=f"{plug.name}: {'plus and minus of' if phase else 'different cavities for'} {about}",
        quotes=tuple(Quote.of(scope.book, note, ("cavities",)) for note in notes[:SHOWN]),
        difference="plus and minus" if phase else "the cavity",
        proposals=(turned, new) if phase else (view, new, Proposal("one is wrong", HOW)),
        loss=loss,
        question="Which way round?" if phase else "Which cavity is it?",
        answers=("the first", "the second", "the cars differ", "meter next car"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


def _only_turned(argued: dict[Circuit, tuple[str, ...]]) -> bool:
    """Whether each is one half of a speaker pair whose other half is argued over as well, and no more than one pair."""
    return len(argued) == 2 and len({circuit[:-1] for circuit in argued if circuit[-1] in "+-"}) == 1


RULE = Rule("cavity-carries-two-things", "Metered twice, differently", "conflict", __doc__ or "", PlaceScope, check)
