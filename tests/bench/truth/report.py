"""Lives through made-up shops of four regimes, and tells what the rules made of what is false there."""

from collections.abc import Iterator, Mapping
from concurrent.futures import ProcessPoolExecutor
from itertools import repeat

from tests.bench.truth.books import REGIMES, judged
from tests.bench.truth.counts import Counts

BOOKS = {"honest": 240, "corrupted": 2400, "running change": 320, "left out": 320}
# So many books are handed to a process at once.
AT_ONCE, PROCESSES = 8, 2


def counted(seed: str, books: Mapping[str, int], processes: int = PROCESSES) -> Counts:
    """So many books of each regime, counted; the same however many processes do it."""
    counts = Counts()
    which = [(regime, number) for regime in REGIMES for number in range(books.get(regime, 0))]
    with ProcessPoolExecutor(processes) as pool:
        for found in pool.map(_counted, repeat(seed), *zip(*which, strict=True), chunksize=AT_ONCE):
            counts.take_in(found)
    return counts


def _counted(seed: str, regime: str, number: int) -> Counts:
    """One book, counted."""
    counts = Counts()
    counts.add(judged(seed, regime, number))
    return counts


def found_out(seed: str) -> Iterator[str]:
    """Everything counted, a line each."""
    books = ", ".join(f"{count} {regime}" for regime, count in BOOKS.items())
    yield f"books                   {books}"
    yield from counted(seed, BOOKS).lines()
