"""Which kinds of record there are, in which folder each lives and what reads it."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from pydantic import TypeAdapter

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.note.record import Note
from bezelbook.kinds.shop.record import Shop
from bezelbook.kinds.vehicle.record import Vehicle


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of record: its name, the folder (or the single file) that holds it, and what reads it.

    `single` is set for the kind that has one file at the top of the book; `by_year` for the one that is filed in
    folders named after a year.
    """

    name: str
    folder: str
    reader: TypeAdapter[Any]
    description: str
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
    Kind("note", "notes", TypeAdapter(Note), "What one person saw in one car, or on the bench.", by_year=True),
)

KINDS: Mapping[str, Kind] = {kind.folder: kind for kind in _ALL}
