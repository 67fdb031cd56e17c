"""The answer to a question about wiring: job by job and place by place, builds that are alike as one."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import known_splits
from bezelbook.reasoning.circuits.builds_said import builds_said
from bezelbook.reasoning.circuits.cars import Car, cars_of, tells
from bezelbook.reasoning.circuits.in_words import TITLES
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.two_piece import Fits, fits_in, pairs, two_piece
from bezelbook.reasoning.wiring_asked.chains import chain_answer, two_piece_answer
from bezelbook.reasoning.wiring_asked.leads import aerial_answer, speaker_answer
from bezelbook.reasoning.wiring_asked.parts import nothing_of
from bezelbook.reasoning.wiring_asked.plain import PlainBuild, PlainWiring
from bezelbook.reasoning.wiring_asked.question import JobAsked, WiringQuestion
from bezelbook.values.listed import listed

NO_PAIR = "the book has no radio in two pieces with a record of both"
LEADS: Mapping[str, str] = {"speaker lead": "A lead for a speaker", "aerial": "A lead for the aerial"}
SAID: Mapping[str, str] = {**TITLES, **LEADS}


@dataclass(frozen=True)
class WiringAnswer:
    """Everything that is said to a question about wiring."""

    question: WiringQuestion
    for_words: str
    answers: tuple[PlainBuild, ...]

    def plain(self) -> PlainWiring:
        """The answer as plain data, with the keys that the command line and any other program share."""
        return {
            "vehicle": self.question.vehicle,
            "for": self.for_words,
            "splits": dict(self.question.splits),
            "answers": list(self.answers),
        }


def wiring_answer(book: KnowledgeBase, question: WiringQuestion) -> WiringAnswer:
    """The answer; a split that is not known gives an answer for each way in which the builds differ."""
    vehicle = book.vehicles[question.vehicle]
    known = known_splits(vehicle, question.splits, question.year)
    fits = fits_in(book)
    found = tuple(
        one
        for job in question.jobs
        for place in question.places
        for one in _alike(cars_of(book, vehicle, place, known), partial(_answers, question, job, fits))
    )
    year = [f"year {question.year}"] if question.year else []
    said = ", ".join([vehicle.name, *question.splits.values(), *year])
    jobs = listed([SAID[job][0].lower() + SAID[job][1:] for job in question.jobs], "or")
    return WiringAnswer(question, f"{said}: {jobs}", found)


def _answers(question: WiringQuestion, job: JobAsked, fits: Fits, car: Car) -> Iterator[PlainBuild]:
    if job == "speaker lead":
        yield speaker_answer(car)
    elif job == "aerial":
        yield aerial_answer(car)
    elif job == "two-piece radio":
        named = [pair for pair in pairs(car.book) if question.unit in (None, pair.display.id, pair.box.id)]
        yield from (two_piece_answer(two_piece(car, pair, fits)) for pair in named)
        if not named:
            yield nothing_of(car, job, "nothing mates", NO_PAIR)
    else:
        yield chain_answer(car, Job(job, question.unit, question.amplifier))


def _alike(cars: list[Car], answers: Callable[[Car], Iterator[PlainBuild]]) -> Iterator[PlainBuild]:
    """Builds to which the same is said as one, with how to tell them from the others from the seat."""
    found: dict[str, list[tuple[Car, PlainBuild]]] = {}
    for car in cars:
        for one in answers(car):
            key = repr({**one, "builds": [], "kept": _without_notes(one)})
            found.setdefault(key, []).append((car, one))
    for alike in found.values():
        yield _together(cars, alike)


def _without_notes(one: PlainBuild) -> list[str]:
    return [f"{kept['function']} {kept['said']}" for kept in one["kept"]]


def _together(cars: list[Car], alike: list[tuple[Car, PlainBuild]]) -> PlainBuild:
    car, first = alike[0]
    builds = [one.build for one, _ in alike]
    own = [dict(build) for build in builds]
    axes = tuple(
        axis for axis, _ in car.build if {build[axis] for build in own} != {dict(one.build)[axis] for one in cars}
    )
    return {
        **first,
        "builds": [dict(build) for build in builds],
        "builds_words": builds_said(car.vehicle, builds),
        "tell": tells(car.vehicle, axes) if axes else "",
    }
