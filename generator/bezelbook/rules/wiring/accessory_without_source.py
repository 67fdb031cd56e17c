"""Accessory comes over the data bus, and nothing in the book makes a switched 12 V of it for that car."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Metered, Seen
from bezelbook.kinds.pieces import MadeFor
from bezelbook.reasoning.circuits.said import strong
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import FLAT_BATTERY
from bezelbook.reasoning.proposal import Proposal


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle of which a note says bus only; a maker that does not say what it is for counts as one."""
    notes = [note for note in unreplaced(scope.book.notes_of(scope.vehicle)) if isinstance(note, Seen | Metered)]
    found = [note for note in notes if note.accessory_supply == "data bus" and strong(note)]
    if not found or _made(scope):
        return
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="look first",
        says="accessory comes over the bus alone, and nothing in the book makes it for this car",
        quotes=tuple(Quote.of(scope.book, note, ("accessory_supply",)) for note in found[:3]),
        difference="where accessory comes from",
        proposals=(
            Proposal(
                "which thing",
                "a module on the bus; or a switched fuse and relay, metered asleep",
            ),
        ),
        loss=FLAT_BATTERY,
        question="Where does it come from?",
        answers=("a module: write a record", "a switched fuse and a relay", "meter next car"),
        vehicle=scope.vehicle,
    )


def _made(scope: VehicleScope) -> bool:
    """Whether a module or an adapter makes it that is for this car, or for nobody knows which."""
    modules = (one.made_for for one in scope.book.modules.values() if "accessory" in one.outputs)
    ways = ((one.made_for, one.circuits.get("accessory")) for one in scope.book.adapters.values())
    made_for = [*modules, *(cars for cars, way in ways if way and way.does == "makes")]
    return any(_for_it(cars, scope.vehicle) for cars in made_for)


def _for_it(cars: tuple[MadeFor, ...], vehicle: str) -> bool:
    return not cars or any(one.vehicle == vehicle for one in cars)


RULE = Rule("accessory-without-source", "Nothing makes accessory", "gap", __doc__ or "", VehicleScope, check)
