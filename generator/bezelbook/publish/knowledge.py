"""Everything there is to publish: the book, what its rules found, and the files that could not be read."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from bezelbook.finding import Finding, Sort
from bezelbook.knowledge_base import KnowledgeBase


@dataclass(frozen=True, slots=True)
class RulePage:
    """What a page tells of a rule: its name, its heading, its one sentence, and its cases as plain data.

    `group` is the folder it lies in and `about` what that folder is about.
    """

    name: str
    title: str
    says: str
    cases: tuple[Mapping[str, Any], ...]
    sort: Sort = "conflict"
    group: str = "book"
    about: str = ""


@dataclass(frozen=True, slots=True)
class Knowledge:
    """A checked book. `left_out` holds the complaints about unreadable files, each as one line for a person.

    `examples` has for each kind, by its name, the name and the text of every file that shows how to write one.
    `why` says of each finding, by its key, why it stands where it stands in the list, and `places` where its quotes
    stand, each as path:line:column with a path that begins with the name of the book's folder.
    `raised` are the keys of the findings that a decision can be about.
    `today` is the book's own date, that of its newest note unless another was given; no page holds any other.
    """

    book: KnowledgeBase
    rules: tuple[RulePage, ...]
    findings: tuple[Finding, ...]
    left_out: tuple[str, ...]
    today: str
    examples: Mapping[str, tuple[tuple[str, str], ...]] = field(default_factory=dict)
    why: Mapping[str, str] = field(default_factory=dict)
    places: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    raised: frozenset[str] = frozenset()
