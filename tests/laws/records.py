"""A small world as records of the book, 1 mm for a unit, and its questions."""

from collections.abc import Mapping
from typing import Any

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Question
from bezelbook.values.quantity import read_quantity
from tests.laws.small_world import Ask, Kit, Part, Reading, Size, Tried, World

VEHICLE, PLACE = "small-car", "opening"
EXACT_TOOLS = dict.fromkeys(
    ("bench_caliper", "caliper", "depth_gauge", "tape", "wire", "template", "putty", "test_box", "none"), "0 mm"
)


def book_of(world: World) -> KnowledgeBase:
    """The book in which everything of this world is written down."""
    records = [_record("shop", "shop", _shop()), _record("vehicles", VEHICLE, _vehicle(world))]
    records += [_record("mounts", kit.name, _kit(kit, world)) for kit in world.kits]
    records += [_record("head_units", part.name, _part(part)) for part in world.parts]
    records += [_record("notes", note.name, _note(note)) for note in world.notes]
    return knowledge_base(records)


def question_of(world: World, ask: Ask) -> Question:
    """The question as somebody would put it."""
    part = world.part(ask.part)
    state: dict[str, Any] = {"mounts": (ask.kit,), "cut": ask.cut, "loom": ask.loom, "plugs": ask.plugs}
    if ask.build:
        state["splits"] = {"build": ask.build}
    if not ask.typed:
        return Question(VEHICLE, PLACE, unit=part.name, **state)
    sizes: dict[Need, Size | None] = {"width": part.width, "depth": part.depth, "plug": part.bend}
    typed = {need: read_quantity(length(size), "length") for need, size in sizes.items() if size}
    return Question(VEHICLE, PLACE, sizes=typed, exit=part.exit, **state)


def length(size: Size) -> str:
    """A size as it is written."""
    return f"{size.middle} ± {size.give} mm" if size.give else f"{size.middle} mm"


def _record(folder: str, name: str, content: Mapping[str, Any]) -> Record:
    said = {key: value for key, value in content.items() if value is not None}
    record: Record = KINDS[folder].reader.validate_python({**said, "id": name})
    return record


def _shop() -> dict[str, Any]:
    clearances = {"width": "0 mm", "height": "0 mm", "depth": "0 mm"}
    return {"name": "A small shop", "format": 1, "clearances": clearances, "tools": EXACT_TOOLS}


def _vehicle(world: World) -> dict[str, Any]:
    values: dict[str, Any] = {build: {} for build in world.builds}
    return {
        "name": "small car",
        "vehicle_class": "small car",
        "generation": 1,
        "model_years": 1,
        "splits": {"build": {"values": values}},
        "places": {PLACE: {"kind": "plain opening", "side": "centre"}},
    }


def _kit(kit: Kit, world: World) -> dict[str, Any]:
    presents = {"width": _caliper(kit.width), "height": "1000 mm caliper", "ninths": list(world.ninths)}
    return {
        "name": kit.name,
        "mount_kind": "kit",
        "presents": {key: value for key, value in presents.items() if value is not None},
        "proud": _caliper(kit.proud) if kit.proud != Size(0) else "flush",
    }


def _part(part: Part) -> dict[str, Any]:
    return {
        "name": part.name,
        "size_class": "single",
        "body_width": _caliper(part.width),
        "body_height": "1 mm caliper",
        "body_depth": _caliper(part.depth),
        "plug_and_bend": _caliper(part.bend),
        "plug_exit": part.exit,
    }


def _caliper(size: Size | None) -> str | None:
    return None if size is None else f"{length(size)} caliper"


def _note(note: Tried | Reading) -> dict[str, Any]:
    state: dict[str, Any] = {"vehicle": VEHICLE, "place": PLACE, "cut": note.cut, "loom": note.loom}
    state |= {"splits": {"build": note.build} if note.build else {}, "numbers": "read back"}
    return state | (_reading(note) if isinstance(note, Reading) else _tried(note))


def _reading(note: Reading) -> dict[str, Any]:
    reading: dict[str, Any] = {"of": note.of, "reads": length(note.reads), "tool": "caliper", "datum": "sub-dash face"}
    return {"form": "measured", "readings": [reading | {"zones": list(note.zones)}]}


def _tried(note: Tried) -> dict[str, Any]:
    gap = "to_spare" if note.verdict == "goes in" else "short_by"
    return {
        "form": "tried",
        "what": note.part,
        "verdict": note.verdict,
        "sure": "fitted" if note.fitted else "dry-fitted",
        "mounts": [note.kit] if note.kit else None,
        "plugs": note.plugs,
        "reason": note.reason,
        "where": list(note.where),
        gap: length(note.gap) if note.gap else None,
    }
