"""Which lead joins a new speaker to the plug that the car has at a speaker's place."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.plugs import Plugs, plugs_at
from bezelbook.reasoning.circuits.wiring import SPEAKERS
from bezelbook.reasoning.unknowns import Missing


@dataclass(frozen=True)
class SpeakerLead:
    """The plug at a speaker's place, the leads that fit it, the first to take first, and what is not known."""

    plugs: Plugs
    adapters: tuple[Adapter, ...]
    unknown: tuple[Missing, ...]


def speaker_lead(car: Car) -> SpeakerLead:
    """The leads for a speaker's place; a lead of that sort serves whichever side its circuits were named after."""
    plugs = plugs_at(car)
    fitting = tuple(one for one in car.book.adapters.values() if _fits(one, plugs))
    return SpeakerLead(plugs, fitting, tuple(_unknown(car, plugs, fitting)))


def _fits(adapter: Adapter, plugs: Plugs) -> bool:
    """Whether it is a speaker lead, an end of it takes the plug, and it carries a plus and a minus through."""
    halves = [(end.connector, end.side) for end in adapter.ends.values()]
    takes = any((connector, "unit side") in halves for connector in plugs.connectors)
    carried = {circuit[-1] for circuit, way in adapter.circuits.items() if circuit in SPEAKERS and way.does == "passes"}
    return adapter.adapter_kind == "speaker lead" and takes and carried == {"+", "-"}


def _unknown(car: Car, plugs: Plugs, fitting: tuple[Adapter, ...]) -> Iterator[Missing]:
    if plugs.state != "known":
        yield Missing("which plug the speaker has", "look with the lining off, 2 min", "the lead")
    for connector in plugs.connectors:
        held = contents(car, connector)
        if not any(circuit in held and held[circuit].state == "known" for circuit in SPEAKERS):
            yield Missing(
                "which cavity is plus",
                "compare with the new speaker by a phase check, 3 min; no battery on a tweeter or behind an amplifier",
                "whether the bass is thin",
            )
    for adapter in fitting:
        if not any(end.polarity_mark for end in adapter.ends.values()):
            yield Missing(f"which lead of the {adapter.name} is plus", "meter on the bench, 1 min", "the polarity")
