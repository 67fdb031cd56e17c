"""`bezelbook check`: reads the book, and says what is wrong, what cannot both be true and what looks mistyped."""

import argparse
from dataclasses import asdict
from typing import Any

from bezelbook.cli.outcome import ALL_READ, STOP_STANDS, UNREAD, add_book, add_format, as_json, counted, opened
from bezelbook.cli.progress import told_when_slow
from bezelbook.finding import Finding
from bezelbook.pipeline import Book
from bezelbook.publish.mentions import place_words


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("check", help="read the book and say what is wrong, contradicted or mistyped")
    add_book(command)
    add_format(command)
    command.add_argument("--strict", action="store_true", help="end with 1 when something says stop")
    command.set_defaults(run=run)


def run(given: argparse.Namespace) -> int:
    """Check the book and print what came of it."""
    with told_when_slow(f"Reading and checking {given.book}"):
        book = opened(given.book)
    print(_json(book) if given.format == "json" else "\n".join(_text(book)))
    if book.loaded.complaints:
        return UNREAD
    stops = any(finding.weight == "stop" for finding in book.findings)
    return STOP_STANDS if given.strict and stops else ALL_READ


def _text(book: Book) -> list[str]:
    lines = [str(complaint) for complaint in book.loaded.complaints]
    for finding in book.findings:
        lines += ["", *_finding(book, finding)] if lines else _finding(book, finding)
    read = counted(len(book.loaded.records), "record")
    left_out = len({complaint.path for complaint in book.loaded.complaints})
    unread = f", {counted(left_out, 'file')} left out" if left_out else ""
    return [*lines, *([""] if lines else []), f"{read} read{unread}; {counted(len(book.findings), 'finding')}."]


def _finding(book: Book, finding: Finding) -> list[str]:
    quotes = zip(book.places_of(finding), finding.quotes, strict=True)
    where = f"{place_words(book.base, finding.vehicle, finding.place)}: " if finding.vehicle else ""
    return [
        f"{finding.weight}: {where}{finding.says} ({finding.rule})",
        *(f"  {place}: {quote.words}" for place, quote in quotes),
        *(f"  perhaps {proposal.words}" for proposal in finding.proposals),
        f"  {finding.question} {' / '.join(finding.answers)}",
        f"  costs {finding.loss.words}",
    ]


def _json(book: Book) -> str:
    findings = [_plain(finding) | {"places": book.places_of(finding)} for finding in book.findings]
    complaints = [asdict(complaint) for complaint in book.loaded.complaints]
    told = {"records": len(book.loaded.records), "complaints": complaints, "findings": findings}
    return as_json(told, indent=1)


def _plain(finding: Finding) -> dict[str, Any]:
    """A finding as plain data, hours as decimal numbers."""
    loss = finding.loss
    hours = {"what": loss.what, "bay_hours": [float(loss.least), float(loss.most)]}
    return asdict(finding) | {"loss": hours}
