"""`bezelbook site`: builds the site, by handing the book to the publishing engine."""

import argparse
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

from bezelbook.cli.outcome import add_book, ending, opened, warn_unread
from bezelbook.cli.progress import told_when_slow
from bezelbook.values.complaint import Wrong

# Any of these in a folder shows that the engine wrote it.
SITE_HOLDS = ("index.html", "404.html", "assets")


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("site", help="build the site")
    add_book(command)
    command.add_argument(
        "--out", type=Path, default=Path("site"), metavar="DIR", help="where to build it (default: site)"
    )
    command.add_argument(
        "--config", type=Path, default=Path("mkdocs.yml"), metavar="FILE", help="the engine's settings"
    )
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Build the site; it is built without the files that cannot be read, and its home page says so."""
    if not given.config.is_file():
        raise Wrong(
            f"there is no {given.config} here", "Run this where the book's mkdocs.yml is, or name it with --config"
        )
    book = opened(given.book)
    _refuse_to_overwrite(given.out, given.book, given.config)
    warn_unread(book)
    with told_when_slow("Building the site"):
        built = subprocess.run(_engine(given), env=_environment(given), capture_output=True, text=True, check=False)  # noqa: S603 - our own interpreter and module, no shell
    if built.returncode:
        print(built.stdout + built.stderr, file=sys.stderr)
        raise Wrong(
            "the site could not be built: the engine's own words are above", "Mend what they name, then build again"
        )
    print(
        f"The site is in {given.out}. Open {given.out / 'index.html'} in a browser: it needs no server and no network."
    )
    return ending(book)


def _refuse_to_overwrite(out: Path, book: Path, config: Path) -> None:
    """The engine empties the folder that it builds into, so that it must hold nothing but a site, or part of one."""
    kept = (book.resolve(), config.resolve(), Path.cwd())
    around = any(path.is_relative_to(out.resolve()) for path in kept) or out.resolve().is_relative_to(kept[0])
    foreign = out.is_dir() and any(out.iterdir()) and not any((out / name).exists() for name in SITE_HOLDS)
    if around or foreign or out.is_file():
        raise Wrong(
            f"{out} holds something other than a site", "Name a new folder with --out: what is in it is replaced"
        )


def _engine(given: argparse.Namespace) -> list[str]:
    config, out = str(given.config.resolve()), str(given.out.resolve())
    return [sys.executable, "-m", "mkdocs", "build", "--quiet", "--strict", "--config-file", config, "--site-dir", out]


def _environment(given: argparse.Namespace) -> dict[str, str]:
    chosen = {"BEZELBOOK_BOOK": str(given.book.resolve()), "NO_MKDOCS_2_WARNING": "1"}
    return {**os.environ, **chosen, **({"BEZELBOOK_TODAY": given.today} if given.today else {})}
