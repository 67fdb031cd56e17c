"""`bezelbook schema`: writes the schema of every kind, or says which of them are out of date."""

import argparse
from pathlib import Path
from typing import Any

from bezelbook.cli.outcome import ALL_READ, STOP_STANDS
from bezelbook.pipeline import every_schema, stale, write_schemas


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("schema", help="write the schema of every kind of record")
    command.add_argument("--out", type=Path, default=Path("schema"), metavar="DIR", help="the folder (default: schema)")
    command.add_argument("--check", action="store_true", help="write nothing; end with 1 when a file is out of date")
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Write the schema files, or compare them."""
    if not given.check:
        write_schemas(given.out, every_schema())
        print(f"The schemas are in {given.out}.")
        return ALL_READ
    old = stale(given.out, every_schema())
    print("\n".join(diff for _, diff in old) if old else f"The schemas in {given.out} are up to date.")
    return STOP_STANDS if old else ALL_READ
