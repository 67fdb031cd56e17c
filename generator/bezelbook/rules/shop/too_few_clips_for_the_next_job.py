"""Fewer clips of a kind lie on the shelf than the next job that takes them off is likely to want."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.finding import BookScope, Finding, Quote, Rule
from bezelbook.kinds.job.record import Job
from bezelbook.kinds.stock.record import Stock
from bezelbook.kinds.supply.record import Supply
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.counts.fixing import is_clip
from bezelbook.reasoning.counts.lost import standing, tallies
from bezelbook.reasoning.counts.packs import Packs, packs
from bezelbook.reasoning.counts.shelf import shelf
from bezelbook.reasoning.counts.to_come import wanted
from bezelbook.reasoning.losses import CLIPS_GONE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import counted, listed

SHOWN = 3


@dataclass(frozen=True, slots=True)
class _Short:
    clip: Supply
    need: int
    lie: int
    order: Packs
    row: Stock


def check(scope: BookScope) -> Iterator[Finding]:
    """One finding a job to come, for every kind of clip that it is the next to take off and that is counted short."""
    book, today = scope.book, scope.book.newest_day or ""
    short: dict[str, list[_Short]] = {}
    for kind, jobs in wanted(book, tallies(book, standing(book)), today).items():
        need = jobs[0].count
        if need is not None and kind in book.supplies and is_clip(book, kind):
            short.setdefault(jobs[0].job.id, []).extend(_short(book, kind, need, today))
    for job, clips in sorted(short.items()):
        if clips:
            yield _finding(book.jobs[job], clips)


def _short(book: KnowledgeBase, kind: str, need: int, today: str) -> Iterator[_Short]:
    """Nothing where nobody counted what lies there: that the order list asks for itself."""
    clip, lies = book.supplies[kind], shelf(book, kind, today).count
    if lies is not None and lies < need:
        row = next(stock for stock in book.shelf.values() if stock.thing == kind)
        yield _Short(clip, need, lies, packs(need, lies, clip.pack), row)


def _finding(job: Job, clips: list[_Short]) -> Finding:
    each = [f"{one.need} {one.clip.name} ({one.lie} lie there)" for one in clips[:SHOWN]]
    more = [counted(clips[SHOWN:], "more kind")] if len(clips) > SHOWN else []
    orders = listed([_order(one) for one in clips[:SHOWN]])
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{job.id}",
        weight="look first",
        says=f"{job.tag} is likely to want {listed([*each, *more])}",
        quotes=(
            Quote(job.id, f"{job.tag}: {job.day or 'no day yet'}", ("wishes",), "job"),
            *(Quote(one.row.id, f"{one.clip.name}: {one.row.count}", ("count",), "stock") for one in clips[:SHOWN]),
        ),
        difference="what lies on the shelf",
        proposals=(Proposal("scope", f"order {orders} before that day"), Proposal("scope", "count the shelf again")),
        loss=CLIPS_GONE,
        question="Are there enough?",
        answers=("ordered", "counted again: enough", "that job does without"),
        vehicle=job.vehicle,
    )


def _order(one: _Short) -> str:
    if one.order.packs is None:
        return f"{one.order.short} {one.clip.name}"
    return f"{one.order.packs} {'pack' if one.order.packs == 1 else 'packs'} of {one.order.pack} {one.clip.name}"


RULE = Rule("too-few-clips-for-the-next-job", "Too few clips for the next job", "gap", __doc__ or "", BookScope, check)
