"""The bezelbook command: reads its arguments, calls the pipeline, says what came of it."""

import argparse
import os
import sys
from collections.abc import Sequence
from io import TextIOWrapper

from bezelbook.cli import ask, check, decide, pages, schema, site, start, upgrade
from bezelbook.cli.outcome import WRONG_USE, fail
from bezelbook.values.complaint import Wrong

COMMANDS = (check, ask, decide, pages, schema, site, start, upgrade)


class _Parser(argparse.ArgumentParser):
    """A parser whose complaints are in plain words and whose exit code is that of wrong use."""

    def error(self, message: str) -> None:  # type: ignore[override]
        self.print_usage(sys.stderr)
        self.exit(WRONG_USE, f"bezelbook: {message}. bezelbook --help lists what there is.\n")


def parser() -> argparse.ArgumentParser:
    """The command's arguments, a subcommand for each file of this package that is one."""
    whole = _Parser(prog="bezelbook", description="A vehicle-audio shop's parts-compatibility book.")
    commands = whole.add_subparsers(dest="command", required=True, metavar="COMMAND", parser_class=_Parser)
    for command in COMMANDS:
        command.add_to(commands)
    return whole


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command. Exit codes: 0 every file was read; 1 a stop stands and --strict; 2 unread files; 3 wrong use."""
    if isinstance(sys.stdout, TextIOWrapper):
        # A terminal that lacks a sign shows its code instead.
        sys.stdout.reconfigure(errors="backslashreplace")
    try:
        given = parser().parse_args(arguments)
        code: int = given.run(given)
        sys.stdout.flush()
    except Wrong as wrong:
        return fail(str(wrong))
    except BrokenPipeError:
        # Whoever read our output has seen enough; what is left of it goes nowhere.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except OSError as error:
        return fail(f"{error.filename or 'a file'}: {error.strerror}. See that it can be read or written there.")
    return code
