"""Answers with what to offer instead, for many questions about one book."""

from dataclasses import replace

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import Answer, answer, place_of
from bezelbook.reasoning.next_best.leads import Leads
from bezelbook.reasoning.next_best.openings import opening_offers
from bezelbook.reasoning.next_best.speakers import speaker_offers
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.speakers.answer import SpeakerAnswer, speaker_answer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, speaker_place_of

# How many answers are kept to be offered again; each is worked out again when it is wanted again.
MOST_KEPT = 2000


class Desk:
    """Remembers each place it was asked about, and the answers that it may offer again."""

    def __init__(self, book: KnowledgeBase) -> None:
        self._book = book
        self._leads = Leads(book)
        self._places: dict[tuple[str, str], Place] = {}
        self._speaker_places: dict[tuple[str, str], SpeakerPlace] = {}
        self._kept: dict[str, Answer] = {}

    def opening(self, question: Question) -> Answer:
        """The answer about a dash opening, with what to offer instead."""
        found = self._opening(question)
        return replace(found, instead=opening_offers(self._book, found, self._again, self._leads))

    def speaker(self, question: SpeakerQuestion) -> SpeakerAnswer:
        """The answer about a speaker, with what to offer instead."""
        found = self.plainly(question)
        return replace(found, instead=speaker_offers(self._book, found, self.plainly))

    def _again(self, question: Question) -> Answer:
        key = repr(question)
        if key not in self._kept:
            if len(self._kept) >= MOST_KEPT:
                self._kept.clear()
            self._kept[key] = self._opening(question)
        return self._kept[key]

    def place(self, vehicle: str, place: str) -> Place:
        """An opening with what its notes allow, worked out once."""
        key = (vehicle, place)
        if key not in self._places:
            self._places[key] = place_of(self._book, *key)
        return self._places[key]

    def speaker_place(self, vehicle: str, place: str) -> SpeakerPlace:
        """A place for a speaker with what its notes allow, worked out once."""
        key = (vehicle, place)
        if key not in self._speaker_places:
            self._speaker_places[key] = speaker_place_of(self._book, *key)
        return self._speaker_places[key]

    def _opening(self, question: Question) -> Answer:
        return answer(self._book, question, self.place(question.vehicle, question.place))

    def plainly(self, question: SpeakerQuestion) -> SpeakerAnswer:
        """The answer about a speaker and nothing instead."""
        return speaker_answer(self._book, question, self.speaker_place(question.vehicle, question.place))
