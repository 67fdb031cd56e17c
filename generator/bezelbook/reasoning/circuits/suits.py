"""Whether an adapter or a module is right for a build of a car, and what makes it so or speaks against it."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.module.record import Module
from bezelbook.kinds.pieces import MadeFor
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.proven import NEVER, Used, proven
from bezelbook.values.words import Circuit

Suits = Literal[
    "proven", "made for it", "made for other builds", "made for other cars", "made for none by name", "wrong"
]
RIGHT: frozenset[Suits] = frozenset({"proven", "made for it"})
# These join what fits together, whatever the car: what they carry is where their shape puts it.
BY_SHAPE = frozenset({"speaker lead", "aerial", "extension", "splitter", "loop-back"})


NOBODY = "nobody here has fitted it"


@dataclass(frozen=True, slots=True)
class Suit:
    """Whether a piece is right, why in the shop's words, and what notes say of its use."""

    is_: Suits
    why: str
    used: Used

    @property
    def right(self) -> bool:
        """Whether it is known to be right for this build."""
        return self.is_ in RIGHT


def adapter_suits(car: Car, adapter: Adapter) -> Suit:
    """Whether an adapter is right for a build: a job that failed or a cavity that clashes rules it out."""
    return car.once(_adapter_suits, adapter.id)


def _adapter_suits(car: Car, id_: str) -> Suit:
    adapter = car.book.adapters[id_]
    used = proven(car).get(("adapter", id_), NEVER)
    if used.failed:
        return Suit("wrong", f"its circuits were not right here: {', '.join(used.failed)}", used)
    clash = next(iter(_clashes(car, adapter)), None)
    if clash:
        return Suit("wrong", clash, used)
    suit = _suit(car, adapter.made_for, used)
    if suit.is_ == "made for none by name" and adapter.adapter_kind in BY_SHAPE:
        return Suit("made for it", "it goes by its plug, whatever the car", used)
    return suit


def module_suits(car: Car, module: Module) -> Suit:
    """Whether a module is right for a build; one that reads the bus must be made for the car whose bus it reads."""
    used = proven(car).get(("module", module.id), NEVER)
    if used.failed:
        return Suit("wrong", f"it was not right here: {', '.join(used.failed)}", used)
    suit = _suit(car, module.made_for, used)
    if suit.is_ == "made for none by name" and not reads_bus(module):
        return Suit("made for it", "it works in any car, as printed", used)
    return suit


def reads_bus(module: Module) -> bool:
    """Whether what it makes is read off the car's own data."""
    return "bus" in module.needs or module.network is not None


def _suit(car: Car, made_for: Iterable[MadeFor], used: Used) -> Suit:
    if used.sure:
        return Suit("proven", f"{used.sure} in this build: {', '.join(used.notes)}", used)
    lines = tuple(made_for)
    here = [one for one in lines if one.vehicle == car.vehicle.id and one.place in (None, car.place)]
    if any(_agrees(car, one) for one in here):
        fitted = f"fitted on a car that may have been this build: {', '.join(used.maybe)}" if used.maybe else NOBODY
        return Suit("made for it", f"made for this build, as printed; {fitted}", used)
    if here:
        builds = " or ".join(dict.fromkeys(", ".join(one.splits.values()) for one in here))
        return Suit("made for other builds", f"made for {builds}, not for this build", used)
    if any(one.vehicle == car.vehicle.id for one in lines):
        words = "made for another place of this car: its leads may not be what is there"
        return Suit("made for other cars", words, used)
    if lines:
        return Suit("made for other cars", "made for other cars: its leads may not be what this car has there", used)
    return Suit("made for none by name", "it does not say for which cars it was made", used)


def _agrees(car: Car, one: MadeFor) -> bool:
    build = dict(car.build)
    return all(build.get(axis, value) == value for axis, value in one.splits.items())


def _clashes(car: Car, adapter: Adapter) -> Iterable[str]:
    """Circuits that it takes from a cavity in which a note that counts found another one."""
    for circuit, way in adapter.circuits.items():
        for letter, cavity in way.cavities.items():
            end = adapter.ends.get(letter)
            if end and end.connector and end.connector in car.book.connectors and end.side == "unit side":
                other = carried(car, end.connector, cavity)
                if other not in (None, circuit):
                    yield f"it takes {circuit} from cavity {cavity}, and this car has {other} there"


def carried(car: Car, connector: str, cavity: int) -> Circuit | None:
    """The circuit that is known to be in a cavity of a plug of this car."""
    held = contents(car, connector)
    return next(
        (circuit for circuit, one in held.items() if one.state == "known" and one.cavities == {cavity}),
        None,
    )
