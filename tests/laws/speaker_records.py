"""A small world of speakers as records of the book, and its questions."""

from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.speakers.answer import speaker_answer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from tests.laws.records import EXACT_TOOLS, in_mm, record
from tests.laws.small_world import Size
from tests.laws.speaker_world import Ask, Reading, Ring, Speaker, SpeakerWorld, Tried

VEHICLE = "small-car"
NOTHING_OVER = dict.fromkeys(("width", "height", "depth", "glass", "fixed", "grille"), "0 mm")
MEASURES = {
    "cut-out": "cut-out",
    "long": "cut-out long way",
    "short": "cut-out short way",
    "fixed": "rear depth to fixed",
    "down": "rear depth to glass down",
    "worst": "rear depth at worst of travel",
    "front": "front clearance",
}


def book_of(world: SpeakerWorld) -> KnowledgeBase:
    """The book in which a world is written down."""
    shop: Record = record(
        "shop", "shop", {"name": "A shop", "format": 1, "clearances": NOTHING_OVER, "tools": EXACT_TOOLS}
    )
    places = {f"door-{side}": {"kind": "door lower", "side": side} for side in ("left", "right")}
    car = {"name": "car", "vehicle_class": "car", "generation": 1, "model_years": 1, "places": places}
    speakers = [record("speakers", speaker.name, _speaker(speaker)) for speaker in world.speakers]
    rings = [record("mounts", ring.name, _ring(ring)) for ring in world.rings]
    notes = [record("notes", note.name, _note(note)) for note in world.notes]
    return knowledge_base([shop, record("vehicles", VEHICLE, car), *speakers, *rings, *notes])


def verdict(book: KnowledgeBase, ask: Ask) -> str:
    """The verdict on one question, asked as plain data."""
    state = {"mounts": [ask.ring] if ask.ring else "none"}
    read = read_question(
        book, {"vehicle": VEHICLE, "place": f"door-{ask.side}", "what": ask.speaker, "state": state}
    ).read
    assert isinstance(read, SpeakerQuestion)
    return speaker_answer(book, read).verdict


def _caliper(size: Size | None) -> str | None:
    return None if size is None else f"{in_mm(size)} caliper"


def _speaker(speaker: Speaker) -> dict[str, Any]:
    return {
        "name": speaker.name,
        "speaker_kind": "coaxial",
        "nominal": "small",
        "basket": _caliper(speaker.basket),
        "basket_short": _caliper(speaker.short),
        "mounting_depth": _caliper(speaker.depth),
        "front_height": _caliper(speaker.front),
    }


def _ring(ring: Ring) -> dict[str, Any]:
    inner = None if ring.inner is None else f"{ring.inner} mm caliper"
    return {"name": ring.name, "mount_kind": "spacer", "thickness": _caliper(ring.thickness), "inner": inner}


def _note(note: Tried | Reading) -> dict[str, Any]:
    said: dict[str, Any] = {"vehicle": VEHICLE, "place": f"door-{note.side}", "cut": "nothing", "numbers": "read back"}
    if isinstance(note, Reading):
        reading = {"of": MEASURES[note.of], "reads": in_mm(note.reads), "datum": "door metal", "tool": "putty"}
        return {**said, "form": "measured", "mounts": "none", "readings": [reading]}
    mounts = None if note.ring is None else [note.ring] if note.ring else "none"
    verdict = {"verdict": "goes in" if note.goes_in else "does not", "sure": "dry-fitted", "mounts": mounts}
    gap = {"to_spare" if note.goes_in else "short_by": None if note.gap is None else in_mm(note.gap)}
    return {**said, **verdict, **gap, "form": "tried", "what": note.speaker, "glass": note.glass, "reason": note.reason}
