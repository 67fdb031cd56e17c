"""How a command ends: its exit codes, what every command takes, and plain words on the way out."""

import argparse
import json
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from bezelbook.pipeline import Book, open_book
from bezelbook.publish.shown import shown
from bezelbook.values.complaint import Wrong
from bezelbook.values.day import day_complaint
from bezelbook.values.withheld import withheld

ALL_READ = 0
STOP_STANDS = 1
UNREAD = 2
WRONG_USE = 3
# The folder of the book where nobody names another.
USUAL_BOOK = "kb"


BOOK_HELP = f"the book's folder (default: {USUAL_BOOK})"


def add_book(command: argparse.ArgumentParser) -> None:
    """Every command takes the book's folder, and the day that counts as today."""
    command.add_argument("--book", type=Path, default=Path(USUAL_BOOK), metavar="DIR", help=BOOK_HELP)
    command.add_argument(
        "--today", type=_day, metavar="YYYY-MM-DD", help="the book's date (default: that of its newest note)"
    )


def _day(text: str) -> str:
    wrong = day_complaint(text)
    if wrong:
        raise argparse.ArgumentTypeError(f"{wrong.what}. {wrong.mend}")
    return text


def add_format(command: argparse.ArgumentParser) -> None:
    """A command whose output a program may read offers it as JSON."""
    command.add_argument("--format", choices=("text", "json"), default="text", help="how to print (default: text)")


def opened(folder: Path) -> Book:
    """The book in a folder, read and checked; raises Wrong when there is no such folder."""
    return open_book(book_folder(folder))


def book_folder(folder: Path) -> Path:
    """The folder of a book; raises Wrong when there is none."""
    if not folder.is_dir():
        raise Wrong(f"there is no book in {folder}", "Start one with bezelbook start, or name it with --book")
    return folder


def ending(book: Book) -> int:
    """The exit code that tells whether every file of the book was read."""
    return UNREAD if book.loaded.complaints else ALL_READ


def warn_unread(book: Book) -> None:
    """Say on the side how many complaints there are, when a command goes on without the files they are about."""
    if book.loaded.complaints:
        print(
            f"{counted(len(book.loaded.complaints), 'complaint')}: some files could not be read and are left out. "
            "bezelbook check names them.",
            file=sys.stderr,
        )


def fail(message: str) -> int:
    """Say what was wrong with the call and give its exit code."""
    print(withheld(f"bezelbook: {message}"), file=sys.stderr)
    return WRONG_USE


def as_text(lines: Iterable[str]) -> str:
    """Lines for a person, as they may be shown."""
    return "\n".join(map(withheld, lines))


def as_json(data: Any, indent: int | None = None) -> str:
    """Data for a program, as it may be shown; signs that could not be sent to whoever reads it are spelled as codes."""
    data = shown(data)
    text = json.dumps(data, ensure_ascii=False, indent=indent)
    try:
        text.encode(sys.stdout.encoding or "utf-8")
    except UnicodeEncodeError:
        return json.dumps(data, indent=indent)
    return text


def counted(number: int, thing: str) -> str:
    """`1 note`, `2 notes`."""
    return f"{number} {thing}" if number == 1 else f"{number} {thing}s"
