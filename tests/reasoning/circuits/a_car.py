"""A car with two builds and two packages, its plugs, and what can be joined to them, from the words that differ."""

from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.chain import Chain, chain
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.values.words import CIRCUITS
from tests.reasoning.making import record

CAR, DASH, DOOR = "small-van-1", "dash-centre", "front-door-left"
LATE = {"build": "late", "audio": "base"}
SPEAKERS = tuple(circuit for circuit in CIRCUITS if circuit[-1] in "+-")
SUPPLY = ("constant", "ground", "accessory")
EVERYTHING = (*SUPPLY, *SPEAKERS)


def vehicle(**content: Any) -> Any:
    """A van with a build that bears on plugs and circuits, and a package that bears on circuits."""
    plain = {
        "name": "Small van",
        "vehicle_class": "van",
        "generation": 1,
        "model_years": 6,
        "splits": {
            "build": {
                "differs_in": "build",
                "values": {
                    "early": {"tell": "Round vents.", "years": [1, 2]},
                    "late": {"tell": "Square vents.", "years": [3, 4]},
                },
                "bears_on": {"places": [DASH], "subjects": ["plug", "circuits"]},
            },
            "audio": {
                "differs_in": "audio",
                "values": {"base": {}, "upgraded": {"tell": "Nine grilles."}},
                "bears_on": {"subjects": ["circuits", "amplifier"]},
            },
        },
        "places": {
            DASH: {"kind": "plain opening", "side": "centre"},
            DOOR: {"kind": "door lower", "side": "left"},
        },
    }
    return record("vehicles", CAR, plain | content)


def connector(name: str = "square", **content: Any) -> Any:
    """A connector with eight cavities in two rows, counted from the face."""
    numbering = {"corner": "upper-left", "view": "mating face", "direction": "row by row"}
    shape = {"shell": "square", "side": "vehicle side", "rows": 2, "columns": 4, "cavities": 8, "numbering": numbering}
    return record("connectors", name, {"name": f"The {name}", **shape, **content})


def seen(name: str, plug: str | None = "square", **content: Any) -> Any:
    """Somebody saw a plug on a late car with the base package, unless it says otherwise."""
    return record(
        "notes", name, {"form": "seen", "vehicle": CAR, "place": DASH, "plug": plug, "splits": LATE} | content
    )


def metered(name: str, *cavities: tuple[int, str], **content: Any) -> Any:
    """Somebody metered cavities of the square plug, counted from the face."""
    read = [{"cavity": number, "carries": words} for number, words in cavities]
    return seen(name, **({"form": "metered", "view": "mating face", "cavities": read} | content))


def plug_in(name: str = "plug-in", *circuits: str, **content: Any) -> Any:
    """A lead from the square plug to bare leads, for late cars."""
    ways: dict[str, Any] = dict.fromkeys(circuits or EVERYTHING, "passes") | content.pop("ways", {})
    plain = {
        "name": f"The {name}",
        "adapter_kind": "plug-in",
        "ends": {"a": {"connector": "square", "side": "unit side"}, "b": {"ends_in": "bare leads"}},
        "made_for": [{"vehicle": CAR, "place": DASH, "splits": {"build": "late"}}],
    }
    return record("adapters", name, plain | {"circuits": ways} | content)


def tee(name: str = "tee", *, cut: tuple[str, ...] = SPEAKERS[:4], **content: Any) -> Any:
    """A T in the square plug that cuts some pairs and passes everything else."""
    ways: dict[str, Any] = {one: "broken out" if one in cut else "passes" for one in CIRCUITS} | content.pop("ways", {})
    ends = {
        "a": {"connector": "square", "side": "unit side"},
        "b": {"connector": "square", "side": "vehicle side"},
        "c": {"ends_in": "bare leads"},
    }
    return plug_in(name, **({"adapter_kind": "T", "ends": ends, "ways": ways} | content))


def module(name: str = "box", **content: Any) -> Any:
    """A box that reads the bus of late cars."""
    plain = {
        "name": f"The {name}",
        "module_kind": "data",
        "made_for": [{"vehicle": CAR, "splits": {"build": "late"}}],
        "needs": ["constant", "ground", "bus"],
    }
    return record("modules", name, plain | content)


def after(name: str, **content: Any) -> Any:
    """A write-back of a job on a late car with the base package."""
    return record("notes", name, {"form": "after", "vehicle": CAR, "place": DASH, "splits": LATE} | content)


def tried(name: str, **content: Any) -> Any:
    """A radio that went in, on a late car with the base package."""
    plain = {
        "form": "tried",
        "vehicle": CAR,
        "place": DASH,
        "splits": LATE,
        "what": "a radio",
        "verdict": "goes in",
        "sure": "fitted",
    }
    return record("notes", name, plain | content)


def book(*records: Record) -> KnowledgeBase:
    """The van, the square plug, and these."""
    return knowledge_base([vehicle(), connector(), *records])


def car(*records: Record, place: str = DASH, **build: str) -> Car:
    """The van in one build, late with the base package unless said; its book holds these records."""
    base = book(*records)
    cars = cars_of(base, base.vehicles[CAR], place, LATE | build)
    assert len(cars) == 1
    return cars[0]


def chained(*records: Record, job: Job | None = None, **build: str) -> Chain:
    """The chain for a job, replacing the radio unless said, in a book of these records."""
    return chain(car(*records, **build), job or Job("replace the radio"))


def every_cavity(name: str = "meter", **content: Any) -> Any:
    """Constant, ground, accessory and five more cavities, so that the plug is read whole."""
    carried = ("constant", "ground", "accessory", *SPEAKERS[:4], "nothing")
    return metered(name, *enumerate(carried, 1), **content)
