"""Records for tests, from the few words in which they differ, and the questions put to them."""

from typing import Any

from bezelbook.kinds import KINDS
from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.kinds.record import Record
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.answer import Answer, answer, place_of
from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.cells import Frame, Setting, frame_of
from bezelbook.reasoning.evidence import Standing, standing_of
from bezelbook.reasoning.mounting import Stack, stack_of
from bezelbook.reasoning.question import Asked, Question, asked
from bezelbook.reasoning.room import Place
from bezelbook.values.quantity import Quantity, read_quantity

CAR, HOLE = "small-van-1", "dash-centre"
EVERYWHERE = "all"


def record(folder: str, name: str, content: dict[str, Any]) -> Any:
    """The record that a file of this content would be."""
    return KINDS[folder].reader.validate_python({**content, "id": name})


def changed(original: Record, **content: Any) -> Any:
    """The same record with other content; a field given as None is left out."""
    folder = next(folder for folder, kind in KINDS.items() if original in _records_of(kind.reader, original))
    written = original.model_dump(mode="json", exclude_none=True, exclude_unset=True, exclude={"id"})
    return record(folder, original.id, {key: value for key, value in (written | content).items() if value is not None})


def _records_of(reader: Any, original: Record) -> tuple[Record, ...]:
    try:
        return (reader.validate_python(original),)
    except ValueError:
        return ()


def vehicle(**content: Any) -> Vehicle:
    """A vehicle with one plain opening."""
    plain = {
        "name": "small van",
        "vehicle_class": "cargo van",
        "generation": 1,
        "model_years": 5,
        "places": {HOLE: {"kind": "plain opening", "side": "centre"}},
    }
    made: Vehicle = record("vehicles", CAR, plain | content)
    return made


def split(*values: str, **more: Any) -> dict[str, Any]:
    """An axis with these values."""
    return {"values": {value: {} for value in values}, **more}


def unit(named: str = "box", /, **content: Any) -> HeadUnit:
    """A head unit of 178 x 100 x 110 mm, all read with a caliper and exact to 1 mm."""
    sizes = {
        "body_width": "178 ± 1 mm caliper",
        "body_height": "100 ± 1 mm caliper",
        "body_depth": "110 ± 1 mm caliper",
        "plug_exit": "right",
        "plug_and_bend": "32 ± 5 mm caliper",
    }
    said = {key: value for key, value in (sizes | content).items() if value is not None}
    made: HeadUnit = record("head_units", named, {"name": named, "size_class": "double"} | said)
    return made


def mount(named: str = "kit", /, **content: Any) -> Mount:
    """A flush kit."""
    made: Mount = record("mounts", named, {"name": named, "mount_kind": "kit", "proud": "flush"} | content)
    return made


def tried(named: str = "a-note", /, **content: Any) -> Tried:
    """A box that was fitted with no mount, nothing cut, loom aside, plugs on."""
    said = {
        "form": "tried",
        "vehicle": CAR,
        "place": HOLE,
        "what": "box",
        "verdict": "goes in",
        "sure": "fitted",
        "mounts": "none",
        "cut": "nothing",
        "loom": "aside",
        "plugs": "on",
    } | content
    made: Tried = record("notes", named, {key: value for key, value in said.items() if value is not None})
    return made


def reading(of: str, reads: str, *zones: str, **content: Any) -> dict[str, Any]:
    """A reading by wire from the sub-dash face; without zones it is of the whole opening."""
    where = {"zones": list(zones) or EVERYWHERE, "datum": "sub-dash face"} if of == "depth" else {}
    said = {"of": of, "reads": reads, "tool": "wire", **where, **content}
    return {key: value for key, value in said.items() if value is not None}


def measured(named: str, /, *readings: dict[str, Any], **content: Any) -> Measured:
    """A measuring note."""
    said = {"form": "measured", "vehicle": CAR, "place": HOLE, "readings": list(readings)}
    made: Measured = record("notes", named, said | content)
    return made


def roomy(name: str = "tape") -> Measured:
    """A hole that is clear for any double, so that depth alone decides."""
    return measured(name, reading("width", "190 ± 1 mm"), reading("height", "120 ± 1 mm"))


def shop(**content: Any) -> Record:
    """A shop that likes to leave nothing over."""
    clearances = {"width": "0 mm", "height": "0 mm", "depth": "0 mm"}
    made: Record = record("shop", "shop", {"name": "A shop", "format": 1, "clearances": clearances} | content)
    return made


def book(*records: Record) -> KnowledgeBase:
    """A book of these records, with the plain vehicle and shop where none is among them."""
    return knowledge_base((shop(), vehicle(), *records))


def length(text: str) -> Quantity:
    """A length as typed in a question."""
    return read_quantity(text, "length")


def place(of: KnowledgeBase) -> Place:
    """The one opening, with its evidence."""
    return place_of(of, CAR, HOLE)


def frame(of: KnowledgeBase) -> Frame:
    """The frame of the one opening."""
    return frame_of(of, of.vehicles[CAR], HOLE)


def standing(of: KnowledgeBase, note: str) -> Standing:
    """How one note binds."""
    said = of.notes[note]
    assert isinstance(said, Tried | Measured)
    return standing_of(of, of.vehicles[CAR], said)


def setting(of: KnowledgeBase, *mounts: str, **state: Any) -> Setting:
    """The first build, these mounts, nothing cut, loom aside, plugs on."""
    return Setting(frame(of).builds[0], stack(of, *mounts), "nothing", "aside", plugs_on=True)._replace(**state)


def stack(of: KnowledgeBase, *mounts: str) -> Stack:
    """These mounts as one map."""
    return stack_of(of, mounts)


def resolved(of: KnowledgeBase, **question: Any) -> Asked:
    """A question in the book's own terms."""
    here = place(of)
    return asked(here.frame, here.evidence, Question(CAR, HOLE, **question))


def ask(of: KnowledgeBase, what: str | dict[str, str], **question: Any) -> Answer:
    """The answer to what somebody asks of the one opening."""
    put = read_question(of, {"vehicle": CAR, "place": HOLE, "what": what, **question}).question
    assert put is not None
    return answer(of, put)
