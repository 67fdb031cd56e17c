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

# What a team gets through in twenty minutes (common practice, no source).
MOST = 20
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
    why: str
    settle: str


@dataclass(frozen=True, slots=True)
class Group:
    """The findings of one weight: those that a team has time for, and how many are folded behind them."""

    weight: str
    anchor: str
    about: str
    number: str
    cards: tuple[Card, ...]
    folded: tuple[Card, ...]
    more: str


def monday_page(knowledge: Knowledge) -> SiteFile:
    """Every finding, what stops a job first; what a team has no time for on one Monday is folded."""
    groups: list[Group] = []
    left = MOST
    for weight in WEIGHTS:
        cards = tuple(_cards(knowledge, weight))
        if cards:
            groups.append(_group(weight, cards, left))
            left = max(0, left - len(cards))
    html = render(
        "publish/monday.html",
        groups=groups,
        today=knowledge.today,
        look_next=Links(MONDAY, knowledge.book).top["look_next"],
    )
    return page_file(MONDAY, "Monday list", html)


def _group(weight: str, cards: tuple[Card, ...], most: int) -> Group:
    number = counted(len(cards), "question")
    more = f"{counted(len(cards) - most, 'question')} more, each costing less" if len(cards) > most else ""
    return Group(weight, weight.replace(" ", "-"), ABOUT_WEIGHTS[weight], number, cards[:most], cards[most:], more)


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
                knowledge.why.get(finding.key, ""),
                f'bezelbook decide "{finding.key}"',
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
