"""Small books of one car, with an opening and a pair of doors, for tests about notes that clash."""

from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from tests.reasoning.making import record

CAR, DASH, LEFT, RIGHT, SEAT = "hatch", "dash", "door-left", "door-right", "under-seat"
PLACES = {
    DASH: {"kind": "plain opening", "side": "centre"},
    LEFT: {"kind": "door lower", "side": "left", "other_side": RIGHT},
    RIGHT: {"kind": "door lower", "side": "right", "other_side": LEFT},
    SEAT: {"kind": "under seat", "side": "left"},
}


def book(*records: Record, **more: Any) -> KnowledgeBase:
    """A book of this car, of which `more` may be known, and these records."""
    car = {"name": "hatch", "vehicle_class": "hatch", "generation": 1, "model_years": 5, "places": PLACES, **more}
    return knowledge_base([record("vehicles", CAR, car), *records])


def unit(name: str, depth: str, **sizes: str) -> Record:
    """A head unit whose plug is known."""
    plug = {"plug_exit": "right", "plug_and_bend": "30 ± 1 mm caliper"}
    made: Record = record(
        "head_units", name, {"name": name, "size_class": "double", "body_depth": depth, **plug, **sizes}
    )
    return made


def speaker(name: str, **sizes: Any) -> Record:
    """A speaker."""
    said = {"name": name, "speaker_kind": "coaxial", "nominal": "6 1/2 in", **sizes}
    made: Record = record("speakers", name, said)
    return made


def tried(name: str, what: str, verdict: str, place: str = DASH, **more: Any) -> Record:
    """Something tried with no mount, nothing cut and the loom aside."""
    state = {"mounts": "none", "cut": "nothing", "loom": "aside", "sure": "fitted"}
    said = {"form": "tried", "vehicle": CAR, "place": place, "what": what, "verdict": verdict, **state, **more}
    made: Record = record("notes", name, said)
    return made


def measured(name: str, *readings: tuple[str, str], place: str = DASH, **more: Any) -> Record:
    """Readings of a place, from the face that its depths are read from."""
    datum = "sub-dash face" if place == DASH else "door metal"
    said = [{"of": of, "reads": reads, "datum": datum, "zones": "all"} for of, reads in readings]
    made: Record = record("notes", name, {"form": "measured", "vehicle": CAR, "place": place, "readings": said, **more})
    return made
