"""An adapter was used on a car whose known plug it does not mate with."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.note.record import After, Tried
from bezelbook.kinds.record import Named
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.circuits.said import strong
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal

GOES_BETWEEN = ("plug-in", "T")


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding an adapter: the first job with it on cars all of whose plugs are known to be others."""
    cars = cars_of(scope.book, scope.book.vehicles[scope.vehicle], scope.place)
    done: set[str] = set()
    notes = [note for note in cars[0].notes if isinstance(note, After | Tried) and strong(note)]
    for note in notes:
        found = (scope.book.named("adapter", words) for words in note.adapters)
        used = [one for one in found if isinstance(one, Adapter)]
        # With another one in between, nobody can say which end meets which.
        may = [car for car in cars if car.may_be(note, "plug")]
        if len(used) == 1 and used[0].id not in done and _another(used[0], may):
            done.add(used[0].id)
            yield _finding(scope, used[0], note)


def _another(adapter: Adapter, cars: list[Car]) -> bool:
    """Whether it has no end for any plug that these cars have, all of which are known."""
    first = adapter.ends.get("a")
    if adapter.adapter_kind not in GOES_BETWEEN or first is None or first.connector is None:
        return False
    ends = {end.connector for end in adapter.ends.values()}
    known = [plugs_at(car) for car in cars]
    whole = all(one.state == "known" and len(one.connectors) == len(one.plugs) for one in known)
    return whole and not any(ends & set(one.connectors) for one in known)


def _finding(scope: PlaceScope, adapter: Named, note: After | Tried) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{adapter.id}",
        weight="look first",
        says=f"{adapter.name} was used, and mates with no plug that is known here",
        quotes=(
            Quote.of(scope.book, note, ("adapters",)),
            Quote(adapter.id, f"{adapter.name}: end a", ("ends", "a", "connector"), "adapter"),
        ),
        difference="the plug",
        proposals=(
            Proposal("build", "that car was another build: write early or late"),
            Proposal("which thing", "the car has a second plug, or another adapter is meant"),
        ),
        loss=WRONG_HARNESS,
        question="What was that car's plug?",
        answers=("another build", "a second plug", "another adapter", "next car"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("adapter-for-another-plug", "An adapter for another plug", "conflict", __doc__ or "", PlaceScope, check)
