"""How plain values are written as YAML that means the same to a reader of version 1.1 and to one of 1.2."""

import json
import math
import re
from collections.abc import Iterator

from yaml.resolver import Resolver

from bezelbook.store.builder import HIDDEN
from bezelbook.store.scalars import resolve
from bezelbook.values.complaint import Wrong

_PLAIN = re.compile(r"[^\W_][^\[\]{}]*")
_TRUTH_IN_1_1 = frozenset("yYnN")
_LONGEST_KEY = 500


def to_yaml(value: object) -> str:
    """Write mappings with text keys, lists, text, numbers, truth and None as one YAML document, in the order given.

    `read_yaml` gives equal values back, as long as they nest no deeper than it reads. Raises Wrong for text and
    numbers that no record may hold, and TypeError for any other kind of value.
    """
    return "".join(f"{line}\n" for line in _lines(value))


def _lines(value: object) -> Iterator[str]:
    if isinstance(value, dict) and value:
        for key, below in value.items():
            yield from _entry(f"{_key(key)}:", below)
    elif isinstance(value, list | tuple) and value:
        for below in value:
            yield from _entry("-", below)
    else:
        yield _scalar(value)


def _entry(lead: str, value: object) -> Iterator[str]:
    """Put a value behind its key or hyphen, or below it and further in."""
    if isinstance(value, dict | list | tuple) and value:
        yield lead
        yield from _further_in(_lines(value))
    elif isinstance(value, str) and _is_verse(value):
        body = value.removesuffix("\n")
        yield f"{lead} {'|-' if body == value else '|'}"
        yield from _further_in(iter(body.split("\n")))
    else:
        yield f"{lead} {_scalar(value)}"


def _further_in(lines: Iterator[str]) -> Iterator[str]:
    return (f"  {line}" if line else "" for line in lines)


def _is_verse(text: str) -> bool:
    """Say whether text of several lines reads best as it stands, line by line."""
    first, *rest = text.removesuffix("\n").split("\n")
    return bool(rest and first and rest[-1]) and all(
        line.isprintable() and line == line.strip() for line in (first, *rest)
    )


def _key(key: object) -> str:
    if not isinstance(key, str):
        raise TypeError(f"a key is text, and this is {key!r}")
    if len(key) > _LONGEST_KEY:
        raise Wrong(f"a key of {len(key)} letters is too long", "Use a shorter one")
    return _text(key)


def _scalar(value: object) -> str:
    if isinstance(value, str):
        return _text(value)
    if value is None or isinstance(value, bool | int):
        return json.dumps(value)
    if isinstance(value, float):
        return _number(value)
    if isinstance(value, dict | list | tuple):
        return "{}" if isinstance(value, dict) else "[]"
    raise TypeError(f"a record holds no {type(value).__name__}")


def _number(value: float) -> str:
    """Write a number so that version 1.1, which wants a point before an exponent, reads it too."""
    if not math.isfinite(value):
        raise Wrong(f"{value} is not a number to count with", "Write an ordinary number")
    whole, e, power = repr(value).partition("e")
    return whole if not e else f"{whole if '.' in whole else f'{whole}.0'}e{power}"


def _text(text: str) -> str:
    hidden = HIDDEN.search(text)
    if hidden:
        raise Wrong(f"there is a character that cannot be seen (U+{ord(hidden[0]):04X})", "Take it out")
    return text if _is_plain(text) else json.dumps(text, ensure_ascii=False)


def _is_plain(text: str) -> bool:
    """Say whether text can stand without quotes: nothing in it is YAML's own, and nobody takes it for a number."""
    looks_plain = _PLAIN.fullmatch(text) and text.isprintable() and text == text.strip()
    if not looks_plain or text.endswith(":") or ": " in text or " #" in text:
        return False
    return resolve(text) is text and _text_by_1_1(text)


def _text_by_1_1(text: str) -> bool:
    patterns = Resolver.yaml_implicit_resolvers.get(text[0], ())
    return text not in _TRUTH_IN_1_1 and not any(pattern.match(text) for _, pattern in patterns)
