"""A small car's wiring as records of a book, and what the book's own search makes of it."""

from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.circuits.cars import cars_of
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.jobs import Job, Task
from bezelbook.reasoning.circuits.outcome import Outcome
from bezelbook.reasoning.circuits.pieces import candidates
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.circuits.search import best_chain
from bezelbook.reasoning.circuits.wiring import Half, Need, Site
from tests.laws.records import record
from tests.laws.wiring_world import CIRCUITS, CONNECTORS, KEYS, Adapter, CarPlug, Module, World

VEHICLE, PLACE = "small-car", "opening"
MADE_FOR = {"this car": [VEHICLE], "another car": ["other-car"], "": []}


def book_of(world: World) -> KnowledgeBase:
    """The book in which all of a world is written down."""
    made: list[Record] = [record("connectors", name, _connector(name)) for name in CONNECTORS]
    made += [record("vehicles", name, _vehicle()) for name in (VEHICLE, "other-car")]
    made += [record("notes", f"note-{plug.connector}", _note(plug)) for plug in world.plugs]
    made += [record("adapters", one.name, _adapter(one)) for one in world.adapters]
    made += [record("modules", one.name, _module(one)) for one in world.modules]
    shelf = [one.name for one in world.adapters if one.on_shelf]
    made += [record("shelf", name, {"thing": name, "count": 1}) for name in shelf]
    return knowledge_base(made)


def chain_of(world: World) -> tuple[tuple[str, ...], Outcome]:
    """The pieces that the book's search names, by their own names, and what it says comes of them."""
    found = whole_chain_of(world)
    assert found.outcome is not None
    return tuple(one.record.id for one in found.pieces), found.outcome


def whole_chain_of(world: World) -> Chain:
    """The chain as the book would show it: its pieces as records, and what comes of them."""
    book = book_of(world)
    [car] = cars_of(book, book.vehicles[VEHICLE], PLACE)
    needs = needs_of(world)
    closing = frozenset(need.circuit for need in needs if need.kind == "through")
    every = {one.piece.name: one for one in candidates(car, closing)}
    names, outcome = best_chain(site_of(world), needs, [one.piece for one in every.values()])
    job = Job("keep it and amplify" if world.radio else "replace the radio")
    task = Task(site_of(world), needs, closing)
    return Chain(car, job, plugs_at(car), task, tuple(every[name] for name in names), outcome)


def site_of(world: World) -> Site:
    """Where the chain begins and ends."""
    car = tuple(Half(plug.connector, "vehicle side") for plug in world.plugs)
    unit = Half(world.unit[0], "unit side") if world.unit else None
    radio = Half(world.radio[0], "unit side") if world.radio else None
    return Site(car, unit, radio)


def needs_of(world: World) -> tuple[Need, ...]:
    """What is wanted."""
    return tuple(Need(circuit, kind, must) for circuit, kind, must in world.needs)  # type: ignore[arg-type]


def _connector(name: str) -> dict[str, Any]:
    keying = [{"kind": "rib", "side": "top", "reads": KEYS[name]}]
    return {"name": name, "shell": "square", "side": "vehicle side", "cavities": len(CIRCUITS), "keying": keying}


def _vehicle() -> dict[str, Any]:
    places = {PLACE: {"kind": "plain opening", "side": "centre"}}
    return {"name": "car", "vehicle_class": "small car", "generation": 1, "model_years": 1, "places": places}


def _note(plug: CarPlug) -> dict[str, Any]:
    read = {number: one if one in plug.has else "nothing" for number, one in enumerate(CIRCUITS, 1)}
    found = {number: words for number, words in read.items() if plug.all_read or words != "nothing"}
    cavities = [{"cavity": number, "carries": words} for number, words in found.items()]
    form = {"form": "metered", "cavities": cavities} if cavities else {"form": "seen"}
    return {"vehicle": VEHICLE, "place": PLACE, "plug": plug.connector, "job": "one-job"} | form


def _adapter(one: Adapter) -> dict[str, Any]:
    ends = {
        letter: {"connector": end[0], "side": end[1]} if end else {"ends_in": "bare leads"}
        for letter, end in one.ends.items()
    }
    every = [letter for letter, end in one.ends.items() if end] if len(one.ends) > 2 else list(one.ends)
    ways = {circuit: _way(one, circuit, word, every) for circuit, word in one.ways.items()}
    return {
        "name": one.name,
        "adapter_kind": "T",
        "ends": ends,
        "circuits": ways,
        "made_for": MADE_FOR[one.made_for],
        "needs_module": [one.needs_module] if one.needs_module else None,
        "loop_backs": [{"closes": list(one.loops), "how": "supplied"}] if one.loops else [],
    }


def _way(one: Adapter, circuit: str, word: str, every: list[str]) -> dict[str, Any]:
    way: dict[str, Any] = {"does": word}
    if word in ("passes", "tapped", "broken out"):
        way["between"] = every
    if circuit in one.cavities:
        way["cavities"] = {"a": one.cavities[circuit]}
    return way


def _module(one: Module) -> dict[str, Any]:
    return {
        "name": one.name,
        "module_kind": "data",
        "needs": list(one.wants),
        "outputs": {circuit: {"most": f"{most} mA"} if most else {} for circuit, most in one.most.items()},
        "made_for": MADE_FOR[one.made_for],
        "needs_adapter": [one.needs_adapter] if one.needs_adapter else None,
    }
