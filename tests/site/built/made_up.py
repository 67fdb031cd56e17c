"""Made-up questions, the same in every run: sizes near where something changes, and words in any order."""

import random
from collections.abc import Iterator, Sequence
from itertools import islice

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.opening import Opening
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.vocabulary import vocabulary
from bezelbook.values.quantity import Quantity, read_quantity

NUDGES = (0, 0, 100, -100, 1_000_000, -1_000_000)
SIZES = (
    "165",
    "178 x 100 x 165",
    "6 1/2",
    "6½ in",
    '6 ½"',
    '2-3/8"',
    "165 ± 1",
    "165 mm ± 1",
    "165+/-1 mm",
    "1,000",
    "6,5",
    "9",
    "182 x 53 mm",
    "165 deep",
    "100 wide",
    "depth 96",
    "165 in",
    "18.2 cm",
    '7"',
    "0",
    "1/3",
    "178w",
    "100h",
    "96d",
    "3.75",
    "178×100×165",
    "12345678",
    "165 170",
    "6.5.5",
    "6 1/2 x 4",
    "165mm",
    "0.5",
    "7 x 4 x 6.5 inches",
    "16,5 cm",
)
NOISE = (
    "2",
    "gen 2",
    "mk2",
    "2nd gen",
    "second generation",
    "mark ii",
    "year 3",
    "year 9",
    "2din",
    "2 door",
    "¼",
    "the",
    "in",
    "a",
    "will it fit",
    "with",
    "ÄÖ",
    "日本",
    "<b>",
    "''",
    '"quoted"',
    "hello.",
    "gen",
    "x",
    "year",
    "deep",
    "dash?",
    "İ",
    "K",
    "_",
    "|",
)


def unit_questions(openings: Sequence[Opening]) -> Iterator[tuple[Opening, Question]]:
    """Every published question about a head unit."""
    for opening in openings:
        for choice in opening.choices:
            for unit in opening.book.head_units:
                yield opening, Question(opening.vehicle, opening.id, choice.known, mounts=choice.mounts, unit=unit)


def size_questions(openings: Sequence[Opening], count: int) -> Iterator[tuple[Opening, Question]]:
    """Questions about sizes in published choices, about as many with three sizes as with a depth alone."""
    dice = random.Random(20260305)  # noqa: S311 - the same made-up sizes every time
    edges = {opening: _edges(opening) for opening in openings}
    for _ in range(count):
        opening = dice.choice(openings)
        choice = dice.choice(opening.choices)
        sizes: dict[Need, Quantity] = {"depth": _size(dice, edges[opening], 20, 240)}
        if dice.random() < 0.5:
            front: dict[Need, Quantity] = {
                "width": _size(dice, edges[opening], 100, 220),
                "height": _size(dice, edges[opening], 40, 120),
            }
            sizes = front | sizes
        yield opening, Question(opening.vehicle, opening.id, choice.known, mounts=choice.mounts, sizes=sizes)


def _edges(opening: Opening) -> list[int]:
    """The lengths, in nanometres, at which something changes at an opening."""
    settings = [setting for account in opening.corners["accounts"] for setting in account["settings"]]
    cells = [cell[key] for setting in settings for cell in setting["cells"] for key in ("sure", "least", "most")]
    noes = [at for setting in settings for leaf in setting["leaves"] for no in leaf for at in no.values()]
    return sorted({edge for edge in (*cells, *noes) if edge})


def _size(dice: random.Random, edges: list[int], low: int, high: int) -> Quantity:
    if edges and dice.random() < 0.5:
        near = dice.choice(edges) // 100 * 100 + dice.choice(NUDGES)
        if near > 0:
            return _length(f"{near // 1_000_000}.{near % 1_000_000 // 100:04} mm")
    ways = (
        f"{dice.randint(low, high)} mm",
        f"{dice.randint(low, high)}.{dice.randint(0, 9)} mm",
        f"{dice.randint(low, high)} ± {dice.randint(1, 4)} mm",
        f"{dice.randint(1, 9)} {dice.choice((1, 3, 5, 7))}/8 in",
    )
    return _length(dice.choice(ways))


def _length(text: str) -> Quantity:
    return read_quantity(text, "length")


def typed_words(book: KnowledgeBase, count: int) -> list[str]:
    """What somebody may type: names of the book whole and in part, sizes and noise, in any order."""
    dice = random.Random(20260306)  # noqa: S311 - the same made-up words every time
    return list(islice(_typed(dice, book), count))


def _typed(dice: random.Random, book: KnowledgeBase) -> Iterator[str]:
    names = [" ".join(phrase.words) for phrase in vocabulary(book)]
    cars = [" ".join(phrase.words) for phrase in vocabulary(book) if phrase.points == "vehicle"]
    while True:
        parts = [dice.choice(cars)] if dice.random() < 0.7 else []
        parts += [_part(dice, names) for _ in range(dice.randint(0, 4))]
        dice.shuffle(parts)
        yield dice.choice((" ", "  ", ", ")).join(parts)


def _part(dice: random.Random, names: list[str]) -> str:
    throw = dice.random()
    if throw < 0.4:
        words = dice.choice(names).split()
        some = " ".join(words[: dice.randint(1, len(words))])
        return some.upper() if dice.random() < 0.2 else some
    return dice.choice(SIZES) if throw < 0.85 else dice.choice(NOISE)
