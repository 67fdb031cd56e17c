"""`bezelbook ask`: answers one question in words, or a file of questions, one a line."""

import argparse
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from bezelbook.cli.answer_text import answer_lines, choice_lines
from bezelbook.cli.outcome import WRONG_USE, add_book, add_format, as_json, as_text, ending, opened, warn_unread
from bezelbook.cli.progress import told_when_slow
from bezelbook.cli.wiring_text import wiring_lines
from bezelbook.pipeline import Choice, Counter, WiringAnswer
from bezelbook.values.complaint import Wrong


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("ask", help="answer whether a thing goes in")
    add_book(command)
    add_format(command)
    command.add_argument("words", nargs="*", metavar="WORDS", help="the question, such as: hatch 2 dash 165 deep")
    command.add_argument(
        "--batch", type=Path, metavar="FILE.jsonl", help="a question a line as JSON; - reads them from stdin"
    )
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Answer and print; the exit code tells whether every file of the book was read."""
    if bool(given.words) == bool(given.batch):
        raise Wrong("ask takes a question in words, or --batch and a file", "Try: bezelbook ask hatch 2 dash 165 deep")
    with told_when_slow(f"Reading {given.book}"):
        book = opened(given.book)
    warn_unread(book)
    counter = Counter(book.base)
    if given.batch:
        return _batch(counter, given.batch) or ending(book)
    _one(counter, " ".join(given.words), given.format)
    return ending(book)


def _one(counter: Counter, words: str, form: str) -> None:
    if form == "json":
        print(as_json(counter.ask({"words": words}), indent=1))
        return
    found, took = counter.ask_words(words)
    print(as_text([*took, *_lines_of(found)]))


def _lines_of(found: Any) -> Iterable[str]:
    if isinstance(found, Choice):
        return choice_lines(found)
    return wiring_lines(found.plain()) if isinstance(found, WiringAnswer) else answer_lines(found.plain())


def _batch(counter: Counter, path: Path) -> int:
    code = 0
    for found in counter.batch(_lines(path)):
        print(as_json(found), flush=True)
        code = WRONG_USE if "wrong" in found else code
    return code


def _lines(path: Path) -> Iterable[bytes]:
    if str(path) == "-":
        return sys.stdin.buffer
    try:
        return path.read_bytes().splitlines()
    except OSError as error:
        raise Wrong(f"{path} cannot be read: {error.strerror}", "Name a text file with one question a line") from error
