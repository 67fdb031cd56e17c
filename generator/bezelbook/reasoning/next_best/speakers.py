"""What to offer at a place for a speaker: other speakers, other rings or mounts, other places of the same car."""

from collections.abc import Callable, Iterator
from dataclasses import replace

from bezelbook.kinds.speaker.record import Speaker
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.next_best.buying import mounts_with, to_buy
from bezelbook.reasoning.offer import WANTING, Kind, Offer, best_of, may_be_offered
from bezelbook.reasoning.speakers.answer import SpeakerAnswer
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.values.listed import listed

Ask = Callable[[SpeakerQuestion], SpeakerAnswer]


def speaker_offers(book: KnowledgeBase, found: SpeakerAnswer, ask: Ask) -> tuple[Offer, ...]:
    """The best offers instead of what was answered; none where the wish goes in, for certain or on a condition.

    `ask` answers a question about any place for a speaker in the same vehicle.
    """
    if found.verdict not in WANTING:
        return ()
    question = found.question
    return best_of([*_speakers(book, question, ask), *_mounts(book, question, ask), *_places(book, question, ask)])


def _speakers(book: KnowledgeBase, question: SpeakerQuestion, ask: Ask) -> Iterator[Offer]:
    """Every other speaker of that sort; where sizes alone were asked about, of any sort."""
    asked = book.speakers[question.speaker] if question.speaker else None
    for speaker in book.speakers.values():
        if speaker is asked or (asked and asked.speaker_kind != speaker.speaker_kind):
            continue
        answer = ask(replace(question, speaker=speaker.id, sizes={}))
        if may_be_offered(answer.verdict, answer.witnesses):
            offer = _offer(book, answer, _kind(asked, speaker), speaker.name, speaker.id)
            yield replace(offer, thing=speaker.id)


def _kind(asked: Speaker | None, speaker: Speaker) -> Kind:
    if asked is None:
        return "another one"
    return "another of its size" if asked.nominal == speaker.nominal else "of another size"


def _mounts(book: KnowledgeBase, question: SpeakerQuestion, ask: Ask) -> Iterator[Offer]:
    """The same one through another ring or mount; of no use where any was asked about."""
    if question.mounts is None:
        return
    for stack in ask(replace(question, mounts=None)).asked.stacks:
        if stack.mounts != question.mounts:
            answer = ask(replace(question, mounts=stack.mounts))
            if may_be_offered(answer.verdict, answer.witnesses):
                yield _offer(book, answer, "another mount", f"with {stack.words}", question.speaker)


def _places(book: KnowledgeBase, question: SpeakerQuestion, ask: Ask) -> Iterator[Offer]:
    """The same one elsewhere; the same place on the other side is no other place."""
    places = book.vehicles[question.vehicle].places
    for place, record in places.items():
        if record.kind in SPEAKER_PLACES | EITHER_PLACES and record.kind != places[question.place].kind:
            answer = ask(replace(question, place=place, mounts=None))
            if may_be_offered(answer.verdict, answer.witnesses):
                words = f"in the {record.name or place.replace('-', ' ')}"
                yield _offer(book, answer, "another place", words, question.speaker)


def _offer(book: KnowledgeBase, answer: SpeakerAnswer, kind: Kind, words: str, thing: str | None) -> Offer:
    stacks = answer.asked.stacks
    mounts = stacks[0].mounts if len(stacks) == 1 else ()
    if kind != "another mount" and stacks[0].mounts:
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
        to_buy(book, (thing, *mounts_with(book, mounts))),
    )
