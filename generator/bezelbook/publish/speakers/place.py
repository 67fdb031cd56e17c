"""One place for a speaker with every answer that is published about it, each worked out once."""

from collections.abc import Iterator
from functools import cached_property

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.speakers.answer import SpeakerAnswer, speaker_answer
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES
from bezelbook.reasoning.speakers.question import SpeakerQuestion, asked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, speaker_place_of
from bezelbook.reasoning.speakers.window import Window, window

# Nothing is drawn of a speaker of which nothing more is known than that it was never tried, or never can be.
WORTH_A_RING = ("goes in", "goes in if", "too close")


class PlaceForSpeakers:
    """A place, ready to be asked about every speaker of the book."""

    def __init__(self, book: KnowledgeBase, vehicle: str, place: str) -> None:
        self.book = book
        self.vehicle = vehicle
        self.id = place
        self.room: SpeakerPlace = speaker_place_of(book, vehicle, place)

    @property
    def name(self) -> str:
        """What the shop calls it."""
        return self.room.frame.vehicle.places[self.id].name or self.id.replace("-", " ")

    @cached_property
    def answers(self) -> dict[str, SpeakerAnswer]:
        """The answer about each speaker of the book by its id, nothing said of the car; none where no note stands."""
        if not self.room.evidence.standing:
            return {}
        return {speaker: self._answer(speaker) for speaker in self.book.speakers}

    @cached_property
    def windows(self) -> dict[str, Window]:
        """The rings for each speaker that may go in and of which some depth here was measured, by its id."""
        found = {
            speaker: window(self.room, asked(self.room, self._question(speaker)))
            for speaker, answer in self.answers.items()
            if answer.verdict in WORTH_A_RING
        }
        return {speaker: one for speaker, one in found.items() if one.low is not None or one.high is not None}

    def _answer(self, speaker: str) -> SpeakerAnswer:
        return speaker_answer(self.book, self._question(speaker), self.room)

    def _question(self, speaker: str) -> SpeakerQuestion:
        return SpeakerQuestion(self.vehicle, self.id, speaker=speaker)


Places = dict[tuple[str, str], PlaceForSpeakers]


def places_for_speakers(book: KnowledgeBase) -> Places:
    """Every place of the book that takes a speaker, by its vehicle and its id."""
    return {(vehicle, place): PlaceForSpeakers(book, vehicle, place) for vehicle, place in _places(book)}


def _places(book: KnowledgeBase) -> Iterator[tuple[str, str]]:
    for vehicle in book.vehicles.values():
        for place, record in vehicle.places.items():
            if record.kind in SPEAKER_PLACES | EITHER_PLACES:
                yield vehicle.id, place
