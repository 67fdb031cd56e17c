"""`bezelbook check`: reads the book, and says what is wrong, what cannot both be true and what looks mistyped."""

import argparse
from collections.abc import Mapping
from dataclasses import asdict
from pathlib import Path
from typing import Any

from bezelbook.cli.check_text import text_of
from bezelbook.cli.outcome import ALL_READ, STOP_STANDS, UNREAD, add_book, as_json, as_text, opened
from bezelbook.cli.progress import told_when_slow
from bezelbook.finding import Finding, Sort
from bezelbook.pipeline import Book, from_folder, rule_pages
from bezelbook.publish.findings_log import findings_log


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("check", help="read the book and say what is wrong, contradicted or mistyped")
    add_book(command)
    command.add_argument(
        "--format", choices=("text", "json", "sarif"), default="text", help="how to print (default: text)"
    )
    command.add_argument("--all", action="store_true", help="every gap, not only the twenty that cost most")
    command.add_argument("--strict", action="store_true", help="end with 1 when something says stop")
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Check the book and print what came of it."""
    with told_when_slow(f"Reading and checking {given.book}"):
        book = opened(given.book)
    print(_printed(book, given))
    if book.loaded.complaints:
        return UNREAD
    stops = any(finding.weight == "stop" for finding in book.findings)
    return STOP_STANDS if given.strict and stops else ALL_READ


def _printed(book: Book, given: argparse.Namespace) -> str:
    rules = rule_pages()
    if given.format == "sarif":
        return as_json(_log(book), indent=1)
    sorts = {rule.name: rule.sort for rule in rules}
    return _json(book, sorts) if given.format == "json" else as_text(text_of(book, sorts, every=given.all))


def _json(book: Book, sorts: Mapping[str, Sort]) -> str:
    """Everything, in the order of the list; `rank` is where a finding stands in it and why."""
    findings = [
        _plain(finding) | {"places": book.places_of(finding), "sort": sorts[finding.rule], "rank": _rank(book, at)}
        for at, finding in enumerate(book.findings, 1)
    ]
    complaints = [asdict(complaint) for complaint in book.loaded.complaints]
    told = {"records": len(book.loaded.records), "complaints": complaints, "findings": findings}
    return as_json(told, indent=1)


def _rank(book: Book, at: int) -> dict[str, Any]:
    rank = book.checked.ranks[book.findings[at - 1].key]
    costs = {"answers": rank.answers, "asked": rank.asked, "bay_hours": float(rank.cost)}
    return {"at": at, **costs, "why": rank.words}


def _plain(finding: Finding) -> dict[str, Any]:
    """A finding as plain data, hours as decimal numbers."""
    loss = finding.loss
    hours = {"what": loss.what, "bay_hours": [float(loss.least), float(loss.most)]}
    return asdict(finding) | {"loss": hours}


def _log(book: Book) -> dict[str, Any]:
    """The exchange format; its paths are as the book was named, or from the book's folder when that lies elsewhere."""
    here = not book.folder.is_absolute() and ".." not in book.folder.parts

    def named(place: str) -> str:
        return Path(place).as_posix() if here else from_folder(book.folder, place)

    places = {one.key: [named(place) for place in book.places_of(one)] for one in book.findings}
    why = {key: rank.words for key, rank in book.checked.ranks.items()}
    complaints = [(named(f"{one.path}:{one.line}:{one.column}"), str(one)) for one in book.loaded.complaints]
    return findings_log(rule_pages(), book.findings, places, why, complaints)
