"""The wiring of a vehicle as its page shows it: place by place and build by build, builds that are alike as one."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.circuits.adapter_view import RightLine, right_lines
from bezelbook.publish.circuits.job_view import JobView, job_view
from bezelbook.publish.circuits.two_piece_view import two_piece_jobs
from bezelbook.reasoning.circuits.aerial import AerialLead, aerial_leads
from bezelbook.reasoning.circuits.builds_said import builds_said
from bezelbook.reasoning.circuits.cars import Car, tells
from bezelbook.reasoning.circuits.chain import chain
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.jobs import JOBS, RADIO_PLACES, Job
from bezelbook.reasoning.circuits.kept import Kept, kept_and_lost
from bezelbook.reasoning.circuits.look_alikes import look_alikes
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.circuits.right_for import RightFor, every_car, right_for
from bezelbook.reasoning.circuits.speaker_leads import SpeakerLead, speaker_lead
from bezelbook.reasoning.circuits.two_piece import Fits, fits_in
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES
from bezelbook.values.listed import listed

NO_RECORD = "no record of it yet"


@dataclass(frozen=True, slots=True)
class PlugLine:
    """A plug, its page, how it is known, what its cavities carry, and what it must not be taken for."""

    words: str
    at: str
    state: str
    carries: tuple[tuple[str, str], ...]
    alikes: tuple[tuple[str, str, str], ...]


@dataclass(frozen=True, slots=True)
class BuildWiring:
    """The wiring of builds that are alike at a place."""

    title: str
    plugs: tuple[PlugLine, ...]
    jobs: tuple[JobView, ...]
    kept: tuple[Kept, ...]
    aerials: tuple[AerialLead, ...]
    speaker: SpeakerLead | None


@dataclass(frozen=True, slots=True)
class PlaceWiring:
    """The wiring of a place; `tell` says how to know its builds from the seat, empty when there is one."""

    name: str
    tell: str
    builds: tuple[BuildWiring, ...]
    adapters: tuple[RightLine, ...]


class Wiring:
    """The wiring of every vehicle of a book."""

    def __init__(self, book: KnowledgeBase) -> None:
        self.book = book
        self._cars = every_car(book)
        self._fits = fits_in(book)
        self._right: list[tuple[str, RightFor]] = [
            (adapter.id, line) for adapter in book.adapters.values() for line in right_for(self._cars, adapter)
        ]

    def of(self, vehicle: Vehicle, to: Links) -> tuple[PlaceWiring, ...]:
        """Every place of a vehicle whose plug somebody saw, or for which the book has an adapter."""
        return tuple(found for place in vehicle.places for found in self._place(vehicle, place, to))

    def _place(self, vehicle: Vehicle, place: str, to: Links) -> Iterator[PlaceWiring]:
        cars = [car for car in self._cars if (car.vehicle.id, car.place) == (vehicle.id, place)]
        lines = [(adapter, line) for adapter, line in self._right if (line.vehicle, line.place) == (vehicle.id, place)]
        if not lines and not any(plugs_at(car).plugs for car in cars):
            return
        record = vehicle.places[place]
        builds = [_build(car, self._fits, to, opening=record.kind in RADIO_PLACES) for car in cars]
        axes = tuple(axis for axis, _ in cars[0].build)
        yield PlaceWiring(
            record.name or place.replace("-", " "),
            tells(vehicle, axes) if axes else "",
            _alike(vehicle, cars, builds),
            right_lines(self.book, lines, to),
        )


def _build(car: Car, fits: Fits, to: Links, *, opening: bool) -> BuildWiring:
    chains = [chain(car, Job(job)) for job in JOBS] if opening else []
    return BuildWiring(
        "",
        tuple(_plug(car, number, to) for number in range(len(plugs_at(car).plugs))),
        (*(job_view(one, to) for one in chains), *(two_piece_jobs(car, fits, to) if opening else ())),
        kept_and_lost(chains[0]) if chains else (),
        aerial_leads(car) if opening else (),
        speaker_lead(car) if car.vehicle.places[car.place].kind in (SPEAKER_PLACES | EITHER_PLACES) else None,
    )


def _alike(vehicle: Vehicle, cars: Sequence[Car], builds: Sequence[BuildWiring]) -> tuple[BuildWiring, ...]:
    """Builds that show the same as one, headed by what they have in common."""
    found: dict[str, tuple[BuildWiring, list[Car]]] = {}
    for car, build in zip(cars, builds, strict=True):
        found.setdefault(repr(build), (build, []))[1].append(car)
    return tuple(
        BuildWiring(
            builds_said(vehicle, [car.build for car in alike]) or "Every build",
            build.plugs,
            build.jobs,
            build.kept,
            build.aerials,
            build.speaker,
        )
        for build, alike in found.values()
    )


def _plug(car: Car, number: int, to: Links) -> PlugLine:
    plug = plugs_at(car).plugs[number]
    if not plug.connector:
        return PlugLine(plug.words, "", f"{plug.state}, {NO_RECORD}", (), ())
    held = contents(car, plug.connector)
    carries = tuple(
        (circuit, f"{one.state}{_where(sorted(one.cavities))}")
        for circuit, one in held.items()
        if one.state != "not there"
    )
    alikes = tuple(
        (car.book.connectors[one.connector].name, to.record("connector", one.connector), one.difference)
        for one in look_alikes(car.book, plug.connector)
    )
    return PlugLine(plug.words, to.record("connector", plug.connector), plug.state, carries, alikes)


def _where(cavities: Sequence[int]) -> str:
    return f", cavity {listed([str(one) for one in cavities], 'or')}" if cavities else ""
