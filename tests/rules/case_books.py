"""The small book of a rule's case, made the way a folder of files would be."""

from collections.abc import Mapping
from typing import Any

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base


def records_of(book: Mapping[str, Mapping[str, Any]]) -> list[Record]:
    """The records of plain data laid out as a book: folder, then id, then what the file says."""
    return [
        KINDS[folder].reader.validate_python({**said, "id": name})
        for folder, files in book.items()
        for name, said in files.items()
    ]


def book_of(case: Mapping[str, Any]) -> KnowledgeBase:
    """The book of a case."""
    return knowledge_base(records_of(case["book"]))
