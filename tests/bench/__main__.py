"""Prints how long things take, as ratios, whether any firm answer was wrong, what the rules find, what looks pay."""

import random
import sys
import tempfile
import time
from collections.abc import Callable, Generator
from itertools import chain
from pathlib import Path

import yaml

from bezelbook.pipeline import Counter, open_book
from bezelbook.store.book import load_book
from tests.bench.honest_shops import lived_through
from tests.bench.looking.report import looked
from tests.bench.made_up_book import write_book
from tests.bench.small_worlds import share_settled
from tests.bench.truth.report import found_out

NOTES = 2000
RUNS = 5
LATE = {"build": "late"}


def main() -> int:
    """Measure speeds, live through small worlds and made-up shops, print a few lines each; 1 if an answer is wrong."""
    seed = sys.argv[1] if len(sys.argv) > 1 else str(random.SystemRandom().randrange(10**6, 10**9))
    print(f"seed {seed}; the same again with: make bench SEED={seed}")
    speeds()
    wrong = printed(share_settled(int(seed))) + printed(lived_through(seed))
    for line in chain(found_out(seed), looked(seed)):
        print(line, flush=True)
    return ended(wrong)


def printed(lines: Generator[str, None, int]) -> int:
    """Print lines as they come, and hand on what they come to."""
    while True:
        try:
            print(next(lines), flush=True)
        except StopIteration as end:
            return int(end.value)


def ended(wrong: int) -> int:
    """Say in one line whether a firm answer was wrong where no note was false; 1 if any was, for the shell."""
    if wrong:
        print(f"firm answers that are wrong though no note is false: {wrong}, told above", file=sys.stderr)
        return 1
    print("no firm answer is wrong where no note is false")
    return 0


def speeds() -> None:
    """Time reading, checking and answering against a bare YAML parse of the same bytes in the same run."""
    with tempfile.TemporaryDirectory() as folder:
        book = Path(folder) / "kb"
        write_book(book, NOTES)
        texts = [path.read_bytes() for path in sorted(book.rglob("*.yaml"))]
        opened = open_book(book)
        questions = [
            {"vehicle": f"vehicle-{number}", "place": "dash", "splits": LATE, "what": f"unit-{number % 20}"}
            for number in range(50)
        ]
        bare = best(lambda: [yaml.load(text, Loader=yaml.CSafeLoader) for text in texts])
        print(f"{len(texts)} files; every figure is the fastest of {RUNS}, over a bare parse of the same bytes")
        print(f"read and validate       {best(lambda: load_book(book)) / bare:5.2f} x")
        print(f"read, validate, check   {best(lambda: open_book(book)) / bare:5.2f} x")
        print(f"the same, nothing new   {best(lambda: open_book(book, opened.checked.kept)) / bare:5.2f} x")
        answering = best(lambda: [Counter(opened.base).ask(question) for question in questions]) / len(questions)
        print(f"one answer              {answering / bare:7.4f} x")


def best(work: Callable[[], object]) -> float:
    """The seconds of the fastest run."""
    seconds = []
    for _ in range(RUNS):
        start = time.perf_counter()
        work()
        seconds.append(time.perf_counter() - start)
    return min(seconds)


if __name__ == "__main__":
    sys.exit(main())
