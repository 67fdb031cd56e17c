"""Lives through made-up shops of four regimes, and tells what the rules made of what is false there."""

from collections.abc import Iterator

from tests.bench.truth.books import REGIMES, judged
from tests.bench.truth.counts import Counts

BOOKS = {"honest": 160, "corrupted": 1200, "running change": 240, "left out": 240}


def counted(seed: str, books: dict[str, int]) -> Counts:
    """So many books of each regime, counted."""
    counts = Counts()
    for regime in REGIMES:
        for number in range(books.get(regime, 0)):
            counts.add(judged(seed, regime, number))
    return counts


def found_out(seed: str) -> Iterator[str]:
    """Everything counted, a line each."""
    books = ", ".join(f"{count} {regime}" for regime, count in BOOKS.items())
    yield f"books                   {books}"
    yield from counted(seed, BOOKS).lines()
