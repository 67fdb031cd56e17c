"""`bezelbook upgrade`: makes an older book one of the newest format, all of its files or none."""

import argparse
import sys
from pathlib import Path
from typing import Any

from bezelbook.cli.outcome import ALL_READ, UNREAD, book_folder, counted
from bezelbook.cli.progress import told_when_slow
from bezelbook.pipeline import upgrade


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("upgrade", help="bring an older book to the newest format")
    command.add_argument("--book", type=Path, default=Path("kb"), metavar="DIR", help="the book's folder (default: kb)")
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Upgrade the book and say what came of it; when a file stands in the way nothing is written."""
    with told_when_slow(f"Upgrading {given.book}"):
        upgraded = upgrade(book_folder(given.book))
    if upgraded.complaints:
        print("\n".join(map(str, upgraded.complaints)), file=sys.stderr)
        print("Nothing was written.", file=sys.stderr)
        return UNREAD
    if upgraded.was == upgraded.now:
        print(f"The book in {given.book} is of format {upgraded.now}, the newest there is. Nothing was written.")
        return ALL_READ
    print(f"The book in {given.book} was of format {upgraded.was} and is of format {upgraded.now} now.")
    print(f"{counted(upgraded.written, 'file')} written. Look them over, then check the book.")
    return ALL_READ
