"""A question about wiring: which car, as far as it is known, and which jobs at which of its places."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal, get_args

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.cars import cars_of
from bezelbook.reasoning.circuits.jobs import DASH
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.speakers.cells import SPEAKER_PLACES

JobAsked = Literal["replace the radio", "keep it and amplify", "add a sub", "two-piece radio", "speaker lead", "aerial"]
JOBS_ASKED: tuple[JobAsked, ...] = get_args(JobAsked)


@dataclass(frozen=True)
class WiringQuestion:
    """Jobs at places of a vehicle; `unit` and `amplifier` are ids, blank for any. Its ids must be in the book."""

    vehicle: str
    places: tuple[str, ...]
    jobs: tuple[JobAsked, ...]
    splits: Mapping[str, str] = field(default_factory=dict)
    year: int | None = None
    unit: str | None = None
    amplifier: str | None = None


def usual_places(book: KnowledgeBase, vehicle: Vehicle, job: JobAsked) -> tuple[str, ...]:
    """Where a job is done when nobody says: at the plug in the dash, or at every place for a speaker."""
    if job == "speaker lead":
        return tuple(place for place, record in vehicle.places.items() if record.kind in SPEAKER_PLACES)
    dash = tuple(place for place, record in vehicle.places.items() if record.kind in DASH)
    plugged = tuple(place for place in dash if any(plugs_at(car).plugs for car in cars_of(book, vehicle, place)))
    return plugged or dash
