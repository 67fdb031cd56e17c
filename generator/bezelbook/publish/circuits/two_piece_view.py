"""A radio in two pieces as parts of pages: a job in one build of a car, and the cars on the pages of both pieces."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.circuits.job_view import JobView, SeatLine, job_view
from bezelbook.publish.wording import VERDICTS, short_reason
from bezelbook.reasoning.circuits.builds_said import builds_said
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.jobs import DASH
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.circuits.right_for import every_car
from bezelbook.reasoning.circuits.two_piece import Fits, Seat, TwoPiece, fits_in, pairs, two_piece


@dataclass(frozen=True, slots=True)
class UnitLine:
    """A radio in two pieces in some builds of a car that are alike there."""

    vehicle: str
    vehicle_at: str
    builds: str
    verdict: str
    seats: tuple[SeatLine, ...]
    cable: str


def two_piece_jobs(car: Car, fits: Fits, to: Links) -> Iterator[JobView]:
    """The job for every such radio of the book, at a place of the dash whose plug somebody saw."""
    if car.vehicle.places[car.place].kind in DASH and plugs_at(car).plugs:
        for pair in pairs(car.book):
            yield _job(two_piece(car, pair, fits), to)


def _job(found: TwoPiece, to: Links) -> JobView:
    """The job; where a piece certainly has no place, no leads are told that nobody is going to join."""
    view = job_view(found.chain, to)
    title, seats = f"{found.pair.display.name}, {found.pair.box.name}", tuple(_seats(found, to))
    if found.stopped_by:
        bare = replace(view, pieces=(), rows=(), lacks=(), looks=(), sure="", load="", would_do="", drawing="")
        return replace(bare, title=title, verdict=found.stopped_by, seats=seats, cable=found.cable_words)
    return replace(
        view,
        title=title,
        verdict=found.headline,
        looks=(*view.looks, *found.unknown),
        seats=seats,
        cable=found.cable_words,
    )


def _seats(found: TwoPiece, to: Links) -> Iterator[SeatLine]:
    for seat in (found.front, *found.elsewhere):
        yield _seat(found.chain.car, seat, to)


def _seat(car: Car, seat: Seat, to: Links) -> SeatLine:
    place = car.vehicle.places[seat.place].name or seat.place.replace("-", " ")
    reason = short_reason(seat.answer)
    verdict = VERDICTS[seat.answer.verdict]
    words = [car.vehicle.id, seat.place, *(value for _, value in car.build), seat.piece.id]
    return SeatLine(
        seat.piece.name,
        to.head_unit(seat.piece.id),
        place,
        f"{verdict}: {reason}" if reason else verdict,
        to.ask(" ".join(words).replace("-", " ")),
    )


class TwoPieces:
    """Every radio in two pieces of a book, ready for the pages of its pieces."""

    def __init__(self, book: KnowledgeBase) -> None:
        self._fits = fits_in(book)
        self._pairs = pairs(book)
        every = every_car(book) if self._pairs else ()
        self._cars = [car for car in every if car.vehicle.places[car.place].kind in DASH and plugs_at(car).plugs]

    def of(self, unit: HeadUnit, to: Links) -> tuple[UnitLine, ...]:
        """For the page of one of the pieces: every car whose plug somebody saw, builds that are alike as one."""
        own = [pair for pair in self._pairs if unit.id in (pair.display.id, pair.box.id)]
        return tuple(
            line
            for pair in own
            for place in dict.fromkeys((car.vehicle.id, car.place) for car in self._cars)
            for line in _lines(
                [two_piece(car, pair, self._fits) for car in self._cars if (car.vehicle.id, car.place) == place],
                to,
            )
        )


def _on_its_page(headline: str) -> str:
    """The looks of a chain are on the page of the vehicle."""
    return headline.replace("looks below", "looks on its page")


def _lines(each: Iterable[TwoPiece], to: Links) -> Iterator[UnitLine]:
    found: dict[str, tuple[UnitLine, list[Car]]] = {}
    for one in each:
        car = one.chain.car
        seats = tuple(replace(seat, at="") for seat in _seats(one, to))
        line = UnitLine(
            car.vehicle.name, to.vehicle(car.vehicle.id), "", _on_its_page(one.headline), seats, one.cable_words
        )
        found.setdefault(repr(line), (line, []))[1].append(car)
    for line, cars in found.values():
        yield replace(line, builds=builds_said(cars[0].vehicle, [car.build for car in cars]) or "every build")
