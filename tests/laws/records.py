"""A small world as records of the book, and its questions."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.answer import place_of
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Question, asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.verdict import judge
from bezelbook.values.quantity import read_quantity
from bezelbook.values.words import AnswerVerdict
from tests.laws.small_world import Ask, Kit, Part, Reading, Size, Tried, World

VEHICLE, PLACE = "small-car", "opening"
FIRM = ("goes in", "does not")
EXACT_TOOLS = dict.fromkeys(
    ("bench_caliper", "caliper", "depth_gauge", "tape", "wire", "template", "putty", "test_box", "none"), "0 mm"
)


def in_mm(size: Size) -> str:
    """A size with a millimetre for a unit."""
    return f"{size.middle} ± {size.give} mm" if size.give else f"{size.middle} mm"


@dataclass(frozen=True)
class Written:
    """A world written down; `write` says how a size is written, `by` what word stands behind a part's size."""

    world: World
    write: Callable[[Size], str] = in_mm
    by: str = "caliper"

    def records(self) -> list[Record]:
        """Every record of it."""
        kits = [record("mounts", kit.name, self._kit(kit)) for kit in self.world.kits]
        parts = [record("head_units", part.name, self._part(part)) for part in self.world.parts]
        notes = [record("notes", note.name, self.note(note)) for note in self.world.notes]
        return [record("shop", "shop", SHOP), record("vehicles", VEHICLE, _vehicle(self.world)), *kits, *parts, *notes]

    def book(self) -> KnowledgeBase:
        """The book in which all of it is written down."""
        return knowledge_base(self.records())

    def question(self, ask: Ask) -> Question:
        """The question as somebody would put it."""
        part = self.world.part(ask.part)
        state: dict[str, Any] = {
            "mounts": (ask.kit,) if ask.kit else None,
            "cut": ask.cut,
            "loom": ask.loom,
            "plugs": ask.plugs,
        }
        if ask.build:
            state["splits"] = {"build": ask.build}
        if ask.depth is not None:
            state["sizes"] = {"depth": read_quantity(self.write(ask.depth), "length")}
        if not ask.typed:
            return Question(VEHICLE, PLACE, unit=part.name, **state)
        sizes: dict[Need, Size | None] = {
            "width": part.width,
            "height": part.height,
            "depth": part.depth,
            "plug": part.bend,
        }
        typed = {need: read_quantity(self.write(size), "length") for need, size in sizes.items() if size}
        return Question(VEHICLE, PLACE, sizes=typed, exit=part.exit, **state)

    def verdicts(self) -> list[AnswerVerdict]:
        """The verdict to each of the world's questions."""
        book = self.book()
        place = place_of(book, VEHICLE, PLACE)
        return [verdict(place, self.question(ask)) for ask in self.world.asks]

    def note(self, note: Tried | Reading) -> dict[str, Any]:
        """What the file of a note says; None for what it leaves out."""
        state: dict[str, Any] = {"vehicle": VEHICLE, "place": PLACE, "cut": note.cut, "loom": note.loom}
        state |= {"splits": {"build": note.build} if note.build else {}, "numbers": "read back"}
        return state | (self._reading(note) if isinstance(note, Reading) else self._tried(note))

    def _kit(self, kit: Kit) -> dict[str, Any]:
        presents = {size: self._caliper(hole) for size, hole in kit.holes.items()}
        return {
            "name": kit.name,
            "mount_kind": "kit",
            "presents": {**presents, "ninths": list(self.world.ninths)},
            "proud": self._caliper(kit.proud) if kit.proud != Size(0) else "flush",
        }

    def _part(self, part: Part) -> dict[str, Any]:
        sizes = {"body_width": part.width, "body_height": part.height}
        sizes |= {"body_depth": part.depth, "plug_and_bend": part.bend}
        written = {field: f"{self.write(size)} {self.by}" for field, size in sizes.items() if size}
        return {
            "name": part.name,
            "size_class": "single",
            "plug_exit": part.exit,
        } | written

    def _caliper(self, size: Size) -> str:
        return f"{self.write(size)} caliper"

    def _reading(self, note: Reading) -> dict[str, Any]:
        datum = "kit seat" if note.kit else "sub-dash face"
        reading = {"of": note.of, "reads": self.write(note.reads), "tool": "caliper", "datum": datum}
        mounts = [note.kit] if note.kit else None
        return {"form": "measured", "mounts": mounts, "readings": [reading | {"zones": list(note.zones)}]}

    def _tried(self, note: Tried) -> dict[str, Any]:
        return {
            "form": "tried",
            "what": note.part,
            "verdict": note.verdict,
            "sure": "fitted" if note.fitted else "dry-fitted",
            "mounts": [note.kit] if note.kit else None,
            "plugs": note.plugs,
            "reason": note.reason,
            "where": list(note.where),
            "to_spare" if note.verdict == "goes in" else "short_by": self.write(note.gap) if note.gap else None,
        }


def verdict(place: Place, question: Question) -> AnswerVerdict:
    """The verdict on one question at a place."""
    return judge(place, asked(place.frame, place.evidence, question)).verdict


def record(folder: str, name: str, content: Mapping[str, Any]) -> Record:
    """The record that a file of this content would be; None is left out."""
    said = {key: value for key, value in content.items() if value is not None}
    made: Record = KINDS[folder].reader.validate_python({**said, "id": name})
    return made


SHOP = {
    "name": "A small shop",
    "format": 1,
    "clearances": {"width": "0 mm", "height": "0 mm", "depth": "0 mm"},
    "tools": EXACT_TOOLS,
}


def _vehicle(world: World) -> dict[str, Any]:
    return {
        "name": "small car",
        "vehicle_class": "small car",
        "generation": 1,
        "model_years": 1,
        "splits": {"build": {"values": {build: {} for build in world.builds}}},
        "places": {PLACE: {"kind": "plain opening", "side": "centre"}},
    }
