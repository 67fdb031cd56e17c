"""What is offered instead of a wish, worked out of the answers that are published anyway."""

from collections.abc import Sequence
from dataclasses import dataclass

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.choices import Choice
from bezelbook.publish.opening import Opening
from bezelbook.publish.wording import counted
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.next_best.leads import Leads
from bezelbook.reasoning.next_best.openings import opening_offers, unit_offers
from bezelbook.reasoning.offer import Offer, best_of
from bezelbook.reasoning.question import Question


@dataclass(frozen=True, slots=True)
class OfferRow:
    """An offer as a page shows it: what, whether it goes in, and what it rests on and takes."""

    words: str
    at: str
    verdict: str
    takes: str


def offer_row(offer: Offer, to: Links) -> OfferRow:
    """An offer in words."""
    jobs = f"{offer.sure}, {counted(offer.witnesses, 'job')}" if offer.witnesses else offer.sure or ""
    needs = f"needs {'; '.join(offer.needs)}" if offer.needs else ""
    buy = f"to buy: {', '.join(offer.buy)}" if offer.buy else "nothing to buy"
    return OfferRow(
        offer.words,
        to.head_unit(offer.thing) if offer.thing else "",
        f"{offer.verdict} {offer.condition}".rstrip(),
        " · ".join(one for one in (jobs, needs, buy) if one),
    )


class Offers:
    """The offers at these openings; an answer at one of them may offer another of the same vehicle."""

    def __init__(self, book: KnowledgeBase, openings: Sequence[Opening]) -> None:
        self._book = book
        self._openings = {(opening.vehicle, opening.id): opening for opening in openings}
        self._leads = Leads(book)

    def of(self, answer: Answer) -> tuple[Offer, ...]:
        """What to offer instead of a head unit, as it was answered."""
        return opening_offers(self._book, answer, self._ask, self._leads)

    def units(self, opening: Opening, choice: Choice) -> tuple[Offer, ...]:
        """What to offer instead of any size that somebody typed: the units that go in, or keeping the radio."""
        question = Question(opening.vehicle, opening.id, choice.known, mounts=choice.mounts)
        return best_of(unit_offers(self._book, question, self._ask, self._leads))

    def _ask(self, question: Question) -> Answer:
        opening = self._openings[question.vehicle, question.place]
        axes = (axis for axis, _ in opening.room.frame.builds[0])
        splits = tuple((axis, question.splits[axis]) for axis in axes if axis in question.splits)
        return opening.answer(Choice(splits, question.mounts), question.unit)
