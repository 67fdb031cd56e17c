"""What to offer for a dash opening: other units, other mounts, other openings, or keeping the radio that is in it."""

from collections.abc import Callable, Iterator
from dataclasses import replace

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.next_best.buying import mounts_with, to_buy
from bezelbook.reasoning.next_best.leads import Leads
from bezelbook.reasoning.offer import WANTING, Kind, Offer, best_of, may_be_offered
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.vocabulary import OPENINGS
from bezelbook.values.listed import listed

BOX, DISPLAY = "two-piece box", "two-piece display"
Ask = Callable[[Question], Answer]


def opening_offers(book: KnowledgeBase, found: Answer, ask: Ask, leads: Leads) -> tuple[Offer, ...]:
    """The best offers instead of what was answered; none where the wish goes in, for certain or on a condition.

    `ask` answers a question about any opening of the same vehicle.
    """
    if found.verdict not in WANTING:
        return ()
    # What does not bear on the room here may well bear on another opening, or on the wiring.
    question = replace(found.question, splits=found.asked.known, year=None)
    same = [*_mounts(book, question, ask), *_places(book, question, ask)]
    return best_of([*same, *unit_offers(book, question, ask, leads)])


def unit_offers(book: KnowledgeBase, question: Question, ask: Ask, leads: Leads) -> Iterator[Offer]:
    """Every other unit that may go in as the question has it, and keeping the radio; typed sizes do not matter."""
    asked = book.head_units[question.unit] if question.unit else None
    where = (question.vehicle, question.place, question.splits)
    kept = leads.keeping(*where)
    if kept:
        yield kept
    lead = leads.plug_in(*where)
    for unit in book.head_units.values():
        if unit is asked or (unit.size_class == BOX) != (asked is not None and asked.size_class == BOX):
            continue
        answer = ask(replace(question, unit=unit.id, sizes={}))
        if may_be_offered(answer.verdict, answer.witnesses):
            offer = _offer(book, answer, _kind(asked, unit), unit.name, (unit.id, *lead.adapters))
            offer = replace(offer, thing=unit.id, needs=(*offer.needs, *lead.lines))
            yield _with_box(book, unit, offer, question, ask) if unit.size_class == DISPLAY else offer


def _kind(asked: HeadUnit | None, unit: HeadUnit) -> Kind:
    if unit.size_class == DISPLAY:
        return "in two pieces"
    if asked is None:
        return "another one"
    return "another of its size" if asked.size_class == unit.size_class else "of another size"


def _with_box(book: KnowledgeBase, unit: HeadUnit, offer: Offer, question: Question, ask: Ask) -> Offer:
    """The display of a radio in two pieces; nothing is promised of it until its box has somewhere to go."""
    boxes = [book.head_units[other] for other in unit.goes_with if other in book.head_units]
    homes = [
        f"{box.name} with it, in the {_name(book, question, place)}"
        for box in boxes
        for place in _others(book, question)
        if ask(replace(question, place=place, unit=box.id, sizes={}, mounts=None)).verdict == "goes in"
    ]
    buy = (*offer.buy, *to_buy(book, (box.id for box in boxes)))
    if homes:
        return replace(offer, needs=(homes[0], *offer.needs), buy=buy)
    lacks = "its box finds a place of its own, which nobody has tried here"
    condition = f"{offer.condition}, and {lacks}" if offer.condition else lacks
    return replace(offer, verdict="goes in if", condition=condition, buy=buy)


def _mounts(book: KnowledgeBase, question: Question, ask: Ask) -> Iterator[Offer]:
    """The same thing with another mount known for the place; of no use where any mount was asked about."""
    if question.mounts is None:
        return
    for stack in ask(replace(question, mounts=None)).asked.stacks:
        if stack.key != question.mounts:
            answer = ask(replace(question, mounts=stack.key))
            if may_be_offered(answer.verdict, answer.witnesses):
                yield _offer(book, answer, "another mount", f"with {stack.words}", (question.unit,))


def _places(book: KnowledgeBase, question: Question, ask: Ask) -> Iterator[Offer]:
    for place in _others(book, question):
        answer = ask(replace(question, place=place, mounts=None))
        if may_be_offered(answer.verdict, answer.witnesses):
            words = f"in the {_name(book, question, place)}"
            yield _offer(book, answer, "another place", words, (question.unit,))


def _others(book: KnowledgeBase, question: Question) -> Iterator[str]:
    for place, record in book.vehicles[question.vehicle].places.items():
        if place != question.place and record.kind in OPENINGS:
            yield place


def _name(book: KnowledgeBase, question: Question, place: str) -> str:
    return book.vehicles[question.vehicle].places[place].name or place.replace("-", " ")


def _offer(book: KnowledgeBase, answer: Answer, kind: Kind, words: str, things: tuple[str | None, ...]) -> Offer:
    """An offer as it was answered; where several mounts would do, none of them has to be bought."""
    stacks = answer.asked.stacks
    mounts = stacks[0].key if len(stacks) == 1 else ()
    if kind != "another mount" and stacks[0].key:
        words += f", with {listed([stack.words for stack in stacks], 'or')}"
    return Offer(
        kind,
        words,
        None,
        answer.question.place,
        mounts,
        answer.verdict,
        answer.conditions[0].words if answer.conditions else "",
        answer.sure,
        answer.witnesses,
        tuple(answer.needs[len(answer.conditions) :]),
        to_buy(book, (*things, *mounts_with(book, mounts))),
    )
