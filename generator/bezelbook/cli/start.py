"""`bezelbook start`: lays out an empty book for a shop."""

import argparse
from pathlib import Path
from typing import Any

from bezelbook.cli.outcome import ALL_READ, counted
from bezelbook.pipeline import write_new_book


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("start", help="lay out an empty book in a new folder")
    command.add_argument("folder", type=Path, metavar="DIR", help="a new or empty folder")
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Write the files and say what to do next."""
    written = write_new_book(given.folder)
    print(f"{counted(len(written), 'file')} written to {given.folder}. Write the shop's name into kb/shop.yaml, then:")
    print(f"  cd {given.folder}")
    print("  bezelbook check")
    print("  bezelbook site")
    return ALL_READ
