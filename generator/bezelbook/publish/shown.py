"""What is published without the words that no output may carry: the text of a page, and plain data."""

import re
from functools import lru_cache
from html import unescape
from typing import Any, TypeVar

from bezelbook.publish.template import text
from bezelbook.values.withheld import withheld

T = TypeVar("T")
# What names a thing and is no sentence: a name with a word left out would name nothing.
NAMES = frozenset({"key", "id", "rule", "ruleId", "places", "path", "uri", "$schema"})
# A record's name or an address within the site; with as many digits as a phone number has it is neither.
_NAME = re.compile(r"(?!(?:[^0-9]*[0-9]){7})[a-z0-9/#._-]+")
_TAG = re.compile("(<[^>]*>)")
# The attributes in which an author's words may stand. Addresses and names of elements are left alone.
_SPOKEN = re.compile(r'((?:alt|title|aria-label|placeholder|data-(?:label|piece|ring|speaker|control))=")([^"]*)')


def shown(data: T) -> T:
    """The same data, each text in it as it may be shown; what names a record or a file is left alone."""
    kept: Any = _shown(data)
    return kept  # type: ignore[no-any-return]


def _shown(data: Any) -> Any:
    if isinstance(data, str):
        return data if _NAME.fullmatch(data) else withheld(data)
    if isinstance(data, dict):
        return {key: value if key in NAMES and _is_named(value) else _shown(value) for key, value in data.items()}
    if isinstance(data, list | tuple):
        return [_shown(one) for one in data]
    return data


def _is_named(value: Any) -> bool:
    """Whether a value can be one name or several, and is not more data below a key that happens to be called so."""
    return isinstance(value, str) or (isinstance(value, list | tuple) and all(isinstance(one, str) for one in value))


def shown_html(html: str) -> str:
    """The same markup, each text and each spoken attribute in it as it may be shown; its lines stay its lines."""
    parts = _TAG.split(html)
    return "".join(_tag(part) if at % 2 else _text(part) for at, part in enumerate(parts))


def _tag(tag: str) -> str:
    return _SPOKEN.sub(lambda found: found[1] + _line(found[2]), tag)


def _text(words: str) -> str:
    return "\n".join(map(_line, words.split("\n")))


@lru_cache(maxsize=1 << 16)
def _line(written: str) -> str:
    plain = unescape(written)
    kept = withheld(plain)
    return written if kept == plain else str(text(kept))
