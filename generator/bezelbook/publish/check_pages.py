"""How the book checks itself: a page a rule, made of the rule's own sentence and of the cases it is tested with."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from itertools import groupby
from typing import Any

from bezelbook.finding import Sort
from bezelbook.publish.address import CHECKS, Links, rule_page
from bezelbook.publish.knowledge import Knowledge, RulePage
from bezelbook.publish.monday_page import where_words
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render
from bezelbook.publish.typed import Line, flow
from bezelbook.publish.wording import counted

ABOUT_SORTS: Mapping[Sort, str] = {"conflict": "cannot all be true", "slip": "looks mistyped", "gap": "nobody looked"}
SORTS = tuple(ABOUT_SORTS)


@dataclass(frozen=True, slots=True)
class Case:
    """A case of a rule: what it is about, the notes in it, and the rest of its little book, each record by its id."""

    name: str
    notes: tuple[Line, ...]
    rest: tuple[Line, ...]
    proposes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Found:
    """A finding as its rule's page names it: where, what, and where it is on the Monday list."""

    where: str
    says: str
    at: str


def check_pages(knowledge: Knowledge) -> Iterator[SiteFile]:
    """The list of the rules, and a page for each."""
    to = Links(CHECKS, knowledge.book)
    groups = [(about, *_group(knowledge, rules, to)) for about, rules in _grouped(knowledge.rules)]
    all_told = counted(len(knowledge.findings), "question")
    html = render("publish/checks.html", groups=groups, monday=to.top["monday"], all_told=all_told)
    yield page_file(CHECKS, "How the book checks itself", html)
    for rule in knowledge.rules:
        yield _rule(knowledge, rule)


def _grouped(rules: Iterable[RulePage]) -> Iterator[tuple[str, list[RulePage]]]:
    """The rules by what they are about, in order of the groups' names."""
    in_order = sorted(rules, key=lambda rule: (rule.group, SORTS.index(rule.sort), rule.title))
    for _, group in groupby(in_order, key=lambda rule: rule.group):
        fellows = list(group)
        yield fellows[0].about.partition(":")[0].rstrip(".") or "The book", fellows


def _group(
    knowledge: Knowledge, rules: Iterable[RulePage], to: Links
) -> tuple[str, list[tuple[RulePage, str, str, str]]]:
    """What the rules of a group find now all told, and a line for each."""
    fellows = list(rules)
    found = sum(_found(knowledge, rule) for rule in fellows)
    return _now(found) or "nothing now", [_line(knowledge, rule, to) for rule in fellows]


def _now(found: int) -> str:
    return f"{counted(found, 'question')} now" if found else ""


def _line(knowledge: Knowledge, rule: RulePage, to: Links) -> tuple[RulePage, str, str, str]:
    """A rule as the list has it: where its page is, what sort of fault it finds, and how many there are now."""
    return rule, to.rule(rule.name), ABOUT_SORTS[rule.sort], _now(_found(knowledge, rule))


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
        number=counted(_found(knowledge, rule), "question"),
        sort=ABOUT_SORTS[rule.sort],
        found=list(_findings(knowledge, rule, to)),
        to=to,
    )
    return page_file(to.page, rule.title, html)


def _findings(knowledge: Knowledge, rule: RulePage, to: Links) -> Iterator[Found]:
    """What the rule finds now, in the order of the Monday list."""
    for number, finding in enumerate(knowledge.findings, 1):
        if finding.rule == rule.name:
            yield Found(where_words(knowledge.book, finding), finding.says, to.finding(number))


def _case(case: Mapping[str, Any]) -> Case:
    book: Mapping[str, Any] = case["book"]
    proposes = tuple(found["proposes"] for found in case.get("finds", ()) if "proposes" in found)
    rest = (line for kind, records in book.items() if kind != "notes" for line in _records(records))
    return Case(case["name"], tuple(_records(book.get("notes", {}))), tuple(rest), proposes)


def _records(records: Mapping[str, Any]) -> Iterator[Line]:
    for id_, record in records.items():
        yield Line(id_, (flow(record) if isinstance(record, Mapping) else str(record),))
