"""`bezelbook pages`: writes every page as a plain file, for any engine that builds sites."""

import argparse
from pathlib import Path
from typing import Any

from bezelbook.cli.outcome import add_book, counted, ending, opened, warn_unread
from bezelbook.cli.progress import told_when_slow
from bezelbook.pipeline import write_pages


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("pages", help="write the pages as plain files")
    add_book(command)
    command.add_argument("--out", type=Path, required=True, metavar="DIR", help="where to write them")
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Write the pages and say how many."""
    with told_when_slow(f"Writing the pages of {given.book}"):
        book = opened(given.book)
        written = write_pages(book, given.out, given.today)
    warn_unread(book)
    print(f"{counted(written, 'file')} written to {given.out}.")
    return ending(book)
