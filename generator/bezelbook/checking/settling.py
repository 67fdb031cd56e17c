"""The whole check: the book as written, the decisions weighed against it, and the book as it reads with them."""

from collections.abc import Mapping
from dataclasses import dataclass

from bezelbook.checking.ranking import Rank, in_order, ranks
from bezelbook.checking.run import Kept, rules, run_rule, run_rules
from bezelbook.finding import DecisionScope, Finding
from bezelbook.kinds.decision.record import Decision
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.decided import decided, says_the_same


@dataclass(frozen=True, slots=True)
class Checked:
    """What was found, heaviest first, the book as it reads once decisions act, and what to keep for the next time.

    `raised` are the questions of the book as written, by key: what can be decided. `ranks` says by key why a finding
    stands where it stands in the list.
    """

    findings: tuple[Finding, ...]
    raised: Mapping[str, Finding]
    book: KnowledgeBase
    kept: Kept
    ranks: Mapping[str, Rank]


def check(book: KnowledgeBase, kept: Kept | None = None) -> Checked:
    """Check a book twice: as written, which is what decisions are weighed against, and with those that hold acting.

    A decision holds while its question is still raised and the notes it weighed still say what they said. What was
    kept from an earlier check saves work and changes nothing.
    """
    written = run_rules(book, kept or {})
    raised = _by_key(written)
    changed = {one.id: _changed(one, raised.get(one.question)) for one in book.decisions.values()}
    holding = [one for one in book.decisions.values() if one.question in raised and not changed[one.id]]
    reads = decided(book, holding)
    read = run_rules(reads, {**(kept or {}), **written}) if holding else written
    left = _by_key(read)
    scopes = [
        DecisionScope(one, raised.get(one.question), left.get(one.question), changed[one.id], book.newest_day)
        for one in book.decisions.values()
    ]
    told = {one.question for one in holding if one.decided == "no problem"}
    about: list[Finding] = []
    for scope in scopes:
        found = _about(scope)
        about += found
        if any(_same(finding, left.get(scope.decision.question)) for finding in found):
            told.add(scope.decision.question)
    open_ones = [finding for key, finding in left.items() if key not in told]
    ranked = ranks(reads, [*open_ones, *about])
    return Checked(in_order([*open_ones, *about], ranked), raised, reads, {**written, **read}, ranked)


def _by_key(kept: Kept) -> Mapping[str, Finding]:
    return {finding.key: finding for findings in kept.values() for finding in findings}


def _changed(decision: Decision, finding: Finding | None) -> tuple[str, ...]:
    """The notes that a decision weighed and that say something else now than they said then."""
    now = {quote.id: quote.words for quote in finding.quotes if quote.kind == "note"} if finding else {}
    return tuple(
        weighed.note
        for weighed in decision.notes
        if weighed.said and weighed.note in now and not says_the_same(weighed.said, now[weighed.note])
    )


def _about(scope: DecisionScope) -> list[Finding]:
    return [finding for rule in rules() if rule.scope is DecisionScope for finding in run_rule(rule, scope)]


def _same(about: Finding, clash: Finding | None) -> bool:
    """Whether what is said of a decision quotes all of the clash that it was about, so that one of them is enough."""
    return clash is not None and set(clash.quotes) <= set(about.quotes)
