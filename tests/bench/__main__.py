"""Prints how long reading, checking and answering take, against a bare YAML parse of the same bytes in the same run."""

import tempfile
import time
from collections.abc import Callable
from pathlib import Path

import yaml

from bezelbook.pipeline import Counter, open_book
from bezelbook.store.book import load_book
from tests.bench.made_up_book import write_book

NOTES = 2000
RUNS = 5
LATE = {"build": "late"}


def main() -> None:
    """Measure on a made-up book and print one line each."""
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
    main()
