"""What each job needs of a car's wiring: circuits to feed, to cut and to leave whole, and where a chain ends."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.vehicle.record import PlaceKind
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.factory_amplifier import factory_amplifier
from bezelbook.reasoning.circuits.wiring import FED, SPEAKERS, Half, Need, Piece, Site
from bezelbook.values.words import CIRCUITS, Circuit

JobName = Literal["replace the radio", "two-piece radio", "keep it and amplify", "add a sub"]
JOBS: tuple[JobName, ...] = ("replace the radio", "keep it and amplify", "add a sub")

# Where a radio sits, so that a display has somebody to look at it; and those places where one may sit besides.
DASH: frozenset[PlaceKind] = frozenset({"plain opening", "opening behind a bezel", "shaped opening", "display opening"})
RADIO_PLACES: frozenset[PlaceKind] = DASH | {"overhead console"}

FRONTS, REARS = SPEAKERS[:4], SPEAKERS[4:]
SUPPLY: tuple[Circuit, ...] = ("constant", "ground", "accessory")
# What a radio of any make may want besides; without it something is lost and the radio still plays.
EXTRAS: tuple[Circuit, ...] = (
    "illumination",
    "reverse",
    "park brake",
    "speed",
    "wheel buttons",
    "microphone",
    "camera",
    "camera supply",
    "USB",
)


@dataclass(frozen=True, slots=True)
class Job:
    """A job: with which radio, or with which amplifier on which pairs; blank means any."""

    name: JobName
    unit: str | None = None
    amplifier: str | None = None
    amplified: tuple[Circuit, ...] = FRONTS


@dataclass(frozen=True, slots=True)
class Task:
    """One way to do a job: where the chain begins and ends, what it needs, and which cuts are closed again."""

    site: Site
    needs: tuple[Need, ...]
    closing: frozenset[Circuit] = frozenset()


def tasks(car: Car, job: Job, connectors: Sequence[str], pieces: Sequence[Piece]) -> tuple[Task, ...]:
    """Every way to do a job at the plugs that a place has, the one to take first of equal ones first."""
    halves = tuple(Half(connector, "vehicle side") for connector in connectors)
    if job.name in ("replace the radio", "two-piece radio"):
        return (Task(Site(halves, unit=_own_plug(car, job)), tuple(_replacing(car, job, connectors, pieces))),)
    return tuple(
        Task(Site((half,), radio=Half(half.connector, "unit side")), needs, _whole(needs))
        for half in halves
        for needs in _keeping(car, job)
    )


def wanted_by(car: Car, job: Job) -> tuple[Circuit, ...]:
    """The circuits that the radio asks for beyond supply and speakers; any of them where no radio is named."""
    units = _units(car, job)
    if not units:
        return EXTRAS
    asked = {circuit for unit in units for circuit in unit.needs}
    return tuple(circuit for circuit in CIRCUITS if circuit in asked and circuit not in (*SUPPLY, *SPEAKERS))


def _units(car: Car, job: Job) -> list[HeadUnit]:
    """The radio, with the other piece of one in two."""
    unit = car.book.head_units.get(job.unit or "")
    if unit is None:
        return []
    every = car.book.head_units.values() if job.name == "two-piece radio" else ()
    return [unit, *(one for one in every if one.id in unit.goes_with or unit.id in one.goes_with)]


def _own_plug(car: Car, job: Job) -> Half | None:
    named = (car.book.named("connector", unit.own_plug or "") for unit in _units(car, job))
    return next((Half(found.id, "unit side") for found in named if found), None)


def _replacing(car: Car, job: Job, connectors: Sequence[str], pieces: Iterable[Piece]) -> Iterator[Need]:
    """Supply and the front speakers always; the rear ones where notes say the car has them; and what it asks for.

    That an adapter has leads for rears does not say so: many a car has two speakers.
    """
    held = (one for connector in connectors for one in contents(car, connector).items())
    seen = {circuit for circuit, one in held if one.state in FED}
    views = (sees for piece in pieces for sees in piece.sees.values())
    seen |= {circuit for sees in views for circuit in sees if sees[circuit] == "known"}
    yield from (Need(circuit) for circuit in (*SUPPLY, *FRONTS))
    yield from (Need(circuit, must=circuit in seen) for circuit in REARS)
    yield from (Need(circuit, must=False) for circuit in wanted_by(car, job))
    if factory_amplifier(car).state in FED:
        yield Need("amplifier turn-on", must=False)


def _keeping(car: Car, job: Job) -> Iterator[tuple[Need, ...]]:
    """What stays must stay whole; the amplifier gets its sound, and its turn-on unless a signal wakes it."""
    wake = Need("accessory", must=not _wakes(car, job))
    if job.name == "keep it and amplify":
        halves = [Need(one, kind) for one in job.amplified for kind in ("from radio", "to car")]
        yield (*halves, wake, *_through(job.amplified))
        return
    for pairs in (REARS, FRONTS):
        yield (*(Need(one, "tap") for one in pairs), wake, *_through(pairs))


def _through(without: tuple[Circuit, ...]) -> Iterator[Need]:
    whole = ("constant", "ground", *SPEAKERS)
    return (Need(one, "through", must=one in whole) for one in CIRCUITS if one not in without)


def _whole(needs: Iterable[Need]) -> frozenset[Circuit]:
    return frozenset(need.circuit for need in needs if need.kind == "through")


def _wakes(car: Car, job: Job) -> bool:
    amplifier = car.book.amplifiers.get(job.amplifier or "")
    return amplifier is not None and any(one.level == "high" and one.wakes == "there" for one in amplifier.inputs)
