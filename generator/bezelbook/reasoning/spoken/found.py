"""Words typed at the counter, what has been recognised in them so far, and what they leave to be asked."""

import re
from collections import Counter
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass, field

from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.vocabulary import FILLERS, Phrase, Points

# One word in common is chance: "double" is in many names.
LEAST_SHARED = 1


@dataclass(frozen=True)
class Choice:
    """Something the words leave open: what to ask, and the answers with the words that would say them.

    `at` are the places for a speaker that it is about, as vehicle and place, of which what is known can be told;
    `question` is what was asked of each of them, where only the place is open. `opening` is what was asked of an
    opening, where only the depth is open. `known` is what was told.
    """

    ask: str
    options: tuple[tuple[str, str], ...]
    at: tuple[tuple[str, str], ...] = ()
    question: SpeakerQuestion | None = None
    opening: Question | None = None
    known: tuple[str, ...] = ()


@dataclass(slots=True)
class Found:
    """What has been recognised so far: `left` are the words not yet used, with None where words were taken out.

    A hit is where it stands in the words, and everything that those words may mean.
    """

    words: tuple[str, ...]
    left: list[str | None]
    hits: list[tuple[int, tuple[Phrase, ...]]] = field(default_factory=list)

    def take(self, phrases: Iterable[Phrase]) -> None:
        """Recognise phrases, the longest first and then from the left, each word once."""
        meanings: dict[tuple[str | None, ...], list[Phrase]] = {}
        for phrase in phrases:
            meanings.setdefault(phrase.words, []).append(phrase)
        for size in sorted({len(words) for words in meanings}, reverse=True):
            for start in range(len(self.left) - size + 1):
                meant = meanings.get(tuple(self.left[start : start + size]))
                if meant:
                    self.left[start : start + size] = [None] * size
                    self.hits.append((start, tuple(meant)))

    def named(self, points: Points, among: Collection[str] | None = None, axis: str = "") -> list[str]:
        """What was named, and named most often when that differs: several when the words leave it open.

        Words that may speak of several axes speak of none.
        """
        said = Counter(
            one.id
            for _, meant in sorted(self.hits, key=lambda hit: hit[0])
            for one in meant
            if len({one.axis for one in meant}) == 1
            if (one.points, one.axis) == (points, axis) and (among is None or one.id in among)
        )
        return [id_ for id_, times in said.items() if times == max(said.values())]

    def sharing(self, phrases: Iterable[Phrase]) -> list[str]:
        """What is named by a phrase that shares an unused word; words that tell nothing do not count."""
        words = {word for word in self.left if word is not None and tells(word)}
        return list(dict.fromkeys(phrase.id for phrase in phrases if words & set(phrase.words)))

    def nearest(self, phrases: Iterable[Phrase]) -> list[str]:
        """What is named by the phrases that share most unused words that tell something, and two of them at least."""
        words = {word for word in self.left if word is not None and tells(word)}
        shared: dict[str, int] = {}
        for phrase in phrases:
            shared[phrase.id] = max(len(words & set(phrase.words)), shared.get(phrase.id, LEAST_SHARED))
        return [id_ for id_, number in shared.items() if number == max(shared.values()) > LEAST_SHARED]

    def give_back(self, words: Collection[str]) -> None:
        """Take none of these words for a build: beside a place for a speaker, left is a side and no steering hand."""
        for hit in [hit for hit in self.hits if self.words[hit[0]] in words and len(hit[1][0].words) == 1]:
            if all(one.points == "split" for one in hit[1]):
                self.hits.remove(hit)
                self.left[hit[0]] = self.words[hit[0]]

    def text(self, *, with_places: bool) -> str:
        """The unused words with a bar where others were taken out; words that name a place may be put back."""
        words = list(self.left)
        for start, meant in self.hits if with_places else ():
            if any(one.points == "place" for one in meant):
                words[start : start + len(meant[0].words)] = self.words[start : start + len(meant[0].words)]
        return " ".join(word or "|" for word in words)


def tells(word: str) -> bool:
    """Whether a word may tell which vehicle or place is meant."""
    return word not in FILLERS and word[0].isalpha()


def spoken(id_: str) -> str:
    """An id as somebody would type it."""
    return id_.replace("-", " ")


def most_named(words: Iterable[str]) -> Iterator[str]:
    """Of some words those that were said most often, in the order in which they came."""
    said = Counter(words)
    return (word for word, times in said.items() if times == max(said.values()))


def replaced(text: str, patterns: Iterable[tuple[str, str]]) -> str:
    """Text with each pattern replaced in turn; a group is written as a dollar sign and its number."""
    for pattern, instead in patterns:
        text = re.sub(pattern, re.sub(r"\$(\d)", r"\\\1", instead), text)
    return text
