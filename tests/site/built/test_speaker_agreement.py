"""What the browser reads and answers about speakers is what Python does, key by key."""

import json
import random
from collections import Counter
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.speakers.pieces import TYPED_ONE, Piece, pieces
from bezelbook.publish.speakers.place import PlaceForSpeakers, places_for_speakers
from bezelbook.publish.speakers.state import State, states_of
from bezelbook.reasoning.speakers.answer import speaker_answer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.spoken.found import Choice
from bezelbook.reasoning.spoken.known import known_at
from bezelbook.reasoning.vocabulary import vocabulary
from bezelbook.reasoning.wiring_asked.question import WiringQuestion
from bezelbook.reasoning.words import read_words
from bezelbook.values.quantity import read_quantity
from tests.reasoning.spoken.test_messy_speakers import DEMO, DOORS
from tests.vectors.cases import plain_question, plain_speaker_question

MADE_UP = 1500
MM = 1_000_000
READ = """(texts) => texts.map((text) => {
  const { question, choice, took, wiring } = bezelbook.words.read(text);
  if (wiring) return { wiring: wiring.id };
  return choice ? { ask: choice.ask, options: choice.options, at: choice.at || [], took } : { question, took };
})"""
REPLY = """async (questions) => {
  const answers = [];
  for (const question of questions) {
    const vehicle = await bezelbook.open(question.vehicle);
    answers.push(bezelbook.spokenReply.reply(vehicle, question).answer || null);
  }
  return answers;
}"""
KNOWN = """async (places) => {
  const known = [];
  for (const [vehicle, place] of places) known.push((await bezelbook.open(vehicle)).speakers.places[place].known);
  return known;
}"""
AGAIN = """(texts) => {
  const questions = texts.map((text) => bezelbook.words.read(text).question).filter((one) => one && 'speaker' in one);
  return questions.map((question) => {
    const said = bezelbook.words.again(question);
    return [said, question, bezelbook.words.read(said).question];
  });
}"""
PIECES = (
    "left", "right", "lh", "fl", "rr", "driver's side", "passenger", "front door", "door", "doors", "rear deck",
    "sails", "kick panel", "under the seat", "load bay", "dash corner", "speakers", "coax", "tweeters", "sub", "comps",
    "6.5", "165",
    "6x9", "5 1/4", "six and a half", "63", "63 deep", "depth 63 mm", "143", "cut-out 143", "152 x 222 hole", "bcd 156",
    "basket 141", "2.5", "2 1/2 in", "10 mm ring", "18 ring", "ring 12.7", "half inch spacer", "no ring", "tabs out",
    "tabs in", "glass up", "windows down", "year 3", "0.5 ring", "1/2 ring", "flange 166", "12 high", "63 ± 1 deep",
    "165.12345", "6.5 in", "100", "8", "10 inch", "3/7 deep", "dash", "165 in", "bracket",
)  # fmt: skip


@pytest.fixture(params=["doors", "demo"])
def opened(request: pytest.FixtureRequest, at_home: Callable[[Path, str], Page]) -> tuple[Page, KnowledgeBase]:
    site: Path = request.getfixturevalue(f"{request.param}_site")
    book: KnowledgeBase = request.getfixturevalue(f"{request.param}_book")
    return at_home(site, ""), book


def texts_of(book: KnowledgeBase, many: int) -> list[str]:
    """Shouted questions, and words of the book and of the trade in any order, the same in every run."""
    chance = random.Random(20)  # noqa: S311 - no secret, the same in every run
    names = [" ".join(phrase.words) for phrase in vocabulary(book) if phrase.points in ("speaker", "place", "mount")]
    cars = [" ".join(phrase.words) for phrase in vocabulary(book) if phrase.points == "vehicle"]
    made = [
        " ".join([*chance.choices((*PIECES, *names), k=chance.randint(1, 5)), chance.choice(cars)]) for _ in range(many)
    ]
    return [*DEMO, *DOORS, *made]


def plain_reading(book: KnowledgeBase, text: str, phrases: Any) -> dict[str, Any]:
    reading = read_words(book, text, phrases)
    found, took = reading.read, list(reading.took)
    if isinstance(found, WiringQuestion):
        return {"wiring": found.vehicle}
    if isinstance(found, Choice):
        at = [list(one) for one in found.at]
        return {"ask": found.ask, "options": [list(option) for option in found.options], "at": at, "took": took}
    plain = plain_speaker_question(found) if isinstance(found, SpeakerQuestion) else plain_question(found)
    return {"question": plain, "took": took}


def test_words_about_speakers_are_read_alike(opened: tuple[Page, KnowledgeBase]) -> None:
    page, book = opened
    phrases = vocabulary(book)
    texts = texts_of(book, MADE_UP)
    kinds: Counter[str] = Counter()
    for text, browser in zip(texts, page.evaluate(READ, texts), strict=True):
        expected = plain_reading(book, text, phrases)
        assert browser == expected, text
        kinds["asked" if "ask" in expected else "speaker" if "speaker" in expected["question"] else "opening"] += 1
    assert kinds["speaker"] > MADE_UP // 20


def published(book: KnowledgeBase) -> Iterator[tuple[PlaceForSpeakers, SpeakerQuestion]]:
    for place in places_for_speakers(book).values():
        for state in states_of(place):
            yield from ((place, state.question(place, speaker)) for speaker in book.speakers)


def test_every_published_answer_about_a_speaker_is_the_books(opened: tuple[Page, KnowledgeBase]) -> None:
    page, book = opened
    asked = list(published(book))
    found = page.evaluate(REPLY, [plain_speaker_question(question) for _, question in asked])
    verdicts: Counter[str] = Counter()
    for (place, question), browser in zip(asked, found, strict=True):
        plain = json.loads(json.dumps(speaker_answer(book, question, place.room).plain()))
        assert browser == plain, question
        verdicts[plain["verdict"]] += 1
    assert verdicts.total() == len(asked) > 0
    assert len(verdicts) > 1


def typed(book: KnowledgeBase, many: int) -> Iterator[tuple[PlaceForSpeakers, SpeakerQuestion]]:
    """One size typed at a place of which something is known, near where something changes and anywhere."""
    chance = random.Random(21)  # noqa: S311 - no secret, the same in every run
    places = [place for place in places_for_speakers(book).values() if place.room.evidence.standing]
    states = [
        (place, state) for place in places for state in states_of(place) if state.glass == "run" and not state.tabs
    ]
    for _ in range(many):
        place, state = chance.choice(states)
        of = "mounting_depth" if state.mounts else chance.choice(TYPED_ONE)
        piece = chance.choice(list(known_pieces(place, state, of)))
        near = chance.choice((piece.low, piece.high)) + chance.choice((-100, 0, 0, 100, 1000, -1000))
        base = chance.choice((near, chance.randint(piece.low, piece.high), chance.randint(8, 240) * 500_000))
        base = min(max(base // 100 * 100, MM), 400 * MM)
        size = read_quantity(f"{base // MM}.{base % MM // 100:04d} mm", "length")
        yield place, state.question(place, None, {of: size})


@cache
def known_pieces(place: PlaceForSpeakers, state: State, of: str) -> tuple[Piece, ...]:
    return tuple(pieces(place, state, of))


def test_made_up_sizes_of_speakers_are_answered_alike(opened: tuple[Page, KnowledgeBase]) -> None:
    page, book = opened
    asked = list(typed(book, MADE_UP // 2))
    found = page.evaluate(REPLY, [plain_speaker_question(question) for _, question in asked])
    verdicts: Counter[str] = Counter()
    for (place, question), browser in zip(asked, found, strict=True):
        if browser is not None:
            plain = json.loads(json.dumps(speaker_answer(book, question, place.room).plain()))
            assert browser == plain, question
        verdicts["left to the command line" if browser is None else browser["verdict"]] += 1
    assert verdicts["left to the command line"] < MADE_UP // 40, verdicts
    assert len(verdicts) > 2


def test_what_is_known_is_told_alike(opened: tuple[Page, KnowledgeBase]) -> None:
    page, book = opened
    places = places_for_speakers(book)
    found = page.evaluate(KNOWN, [list(at) for at in places])
    assert found == [list(known_at(place.room)) for place in places.values()]


def test_a_question_about_a_speaker_said_again_is_the_same(opened: tuple[Page, KnowledgeBase]) -> None:
    page, book = opened
    for said, question, again in page.evaluate(AGAIN, texts_of(book, MADE_UP)):
        assert again == question, said
