"""For which vehicles and builds an adapter is right or wrong, and what shows it before the dash is open."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.circuits.cars import Car, cars_of, tells
from bezelbook.reasoning.circuits.look_alikes import look_alikes
from bezelbook.reasoning.circuits.plugs import Plugs, plugs_at
from bezelbook.reasoning.circuits.suits import adapter_suits
from bezelbook.values.listed import listed

Is = Literal["right", "look first", "wrong"]


@dataclass(frozen=True, slots=True)
class RightFor:
    """What an adapter is to some builds of a place, why, and how to tell those builds from the seat."""

    vehicle: str
    place: str
    builds: tuple[Build, ...]
    is_: Is
    why: str
    tell: str


def every_car(book: KnowledgeBase) -> tuple[Car, ...]:
    """Every build of every place of a book."""
    return tuple(
        car for vehicle in book.vehicles.values() for place in vehicle.places for car in cars_of(book, vehicle, place)
    )


def right_for(cars: Iterable[Car], adapter: Adapter) -> tuple[RightFor, ...]:
    """Every place among these that an adapter could be taken to by right or by mistake, the right ones first.

    A place whose plug it neither fits nor resembles, in a car it was not made for, is no mistake anybody makes.
    """
    found: dict[tuple[str, str, Is, str], list[Car]] = {}
    for car in cars:
        for is_, why in _verdict(car, adapter):
            found.setdefault((car.vehicle.id, car.place, is_, why), []).append(car)
    lines = [
        RightFor(vehicle, place, tuple(car.build for car in alike), is_, why, _tell(alike))
        for (vehicle, place, is_, why), alike in found.items()
    ]
    order = ("right", "look first", "wrong")
    return tuple(sorted(lines, key=lambda line: (order.index(line.is_), line.vehicle, line.place, line.builds)))


def ends_for_car(adapter: Adapter) -> tuple[str, ...]:
    """The connectors of the car that its ends take, each once."""
    takes = (end.connector for end in adapter.ends.values() if end.connector and end.side == "unit side")
    return tuple(dict.fromkeys(takes))


def _verdict(car: Car, adapter: Adapter) -> Iterator[tuple[Is, str]]:
    """At most one."""
    plugs = plugs_at(car)
    suit = adapter_suits(car, adapter)
    # A lead that goes by its plug is neither right nor wrong where that plug is not.
    named = bool(adapter.made_for) and (suit.right or suit.is_ == "made for other builds")
    if set(ends_for_car(adapter)) & set(plugs.connectors):
        if suit.is_ == "wrong":
            yield "wrong", suit.why
        elif suit.right and plugs.state == "known":
            yield "right", suit.why
        elif suit.right:
            yield "look first", f"{suit.why}; the plug is {plugs.state}, so look first"
        else:
            yield "look first", f"it plugs in, {_but(suit.why)}"
    elif named and plugs.plugs:
        yield "wrong", f"{suit.why}; the plug there is {_words(plugs)}"
    elif named and suit.right:
        yield "look first", f"{suit.why}; nobody has looked which plug is there"
    else:
        yield from _mistaken(car, adapter, plugs)


def _mistaken(car: Car, adapter: Adapter, plugs: Plugs) -> Iterator[tuple[Is, str]]:
    """A plug that looks like the one it takes, and is another."""
    for end in ends_for_car(adapter):
        alikes = look_alikes(car.book, end) if end in car.book.connectors else ()
        for alike in alikes:
            if alike.connector in plugs.connectors:
                apart = alike.difference.removesuffix(".") or "nobody has looked at the keys of both"
                yield "wrong", f"the plug there only looks like its own: {apart}"
                return


def _but(why: str) -> str:
    """Why a piece that plugs in is not known to be right, as the second half of a sentence."""
    return f"but it was {why}" if why.startswith("made for") else f"and {why}"


def _words(plugs: Plugs) -> str:
    return listed([plug.words for plug in plugs.plugs], "or")


def _tell(cars: list[Car]) -> str:
    """How to know these builds from the others from the seat; empty when these are all there are."""
    car = cars[0]
    every = cars_of(car.book, car.vehicle, car.place)
    if len(every) == len(cars):
        return ""
    return tells(car.vehicle, _differing(car.vehicle, cars))


def _differing(vehicle: Vehicle, cars: list[Car]) -> tuple[str, ...]:
    """The splits of which these builds do not have every value."""
    axes = tuple(axis for axis, _ in cars[0].build)
    return tuple(axis for axis in axes if {dict(car.build)[axis] for car in cars} != set(vehicle.splits[axis].values))
