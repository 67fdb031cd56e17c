"""What turns a screw, in the words of whoever took it out or of its record."""

import re
from collections.abc import Iterator, Mapping

from bezelbook.kinds.note.removal import Fasteners
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.order.fixings import record_of

# A hex in fractions of an inch is spoken of for the one in millimetres that its driver turns: 9/32 in is 7.14 mm,
# 5/16 in is 7.94 mm, 7/32 in is 5.56 mm (arithmetic); that it is done is common practice, no source.
_INCHES: Mapping[str, str] = {"9/32": "7", "5/16": "8", "7/32": "5.5"}
_SIZE = r"(\d+/\d+|\d+(?:[.,]\d)?)"
_HEX = re.compile(rf"{_SIZE}\s*(?:mm|in|inch|\")?[\s-]*hex|hex(?:agon)?(?:[\s-]*head)?\s*{_SIZE}", re.IGNORECASE)
_SIX_LOBE = re.compile(r"\b(?:six[\s-]*lobe|star|t)[\s-]*(\d{1,2})\b", re.IGNORECASE)
_CROSS = re.compile(r"\bcross(?:[\s-]*(?:recess|head|headed))?(?:\s*\d|\s+screws?|$)", re.IGNORECASE)


def drives_said(words: str) -> frozenset[str]:
    """Every drive that these words name: `hex 7`, `six-lobe 20`, `cross`; none where they name none.

    A pin in the middle and the size of a cross are left out: few look for the one, and fewer write down the other.
    """
    return frozenset(_drives(words))


def drives_of(book: KnowledgeBase, one: Fasteners) -> frozenset[str]:
    """What turns these fasteners: as their words say, or else their record, and the odd one of them if it differs."""
    found = record_of(book, one.kind)
    own = drives_said(one.kind) or drives_said((found.drive if found else None) or "")
    return own | drives_said(one.odd_one or "") if own else own


def _drives(words: str) -> Iterator[str]:
    for sizes in _HEX.findall(words):
        size = next(size for size in sizes if size)
        yield f"hex {_INCHES.get(size, size.replace(',', '.'))}"
    yield from (f"six-lobe {size}" for size in _SIX_LOBE.findall(words))
    if _CROSS.search(words):
        yield "cross"
