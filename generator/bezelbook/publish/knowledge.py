"""Everything there is to publish: the book, what its rules found, and the files that could not be read."""

from dataclasses import dataclass

from bezelbook.finding import Finding, Rule
from bezelbook.knowledge_base import KnowledgeBase


@dataclass(frozen=True, slots=True)
class Knowledge:
    """A checked book. `left_out` holds the complaints about unreadable files, each as one line for a person."""

    book: KnowledgeBase
    rules: tuple[Rule, ...]
    findings: tuple[Finding, ...]
    left_out: tuple[str, ...]
    today: str
