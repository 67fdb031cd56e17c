"""The Monday list: what the rules found, put so that a team settles each in under a minute."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import repeat

from bezelbook.finding import Finding, Quote
from bezelbook.kinds.record import Named
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import MONDAY, Links, finding_anchor
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.mentions import place_words
from bezelbook.publish.notes import said
from bezelbook.publish.page_text import page_file
from bezelbook.publish.settle_lines import Way, likeliest, ways_to_settle
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
    """A quote on the list: what a record says, which, by whom and how sure, where it is in full, and in which file."""

    words: str
    name: str
    by: str
    at: str
    file: str


@dataclass(frozen=True, slots=True)
class Card:
    """A finding as the list shows it: the likeliest way to settle it, and the other ways."""

    finding: Finding
    anchor: str
    title: str
    where: str
    where_at: str
    rule_at: str
    told: tuple[Told, ...]
    others: tuple[str, ...]
    why: str
    likely: Way | None
    ways: tuple[Way, ...]


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
    for number, finding in enumerate(knowledge.findings, 1):
        if finding.weight == weight:
            yield _card(knowledge, finding, finding_anchor(number))


def _card(knowledge: Knowledge, finding: Finding, anchor: str) -> Card:
    book, to = knowledge.book, Links(MONDAY, knowledge.book)
    rule = next(rule for rule in knowledge.rules if rule.name == finding.rule)
    ways = ways_to_settle(book, finding, rule.sort) if finding.key in knowledge.raised else ()
    likely = likeliest(ways)
    files = knowledge.places.get(finding.key, ())
    return Card(
        finding,
        anchor,
        rule.title,
        where_words(book, finding),
        _where_at(book, finding, to),
        to.rule(finding.rule),
        tuple(_told(book, quote, file, to) for quote, file in zip(finding.quotes, files or repeat(""), strict=False)),
        tuple(one.words for one in finding.proposals if one.words != finding.difference),
        knowledge.why.get(finding.key, ""),
        likely,
        tuple(way for way in ways if way != likely),
    )


def where_words(book: KnowledgeBase, finding: Finding) -> str:
    """Where a finding is, by the shop's names."""
    return place_words(book, finding.vehicle, finding.place) if finding.vehicle else "on the bench"


def _where_at(book: KnowledgeBase, finding: Finding, to: Links) -> str:
    if finding.vehicle not in book.vehicles:
        return ""
    listed = finding.place in book.vehicles[finding.vehicle].places
    noted = bool(book.notes_at(finding.vehicle, finding.place))
    return to.place(finding.vehicle, finding.place) if listed or noted else to.vehicle(finding.vehicle)


def _told(book: KnowledgeBase, quote: Quote, file: str, to: Links) -> Told:
    line = file.rpartition(":")[0]
    if quote.kind == "note":
        note = said(book, book.notes[quote.id])
        return Told(quote.words, quote.id, f"{note.by} · {note.sure}", to.note(note.note), line)
    record = book.records[quote.kind][quote.id]
    name = record.name if isinstance(record, Named) else quote.id
    return Told(quote.words, name, "its record", to.record(quote.kind, quote.id), line)
