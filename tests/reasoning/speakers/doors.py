"""A car with two doors, a shelf and a seat for tests of speakers, from the few words in which they differ."""

from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.speakers.answer import SpeakerAnswer, speaker_answer
from bezelbook.reasoning.speakers.question import SpeakerAsked, SpeakerQuestion, asked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, speaker_place_of
from tests.reasoning.making import record

CAR, DOOR, OTHER, SHELF = "van-1", "door-left", "door-right", "shelf"
BUILDS: dict[str, Any] = {"build": {"values": {"early": {}, "late": {}}}}
DOORS = {
    DOOR: {"kind": "door lower", "side": "left", "other_side": OTHER, "safety": "restraint near"},
    OTHER: {"kind": "door lower", "side": "right", "other_side": DOOR},
    SHELF: {"kind": "parcel shelf", "side": "left"},
    "seat": {"kind": "under seat", "side": "left"},
    "corner": {"kind": "dash corner", "side": "left"},
    "mirror": {"kind": "mirror triangle", "side": "left"},
}


def car(**content: Any) -> Record:
    """The car."""
    plain = {"name": "Van", "vehicle_class": "van", "generation": 1, "model_years": 2, "places": DOORS}
    made: Record = record("vehicles", CAR, plain | content)
    return made


def shop(units_first: str = "mm", **clearances: str) -> Record:
    """A shop that likes to leave nothing over, but for what is said, and whose caliper is exact on the bench."""
    house = dict.fromkeys(("width", "height", "depth", "glass", "fixed", "grille"), "0 mm") | clearances
    made: Record = record(
        "shop",
        "shop",
        {
            "name": "Shop",
            "format": 1,
            "units_first": units_first,
            "clearances": house,
            "tools": {"bench_caliper": "0 mm"},
        },
    )
    return made


def speaker(named: str = "six", /, **content: Any) -> Record:
    """A round speaker of 130 x 60 deep, 10 high in front, every size exact."""
    sizes = {"basket": "130 mm caliper", "mounting_depth": "60 mm caliper", "front_height": "10 mm caliper"}
    said = {"name": named, "speaker_kind": "coaxial", "nominal": "6 1/2 in", **sizes, **content}
    made: Record = record("speakers", named, {key: value for key, value in said.items() if value is not None})
    return made


def mount(named: str, /, **content: Any) -> Record:
    """A ring, unless something else is said."""
    made: Record = record("mounts", named, {"name": named.replace("-", " "), "mount_kind": "spacer", **content})
    return made


def foam(named: str = "foam", /, **content: Any) -> Record:
    """Foam of 2 mm that loses half of it."""
    said = {"form": "foam", "name": named, "foam_kind": "closed-cell tape", "free_thickness": "2 mm", "squeeze": "50 %"}
    made: Record = record("supplies", named, said | content)
    return made


def tried(named: str = "n", /, **content: Any) -> Record:
    """The speaker was fitted with no mount, no gasket known to the book, nothing cut, the glass run down."""
    said = {"form": "tried", "vehicle": CAR, "place": DOOR, "what": "six", "verdict": "goes in", "sure": "fitted"}
    state = {"mounts": "none", "cut": "nothing", "glass": "down", "gasket": "none", "author": "rk"}
    whole = {**said, **state, **content}
    made: Record = record("notes", named, {key: value for key, value in whole.items() if value is not None})
    return made


def reading(of: str, reads: str, **content: Any) -> dict[str, Any]:
    """A reading from the door metal with putty."""
    said = {"of": of, "reads": reads, "datum": "door metal", "tool": "putty", **content}
    return {key: value for key, value in said.items() if value is not None}


def measured(named: str = "m", /, *readings: dict[str, Any], **content: Any) -> Record:
    """A measuring note about the left door."""
    said = {"form": "measured", "vehicle": CAR, "place": DOOR, "readings": list(readings), **content}
    made: Record = record("notes", named, said)
    return made


def roomy(named: str = "roomy", /, glass: str = "70 ± 1 mm", **content: Any) -> Record:
    """A left door measured so that the plain speaker goes in."""
    hole, front = reading("cut-out", "140 ± 1 mm"), reading("front clearance", "20 ± 1 mm")
    return measured(named, hole, reading("rear depth to glass down", glass), front, **content)


def book(*records: Record) -> KnowledgeBase:
    """A book of these records, with the car, the shop and the speaker where none is among them."""
    return knowledge_base((shop(), car(), speaker(), *records))


def place(of: KnowledgeBase, where: str = DOOR) -> SpeakerPlace:
    """A place with its evidence."""
    return speaker_place_of(of, CAR, where)


def resolved(of: KnowledgeBase, where: str = DOOR, **question: Any) -> SpeakerAsked:
    """A question about the speaker in the book's own terms."""
    return asked(place(of, where), SpeakerQuestion(CAR, where, **{"speaker": "six", **question}))


def ask(of: KnowledgeBase, what: Any = "six", where: str = DOOR, splits: Any = None, **state: Any) -> SpeakerAnswer:
    """The answer to what somebody asks, with no mount unless one is named."""
    put = {"mounts": "none", **state}
    data = {"vehicle": CAR, "place": where, "what": what, "splits": splits, "state": put}
    question = read_question(of, data).read
    assert isinstance(question, SpeakerQuestion)
    return speaker_answer(of, question)
