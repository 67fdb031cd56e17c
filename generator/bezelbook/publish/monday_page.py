"""The Monday list: what the rules found, put so that a team settles each in under a minute."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.finding import Finding, Quote
from bezelbook.kinds.record import Named
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import MONDAY, Links
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.mentions import place_words
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render
from bezelbook.publish.wording import counted
from bezelbook.values.words import WEIGHTS

ABOUT_WEIGHTS = {
    "stop": "One of these is wrong, and a job may go wrong with it.",
    "look first": "Look before the next job that this touches.",
    "tidy up": "Nothing goes wrong for it today.",
}


@dataclass(frozen=True, slots=True)
class Told:
    """A quote on the list: what the note says, who says it, and where it stands in full; `at` is empty for no note."""

    words: str
    by: str
    at: str


@dataclass(frozen=True, slots=True)
class Card:
    """A finding as the list shows it."""

    finding: Finding
    title: str
    where: str
    where_at: str
    rule_at: str
    told: tuple[Told, ...]


@dataclass(frozen=True, slots=True)
class Group:
    """The findings of one weight."""

    weight: str
    anchor: str
    about: str
    number: str
    cards: tuple[Card, ...]


def monday_page(knowledge: Knowledge) -> SiteFile:
    """Every finding, what stops a job first."""
    groups = [group for weight in WEIGHTS if (group := _group(knowledge, weight)).cards]
    html = render(
        "publish/monday.html",
        groups=groups,
        today=knowledge.today,
        look_next=Links(MONDAY, knowledge.book).top["look_next"],
    )
    return page_file(MONDAY, "Monday list", html)


def _group(knowledge: Knowledge, weight: str) -> Group:
    cards = tuple(_cards(knowledge, weight))
    return Group(weight, weight.replace(" ", "-"), ABOUT_WEIGHTS[weight], counted(len(cards), "question"), cards)


def _cards(knowledge: Knowledge, weight: str) -> Iterator[Card]:
    book, to = knowledge.book, Links(MONDAY, knowledge.book)
    titles = {rule.name: rule.title for rule in knowledge.rules}
    for finding in knowledge.findings:
        if finding.weight == weight:
            yield Card(
                finding,
                titles[finding.rule],
                place_words(book, finding.vehicle, finding.place) if finding.vehicle else "on the bench",
                _where_at(book, finding, to),
                to.rule(finding.rule),
                tuple(_told(book, quote, to) for quote in finding.quotes),
            )


def _where_at(book: KnowledgeBase, finding: Finding, to: Links) -> str:
    if finding.vehicle not in book.vehicles:
        return ""
    listed = finding.place in book.vehicles[finding.vehicle].places
    noted = bool(book.notes_at(finding.vehicle, finding.place))
    return to.place(finding.vehicle, finding.place) if listed or noted else to.vehicle(finding.vehicle)


def _told(book: KnowledgeBase, quote: Quote, to: Links) -> Told:
    record = book.records[quote.kind][quote.id]
    if quote.kind == "note":
        note = book.notes[quote.id]
        return Told(quote.words, f"{note.author or 'not signed'}, {note.date or 'no date'}", to.note(note))
    name = record.name if isinstance(record, Named) else quote.id
    return Told(quote.words, name, to.record(quote.kind, quote.id))
