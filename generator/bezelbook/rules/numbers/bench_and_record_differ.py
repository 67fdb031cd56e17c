"""A size on a record and a bench note of the same size cannot both be true."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.note.record import Bench
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import BOUGHT_TWICE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.quantity import Quantity


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding for each size of a part that a bench note reads further off than both ± together."""
    told: set[str] = set()
    for note in unreplaced(scope.book.bench_notes(scope.part.id)):
        for index, reading in enumerate(note.readings):
            size = getattr(scope.part, reading.of, None)
            if isinstance(size, Quantity) and reading.of not in told and _apart(scope.book, size, reading.reads):
                told.add(reading.of)
                yield _finding(scope, note, index, size)


def _apart(book: KnowledgeBase, size: Quantity, read: Quantity) -> bool:
    """Whether they are further apart than their ±; the house's where none was typed, and half a mm for print."""
    if size.dimension != read.dimension or size.dimension != "length":
        return False
    tools = book.shop.tools
    ours = tools.bench_caliper.base if size.by == "caliper" else tools.none.base
    give = (ours if size.give is None else size.give) + (tools.none.base if read.give is None else read.give)
    return abs(size.base - read.base) >= give


def _why(size: Quantity, read: Quantity, field: str) -> str:
    """What most likely happened, from how the two stand to each other."""
    if field == "free_thickness" and 50 * size.base <= 100 * read.base <= 70 * size.base:
        return "the one on the bench was squeezed; free thickness is with nothing pressing on it"
    if size.by != "caliper":
        return "what is printed leaves out studs or a flange: the caliper stands"
    return "one of the two was read wrong, or it is another part of the same name"


def _finding(scope: PartScope, note: Bench, index: int, size: Quantity) -> Finding:
    reading, part, kind = note.readings[index], scope.part, scope.kind
    bench = Quote(note.id, f"{reading.of} {reading.reads.typed}", ("readings", index, "reads"))
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.kind}/{scope.part.id}/{reading.of}",
        weight="look first",
        says=f"{reading.of} of {part.id}: {size.typed} on its record, {reading.reads.typed} on the bench",
        quotes=(bench, Quote(part.id, f"{reading.of} {size.typed}", (reading.of,), kind)),
        difference="the record, or the bench",
        proposals=(Proposal("tool", _why(size, reading.reads, reading.of)),),
        loss=BOUGHT_TWICE,
        question="Which of the two is it?",
        answers=("the bench", "the record", "two different parts", "put it on the bench again"),
    )


RULE = Rule("bench-and-record-differ", "The bench says otherwise", "conflict", __doc__ or "", PartScope, check)
