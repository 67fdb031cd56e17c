"""What helps where a chain lacks a circuit, with its limit; for what must never be made up, the bus or nothing."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.module.record import Module
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.metered_through import made_by_itself
from bezelbook.reasoning.circuits.suits import adapter_suits, module_suits, reads_bus
from bezelbook.reasoning.circuits.table import NONE_THERE, Row, table
from bezelbook.reasoning.circuits.wiring import NEVER_MADE_UP, SPEAKERS
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_quantity
from bezelbook.values.words import Circuit

_USUAL: Mapping[Circuit, str] = {
    "accessory": "a fuse in the fuse box that comes and goes with the key, with a relay for more than the radio's "
    "own lead",
    "constant": "a lead of its own from the battery, with a fuse beside it",
    "amplifier turn-on": "the turn-on lead of the new radio, run to what wakes the amplifier: meter there what that is",
    "aerial feed": "the aerial lead of the new radio",
    "illumination": "a fuse that comes with the side lights, or go without: the display keeps its day colours",
}


@dataclass(frozen=True, slots=True)
class Lack:
    """A circuit that the chain does not bring, why, and what would."""

    circuit: Circuit
    why: str
    must: bool
    remedies: tuple[str, ...]


def lacks(chain: Chain) -> tuple[Lack, ...]:
    """Every circuit that the job asks for and the chain does not bring, what must be fed first."""
    rows = [row for row in table(chain) if row.becomes in ("not there", "unknown") and not _is_no_loss(row)]
    found = [Lack(row.circuit, row.words, row.must, tuple(_remedies(chain, row.circuit))) for row in rows]
    return tuple(sorted(found, key=lambda lack: not lack.must))


def _is_no_loss(row: Row) -> bool:
    """Whether it is a speaker that the car does not have."""
    return row.circuit in SPEAKERS and not row.must and row.words == NONE_THERE


def _remedies(chain: Chain, circuit: Circuit) -> Iterator[str]:
    kinds = {need.kind for need in chain.outcome.feeds if need.circuit == circuit} if chain.outcome else set()
    if kinds == {"through"}:
        yield "meter it on the bench before anything goes in: what does not go through is lost to the radio"
        return
    cavities = _cavities(chain, circuit)
    if cavities:
        yield f"a lead from {cavities} of the plug, metered first"
    yield from _modules(chain.car, circuit, stays=_is_for_amplifier(chain.job))
    if not cavities or circuit not in SPEAKERS:
        yield _usual(chain.car, circuit)
    if circuit == "accessory" and _is_for_amplifier(chain.job):
        yield "an amplifier that wakes from the signal"


def _cavities(chain: Chain, circuit: Circuit) -> str:
    """Where notes found it in a plug of this car, or said so; empty where nobody did."""
    held = [contents(chain.car, connector).get(circuit) for connector in chain.plugs.connectors]
    found = sorted({cavity for one in held if one and one.state in ("known", "said") for cavity in one.cavities})
    return f"cavity {listed([str(one) for one in found], 'or')}" if found else ""


def _usual(car: Car, circuit: Circuit) -> str:
    """What a shop does where no module helps; common practice, no source."""
    if circuit in NEVER_MADE_UP:
        return "a module that reads the true signal off the bus, or go without: it is never made up"
    if circuit in SPEAKERS:
        return "look in the plug for the cavities; failing that, new leads to the speakers"
    if circuit == "ground":
        return f"a ground of its own: {_grounds(car)}"
    return _USUAL.get(circuit, "a lead that keeps it, or go without")


def _modules(car: Car, circuit: Circuit, *, stays: bool) -> Iterator[str]:
    """The modules made for this build that make it, with their limits and what they plug into."""
    for module in car.book.modules.values():
        output = module.outputs.get(circuit)
        of_its_kind = circuit in ("wheel buttons", "camera") and module.module_kind == circuit
        true = reads_bus(module) or circuit not in NEVER_MADE_UP
        right = module_suits(car, module).right and not _needs_a_wrong_lead(car, module)
        if (output or of_its_kind) and right and true:
            most = f", {show_quantity(output.most)} at most, with a relay for more" if output and output.most else ""
            yield f"the {module.name}{most}{_behind(car, module, stays=stays)}"


def _behind(car: Car, module: Module, *, stays: bool) -> str:
    needs = module.needs_adapter if isinstance(module.needs_adapter, tuple) else ()
    names = [car.book.adapters[one].name if one in car.book.adapters else one.replace("-", " ") for one in needs]
    if not names:
        return ""
    wants = f", which wants the {listed(names)}"
    apart = f"{wants}: that takes the radio's place in the plug, so look first whether the two go together"
    return apart if stays and any(_takes_its_place(car, one) for one in needs) else wants


def _needs_a_wrong_lead(car: Car, module: Module) -> bool:
    """Whether it cannot do without a lead that is wrong here, or that makes up what must never be made up."""
    needs = module.needs_adapter if isinstance(module.needs_adapter, tuple) else ()
    leads = [lead for lead in map(car.book.adapters.get, needs) if lead]
    return any(
        adapter_suits(car, lead).is_ == "wrong" or NEVER_MADE_UP & made_by_itself(car.book, lead).keys()
        for lead in leads
    )


def _takes_its_place(car: Car, adapter: str) -> bool:
    """Whether an adapter has no end for a radio that stays, so that it goes where that is plugged in."""
    record = car.book.adapters.get(adapter)
    return record is not None and not any(end.side == "vehicle side" for end in record.ends.values())


def _grounds(car: Car) -> str:
    points = [point for note in car.everywhere for point in getattr(note, "ground_points", ())]
    return listed(list(dict.fromkeys(points)), "or") if points else "bare metal, metered to the battery"


def _is_for_amplifier(job: Job) -> bool:
    return job.name in ("keep it and amplify", "add a sub")
