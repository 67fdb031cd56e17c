"""Whether a radio in two pieces can be done in a build: a chain, a place for each piece, the cable."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.note.record import Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import Answer, answer, place_of
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.chain import Chain, chain
from bezelbook.reasoning.circuits.in_words import verdict_words
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.unknowns import Missing
from bezelbook.reasoning.vocabulary import OPENINGS
from bezelbook.values.shown import show_quantity
from bezelbook.values.words import ANSWER_VERDICTS

# Whether a head unit, by id, goes into a place in one build.
Fits = Callable[[Car, str, str], Answer]


@dataclass(frozen=True, slots=True)
class Pair:
    """The two pieces of one radio; one record naming the other is enough."""

    display: HeadUnit
    box: HeadUnit


@dataclass(frozen=True)
class Seat:
    """A place for one of the pieces, and whether it goes in there."""

    piece: HeadUnit
    place: str
    answer: Answer


@dataclass(frozen=True)
class TwoPiece:
    """A radio in two pieces in one build: the chain of its leads, both places, and the jobs in which the cable reached.

    `elsewhere` has every other opening for the box, the likeliest first.
    """

    pair: Pair
    chain: Chain
    front: Seat
    elsewhere: tuple[Seat, ...]
    reached: tuple[str, ...]

    @property
    def stopped_by(self) -> str:
        """The piece that certainly has no place, in words; empty when none is ruled out."""
        if self.front.answer.verdict == "does not":
            return f"the {self.pair.display.name} does not go in"
        if self.elsewhere and all(seat.answer.verdict == "does not" for seat in self.elsewhere):
            return f"the {self.pair.box.name} goes in nowhere"
        return ""

    @property
    def headline(self) -> str:
        """What the job comes to in one line: both places, then the leads."""
        boxed = self.elsewhere[0].answer.verdict if self.elsewhere else "no place for it yet"
        seats = self.stopped_by or f"display: {self.front.answer.verdict}; box: {boxed}"
        return f"{seats}; leads: {verdict_words(self.chain)}"

    @property
    def cable_words(self) -> str:
        """How long its cable is, and whether it was ever laid in this vehicle."""
        long = self.pair.display.cable or self.pair.box.cable
        words = show_quantity(long) if long else "nobody has measured how long it is"
        laid = f"reached in {', '.join(self.reached)}" if self.reached else "never laid in this vehicle"
        return f"{words}; {laid}"

    @property
    def unknown(self) -> tuple[Missing, ...]:
        """What only this job does not know: a place for the box, and whether the cable reaches."""
        return tuple(self._unknown())

    def _unknown(self) -> Iterator[Missing]:
        if not self.elsewhere:
            yield Missing(
                f"where the {self.pair.box.name} would go: the vehicle lists no other opening",
                "look under the seats, behind the glovebox and beside the boot, 10 min",
                "whether the job can be done at all",
            )
        if not self.reached:
            yield Missing(
                "how long the way is from the display to the box",
                "lay a string along the way that the cable would take, clear of hinges and pedals, 5 min",
                "whether one cable reaches",
            )


def pairs(book: KnowledgeBase) -> tuple[Pair, ...]:
    """Every radio in two pieces that the book has both pieces of."""
    return tuple(
        Pair(one, other)
        for one in book.head_units.values()
        for other in book.head_units.values()
        if (one.size_class, other.size_class) == ("two-piece display", "two-piece box")
        and (other.id in one.goes_with or one.id in other.goes_with)
    )


def fits_in(book: KnowledgeBase) -> Fits:
    """Asks the book; what the notes of a place allow is worked out once a place."""
    places: dict[tuple[str, str], Place] = {}

    def fits(car: Car, place: str, unit: str) -> Answer:
        key = (car.vehicle.id, place)
        if key not in places:
            places[key] = place_of(book, *key)
        return answer(book, Question(*key, dict(car.build), unit=unit), places[key])

    return fits


def two_piece(car: Car, pair: Pair, fits: Fits) -> TwoPiece:
    """A radio in two pieces whose display goes where the radio is now."""
    openings = [place for place, record in car.vehicle.places.items() if record.kind in OPENINGS]
    seats = [Seat(pair.box, place, fits(car, place, pair.box.id)) for place in openings if place != car.place]
    return TwoPiece(
        pair,
        chain(car, Job("two-piece radio", pair.display.id)),
        Seat(pair.display, car.place, fits(car, car.place, pair.display.id)),
        tuple(sorted(seats, key=lambda seat: ANSWER_VERDICTS.index(seat.answer.verdict))),
        tuple(_reached(car, pair)),
    )


def _reached(car: Car, pair: Pair) -> Iterator[str]:
    """The jobs in which both pieces were fitted in this vehicle, plugs on: there the cable reached."""
    fitted: dict[str, set[str]] = {}
    for note in car.everywhere:
        if isinstance(note, Tried) and note.job and note.sure == "fitted" and note.verdict == "goes in":
            found = car.book.named("head_unit", note.what)
            if found:
                fitted.setdefault(note.job, set()).add(found.id)
    yield from (job for job, pieces in fitted.items() if {pair.display.id, pair.box.id} <= pieces)
