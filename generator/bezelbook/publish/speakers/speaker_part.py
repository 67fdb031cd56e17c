"""Where a speaker goes in, as its own page tells it."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.publish.address import Links
from bezelbook.publish.mentions import place_words
from bezelbook.publish.speakers.place import Places
from bezelbook.publish.speakers.vehicle_part import reason_of
from bezelbook.publish.wording import VERDICTS
from bezelbook.values.words import AnswerVerdict


@dataclass(frozen=True, slots=True)
class GoesWhere:
    """The answer about a speaker at one place, whatever the car, the ring and the tabs."""

    place: str
    at: str
    verdict: AnswerVerdict
    words: str
    reason: str


def goes_where(speaker: str, places: Places, to: Links) -> Iterator[GoesWhere]:
    """Every place of which anything is known about a speaker, in the book's order."""
    for (vehicle, place), here in places.items():
        answer = here.answers.get(speaker)
        if answer is not None and answer.verdict != "nobody has tried":
            yield GoesWhere(
                place_words(here.book, vehicle, place),
                to.place(vehicle, place),
                answer.verdict,
                VERDICTS[answer.verdict],
                reason_of(answer),
            )
