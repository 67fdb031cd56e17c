"""The pages made of a small book, as a test looks at them."""

from collections.abc import Iterable

from bezelbook.finding import Finding
from bezelbook.kinds.record import Record
from bezelbook.publish.knowledge import Knowledge, RulePage
from bezelbook.publish.page_text import bodies
from bezelbook.publish.pages import site_files
from tests.publish.reading_html import Element, parsed
from tests.reasoning import making

RULE = RulePage(
    "too-much",
    "Too much of it",
    "There is more of it than there is.",
    (
        {
            "name": "too much",
            "expect": "fires",
            "book": {"notes": {"a": {"form": "tried"}}},
            "finds": [{"proposes": "less"}],
        },
        {"name": "nearly", "expect": "silent", "near_miss": True, "book": {"vehicles": {"van": {"name": "van"}}}},
        {"name": "none", "expect": "silent", "book": {}},
    ),
)


def knowledge_about(*records: Record, findings: Iterable[Finding] = (), left_out: tuple[str, ...] = ()) -> Knowledge:
    """What there is to publish of these records, with one rule."""
    found = tuple(findings)
    raised = frozenset(one.key for one in found)
    return Knowledge(making.book(*records), (RULE,), found, left_out, "2026-03-05", raised=raised)


def pages_about(
    *records: Record, findings: Iterable[Finding] = (), left_out: tuple[str, ...] = ()
) -> dict[str, Element]:
    """Every page about these records, by path, well nested."""
    files = site_files(knowledge_about(*records, findings=findings, left_out=left_out))
    return {path: parsed(body) for path, body in bodies(files).items()}
