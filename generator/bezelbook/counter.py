"""The counter of one book: it reads a question, answers it, and remembers each place it was asked about."""

import dataclasses
import json
from codecs import BOM_UTF8
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.next_best.desk import Desk
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.answer import SpeakerAnswer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.spoken.depths import depths_at
from bezelbook.reasoning.spoken.found import Choice
from bezelbook.reasoning.spoken.known import known_of
from bezelbook.reasoning.vocabulary import vocabulary
from bezelbook.reasoning.wiring_asked.answer import WiringAnswer, wiring_answer
from bezelbook.reasoning.wiring_asked.question import WiringQuestion
from bezelbook.reasoning.words import read_words
from bezelbook.values.complaint import Wrong

SHAPE = '{"vehicle": …, "place": …, "what": …}'


class Counter:
    """Answers questions about one book, remembering each place it was asked about."""

    def __init__(self, base: KnowledgeBase) -> None:
        self.base = base
        self._phrases = vocabulary(base)
        self._desk = Desk(base)

    def ask_words(self, text: str) -> tuple[Answer | SpeakerAnswer | WiringAnswer | Choice, tuple[str, ...]]:
        """An answer to free words, or the one thing to ask first; and how bare numbers were read."""
        reading = read_words(self.base, text, self._phrases)
        return self._found(reading.read), reading.took

    def ask(self, data: Mapping[str, Any]) -> dict[str, Any]:
        """A question as plain data, answered as plain data; raises Wrong when it cannot be read."""
        reading = read_question(self.base, data, self._phrases)
        found = self._found(reading.read)
        took = {"took": list(reading.took)} if reading.took else {}
        if isinstance(found, Choice):
            known = {"known": list(found.known)} if found.known else {}
            return {"ask": found.ask, "options": [list(option) for option in found.options]} | known | took
        return {**found.plain(), **took}

    def batch(self, lines: Iterable[bytes]) -> Iterator[dict[str, Any]]:
        """One answer for each line of JSON that is not blank; a line that is wrong says so and stops nothing."""
        for number, line in enumerate(lines, 1):
            if line.removeprefix(BOM_UTF8).strip():
                yield self._line(number, line)

    def _line(self, number: int, line: bytes) -> dict[str, Any]:
        try:
            return self.ask(_question(line))
        except Wrong as wrong:
            return {"line": number, "wrong": wrong.what, "mend": wrong.mend}

    def _found(
        self, read: Question | SpeakerQuestion | WiringQuestion | Choice
    ) -> Answer | SpeakerAnswer | WiringAnswer | Choice:
        """The answer to what was read, or the choice with what is known so far.

        What is too wide or too high is out, however deep it is.
        """
        if isinstance(read, WiringQuestion):
            return wiring_answer(self.base, read)
        if isinstance(read, SpeakerQuestion):
            return self._desk.speaker(read)
        if isinstance(read, Question):
            return self._desk.opening(read)
        if read.opening is None:
            return known_of(read, self._desk.speaker_place, self._desk.plainly)
        found = self._desk.opening(read.opening)
        known = depths_at(self._desk.place(read.opening.vehicle, read.opening.place), read.opening)
        return found if found.verdict == "does not" else dataclasses.replace(read, known=tuple(known))


def _question(line: bytes) -> dict[str, Any]:
    """A line of a batch as plain data; raises Wrong when it is not a set of keys and values."""
    try:
        data = json.loads(line.decode("utf-8-sig"))
    except UnicodeDecodeError as error:
        raise Wrong("this line is not UTF-8 text", "Save the file as UTF-8") from error
    except (ValueError, RecursionError) as error:
        # ValueError beside the reader's own: a number of thousands of digits.
        raise Wrong("this line is not JSON", f"Write one question a line: {SHAPE}") from error
    if not isinstance(data, dict):
        raise Wrong("a question is a set of keys and values", f"Write {SHAPE}")
    return data
