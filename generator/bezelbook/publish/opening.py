"""One opening of one vehicle with every answer that is published about it, each worked out once."""

from collections.abc import Mapping
from functools import cached_property
from typing import Any

from bezelbook.kinds.vehicle.record import Place as PlaceRecord
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.choices import Choice, choices_of
from bezelbook.reasoning.answer import Answer, answer, place_of
from bezelbook.reasoning.corners import corners
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Asked, Question, asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.vocabulary import OPENINGS
from bezelbook.values.quantity import Quantity, read_quantity

# A size that somebody typed, of which only the words around it matter.
SOME_SIZE = read_quantity("1 mm", "length")
OPEN = Choice((), None)


class Opening:
    """An opening, ready to be asked about in every published way."""

    def __init__(self, book: KnowledgeBase, vehicle: str, place: str) -> None:
        self.book = book
        self.id = place
        self.room: Place = place_of(book, vehicle, place)
        self._asked: dict[Choice, Asked] = {}
        self._answers: dict[object, Answer] = {}

    @property
    def vehicle(self) -> str:
        """The id of its vehicle."""
        return self.room.frame.vehicle.id

    @property
    def record(self) -> PlaceRecord:
        """What its vehicle says of it."""
        return self.room.frame.vehicle.places[self.id]

    @property
    def name(self) -> str:
        """What the shop calls it."""
        return self.record.name or self.id.replace("-", " ")

    @cached_property
    def choices(self) -> tuple[Choice, ...]:
        """Every published way of asking."""
        return choices_of(self.room)

    @cached_property
    def everything(self) -> Asked:
        """The question that leaves everything open: its settings are all there are."""
        return self.asked(OPEN)

    @cached_property
    def corners(self) -> Mapping[str, Any]:
        """The room as plain numbers, its settings in the order of `everything`."""
        return corners(self.room, self.everything)

    def asked(self, choice: Choice) -> Asked:
        """What a choice leaves open for a size that somebody typed, however large it is."""
        if choice not in self._asked:
            self._asked[choice] = asked(self.room.frame, self.room.evidence, self._question(choice, None))
        return self._asked[choice]

    def numbers(self, asked: Asked) -> tuple[int, ...]:
        """Which of all the settings a question leaves open."""
        every = self.everything.settings
        return tuple(every.index(setting) for setting in asked.settings)

    def answer(self, choice: Choice, unit: str | None) -> Answer:
        """The answer about a head unit by its id, or about a size that somebody typed.

        Where a place has one usual mount, naming it asks the same again.
        """
        key = (choice.splits, tuple(stack.key for stack in self.asked(choice).stacks), unit)
        if key not in self._answers:
            self._answers[key] = answer(self.book, self._question(choice, unit), self.room)
        return self._answers[key]

    def _question(self, choice: Choice, unit: str | None) -> Question:
        sizes: Mapping[Need, Quantity] = {} if unit else {"depth": SOME_SIZE}
        return Question(self.vehicle, self.id, choice.known, mounts=choice.mounts, unit=unit, sizes=sizes)


def openings_of(book: KnowledgeBase) -> tuple[Opening, ...]:
    """Every opening of the book that takes a box, vehicle by vehicle."""
    return tuple(
        Opening(book, vehicle.id, place)
        for vehicle in book.vehicles.values()
        for place, record in vehicle.places.items()
        if record.kind in OPENINGS
    )
