"""Which kinds of record there are, in which folder each lives and what reads it."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from pydantic import TypeAdapter

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.amplifier.record import Amplifier
from bezelbook.kinds.asked.record import Asked
from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.decision.record import Decision
from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.job.record import Job
from bezelbook.kinds.module.record import Module
from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.note.record import Note
from bezelbook.kinds.shop.record import Shop
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.kinds.stock.record import Stock
from bezelbook.kinds.supply.record import SupplyFile
from bezelbook.kinds.vehicle.record import Vehicle


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of record: its name, the folder (or the single file) that holds it, and what reads it.

    `heading` stands over a list of them, and gives each record a page of its own; with `page`, all of them stand on the
    one page of that name. A kind without a heading has pages of its own making.
    `single` is set for the kind that has one file at the top of the book; `by_year` for the one that is filed in
    folders named after a year.
    """

    name: str
    folder: str
    reader: TypeAdapter[Any]
    description: str
    heading: str = ""
    page: str = ""
    single: bool = False
    by_year: bool = False


_ALL = (
    Kind(
        "shop",
        "shop",
        TypeAdapter(Shop),
        "The shop: its name, house clearances and honest tool tolerances.",
        single=True,
    ),
    Kind("vehicle", "vehicles", TypeAdapter(Vehicle), "A vehicle platform: its splits and its places."),
    Kind("head_unit", "head_units", TypeAdapter(HeadUnit), "A head unit as it lies on the bench."),
    Kind("mount", "mounts", TypeAdapter(Mount), "A kit, bracket, spacer or cup: what it takes and what it presents."),
    Kind(
        "connector",
        "connectors",
        TypeAdapter(Connector),
        "A connector: its shell, its key and how it is counted.",
        heading="Connectors",
    ),
    Kind("speaker", "speakers", TypeAdapter(Speaker), "A speaker as it lies on the bench.", heading="Speakers"),
    Kind(
        "amplifier",
        "amplifiers",
        TypeAdapter(Amplifier),
        "An amplifier, added or factory, as it lies on the bench.",
        heading="Amplifiers",
    ),
    Kind(
        "module",
        "modules",
        TypeAdapter(Module),
        "An interface module: what it makes and what keeps working.",
        heading="Interface modules",
    ),
    Kind(
        "adapter",
        "adapters",
        TypeAdapter(Adapter),
        "A wiring adapter: its ends, and what becomes of each circuit.",
        heading="Wiring adapters",
    ),
    Kind(
        "supply",
        "supplies",
        TypeAdapter(SupplyFile),
        "What gets used up, and tools.",
        heading="What gets used up, and tools",
    ),
    Kind(
        "stock",
        "shelf",
        TypeAdapter(Stock),
        "How many of a thing lay where, on the day they were counted.",
        heading="What lies on the shelf",
        page="shelf",
    ),
    Kind("note", "notes", TypeAdapter(Note), "What one person saw in one car, or on the bench.", by_year=True),
    Kind(
        "decision",
        "decisions",
        TypeAdapter(Decision),
        "What the team settled about notes, and why.",
        heading="What was settled",
        page="decisions",
    ),
    Kind(
        "asked",
        "questions",
        TypeAdapter(Asked),
        "A question that nobody could answer, and how often it came.",
        heading="What was asked, and nobody knew",
        page="questions",
    ),
    Kind(
        "job",
        "jobs",
        TypeAdapter(Job),
        "A job to come: the car as far as it is known, and what is wished for.",
        heading="Jobs to come",
        page="jobs",
    ),
)

KINDS: Mapping[str, Kind] = {kind.folder: kind for kind in _ALL}
