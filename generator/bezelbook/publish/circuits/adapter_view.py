"""For which vehicles and builds an adapter is right or wrong, and what goes into a connector, as lines of a page."""

from collections.abc import Iterable
from dataclasses import dataclass

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.connector.record import Connector
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.reasoning.circuits.builds_said import builds_said
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.circuits.right_for import RightFor, ends_for_car, every_car, right_for

IS = {"right": "Right", "look first": "Look first", "wrong": "Wrong"}


@dataclass(frozen=True, slots=True)
class RightLine:
    """An adapter and some builds of a place: `is_` in words, why, and how to tell those builds from the seat."""

    adapter: str
    adapter_at: str
    vehicle: str
    vehicle_at: str
    place: str
    builds: str
    is_: str
    why: str
    tell: str


@dataclass(frozen=True, slots=True)
class Mates:
    """What goes into a connector: adapters by the half they take, and the places in which it was seen."""

    adapters: tuple[tuple[str, str, str], ...]
    places: tuple[tuple[str, str, str], ...]


def adapter_lines(book: KnowledgeBase, adapter: Adapter, to: Links) -> tuple[RightLine, ...]:
    """What an adapter is right and wrong for."""
    return right_lines(book, [(adapter.id, line) for line in right_for(every_car(book), adapter)], to)


def right_lines(book: KnowledgeBase, lines: Iterable[tuple[str, RightFor]], to: Links) -> tuple[RightLine, ...]:
    """Lines ready to be shown."""
    return tuple(_line(book, adapter, line, to) for adapter, line in lines)


def _line(book: KnowledgeBase, adapter: str, line: RightFor, to: Links) -> RightLine:
    vehicle = book.vehicles[line.vehicle]
    place = vehicle.places[line.place].name or line.place.replace("-", " ")
    return RightLine(
        book.adapters[adapter].name,
        to.record("adapter", adapter),
        vehicle.name,
        to.vehicle(line.vehicle),
        place,
        builds_said(vehicle, line.builds) or "every build",
        IS[line.is_],
        line.why,
        line.tell,
    )


def mates(book: KnowledgeBase, connector: Connector, to: Links) -> Mates:
    """Every adapter with an end for this connector, and every place in which a note saw it."""
    adapters = [
        (adapter.name, to.record("adapter", adapter.id), _half(adapter, connector.id))
        for adapter in book.adapters.values()
        if any(end.connector == connector.id for end in adapter.ends.values())
    ]
    seen: dict[tuple[str, str, str], list[Car]] = {}
    for car in every_car(book):
        for plug in plugs_at(car).plugs:
            if plug.connector == connector.id:
                seen.setdefault((car.vehicle.id, car.place, plug.state), []).append(car)
    return Mates(tuple(adapters), tuple(_seen(key, cars, to) for key, cars in seen.items()))


def _half(adapter: Adapter, connector: str) -> str:
    if connector in ends_for_car(adapter):
        return "takes the car's plug"
    sides = {end.side for end in adapter.ends.values() if end.connector == connector}
    return "goes into the radio" if "vehicle side" in sides else "nobody looked which half it is"


def _seen(key: tuple[str, str, str], cars: list[Car], to: Links) -> tuple[str, str, str]:
    vehicle, place, state = key
    record = cars[0].vehicle
    name = record.places[place].name or place.replace("-", " ")
    builds = builds_said(record, [car.build for car in cars])
    return ", ".join(word for word in (record.name, name, builds) if word), to.vehicle(vehicle), state
