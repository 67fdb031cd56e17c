"""How the book checks itself: a page a rule, made of the rule's own sentence and of the cases it is tested with."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from bezelbook.publish.address import CHECKS, Links, rule_page
from bezelbook.publish.knowledge import Knowledge, RulePage
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render
from bezelbook.publish.typed import Line, flow
from bezelbook.publish.wording import counted


@dataclass(frozen=True, slots=True)
class Case:
    """A case of a rule: what it is about, the notes in it, and the rest of its little book, each record by its id."""

    name: str
    notes: tuple[Line, ...]
    rest: tuple[Line, ...]
    proposes: tuple[str, ...]


def check_pages(knowledge: Knowledge) -> Iterator[SiteFile]:
    """The list of the rules, and a page for each."""
    to = Links(CHECKS, knowledge.book)
    rules = [(rule, to.rule(rule.name), counted(_found(knowledge, rule), "question")) for rule in knowledge.rules]
    html = render("publish/checks.html", rules=rules, monday=to.top["monday"])
    yield page_file(CHECKS, "How the book checks itself", html)
    for rule in knowledge.rules:
        yield _rule(knowledge, rule)


def _found(knowledge: Knowledge, rule: RulePage) -> int:
    return sum(finding.rule == rule.name for finding in knowledge.findings)


def _rule(knowledge: Knowledge, rule: RulePage) -> SiteFile:
    to = Links(rule_page(rule.name), knowledge.book)
    html = render(
        "publish/check.html",
        rule=rule,
        fires=[_case(case) for case in rule.cases if case["expect"] == "fires"],
        silent=[_case(case) for case in rule.cases if case["expect"] == "silent" and not case.get("near_miss")],
        near=[_case(case) for case in rule.cases if case.get("near_miss")],
        found=counted(_found(knowledge, rule), "question"),
        to=to,
    )
    return page_file(to.page, rule.title, html)


def _case(case: Mapping[str, Any]) -> Case:
    book: Mapping[str, Any] = case["book"]
    proposes = tuple(found["proposes"] for found in case.get("finds", ()) if "proposes" in found)
    rest = (line for kind, records in book.items() if kind != "notes" for line in _records(records))
    return Case(case["name"], tuple(_records(book.get("notes", {}))), tuple(rest), proposes)


def _records(records: Mapping[str, Any]) -> Iterator[Line]:
    for id_, record in records.items():
        yield Line(id_, (flow(record) if isinstance(record, Mapping) else str(record),))
