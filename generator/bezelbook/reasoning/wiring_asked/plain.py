"""An answer about wiring as plain data: the keys that the command line and any other program share."""

from typing import Literal

from typing_extensions import TypedDict

from bezelbook.reasoning.circuits.chain import Verdict
from bezelbook.reasoning.circuits.kept import Goes
from bezelbook.reasoning.circuits.table import Becomes
from bezelbook.reasoning.circuits.wiring import State
from bezelbook.reasoning.plain import PlainMissing
from bezelbook.reasoning.wiring_asked.question import JobAsked
from bezelbook.values.words import AnswerVerdict, Circuit, Function


class PlainPlug(TypedDict):
    """A plug of the car, how it is known, who says so, and what it must not be taken for."""

    plug: str
    state: State
    notes: list[str]
    not_to_be_taken_for: list[str]


class PlainPiece(TypedDict):
    """A piece to take to the car: its record, its ends, why it is right there, and whether it is in hand."""

    kind: Literal["adapter", "module"]
    id: str
    name: str
    ends: str
    why: str
    in_hand: str


class PlainCircuit(TypedDict):
    """What becomes of a circuit; the job cannot be done without one that is `must`."""

    circuit: Circuit
    becomes: Becomes
    words: str
    must: bool


class PlainLack(TypedDict):
    """A circuit that the pieces do not bring, why, and each thing that would bring it, with what limits that."""

    circuit: Circuit
    why: str
    must: bool
    remedies: list[str]


class PlainKept(TypedDict):
    """What becomes of something the car did before, and why; `until_settled` is said while it is argued over."""

    function: Function
    goes: Goes
    said: str
    until_settled: str | None
    notes: list[str]


class PlainSeat(TypedDict):
    """A place for one piece of a radio in two, and whether it goes in there."""

    piece: str
    place: str
    verdict: AnswerVerdict


class PlainBuild(TypedDict):
    """One job at one place, in builds that are alike there; `builds` has the splits of each, `words` says the verdict.

    `load` is what is known of load resistors, `beside` what else the job takes. Of a radio in two pieces the verdict is
    that of its leads, `seats` has a place for each piece, `cable` what is known of the cable between them.
    """

    job: JobAsked
    place: str
    builds: list[dict[str, str]]
    builds_words: str
    tell: str
    verdict: Verdict
    words: str
    sure: str | None
    plugs: list[PlainPlug]
    pieces: list[PlainPiece]
    circuits: list[PlainCircuit]
    kept: list[PlainKept]
    lacks: list[PlainLack]
    load: str | None
    beside: list[str]
    seats: list[PlainSeat]
    cable: str | None
    unknown: list[PlainMissing]


PlainWiring = TypedDict(
    "PlainWiring",
    {"vehicle": str, "for": str, "splits": dict[str, str], "answers": list[PlainBuild]},
)
"""Every job that was asked about, place by place, a line for builds that are alike."""
