"""Which connectors are easily taken for one another, and the line that tells them apart."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.connector.record import Connector, Key
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.values.listed import listed


@dataclass(frozen=True, slots=True)
class LookAlike:
    """Another connector of the same shape; `difference` is empty when nobody has looked at the keys of both."""

    connector: str
    difference: str


def look_alikes(book: KnowledgeBase, connector: str) -> tuple[LookAlike, ...]:
    """Every connector that a record says looks like this one, and every other of the same shell, rows and cavities."""
    found: dict[str, str] = {}
    for name, difference in _written(book, connector):
        found.setdefault(name, difference)
    own = book.connectors[connector]
    for other in book.connectors.values():
        if other.id != connector and other.id not in found and _same_shape(own, other):
            found[other.id] = _keys_apart(own, other)
    return tuple(LookAlike(name, found[name]) for name in sorted(found))


def _written(book: KnowledgeBase, connector: str) -> Iterator[tuple[str, str]]:
    """What its own record says first, then what the records of others say of it."""
    for one in book.connectors[connector].looks_like:
        if one.connector in book.connectors and one.connector != connector:
            yield one.connector, one.difference
    for other in book.connectors.values():
        for one in other.looks_like:
            if one.connector == connector and other.id != connector:
                yield other.id, one.difference


def _same_shape(one: Connector, other: Connector) -> bool:
    mine, theirs = ((half.shell, half.rows, half.columns, half.cavities) for half in (one, other))
    halves = None in (one.side, other.side) or one.side == other.side
    return one.cavities is not None and mine == theirs and halves


def _keys_apart(one: Connector, other: Connector) -> str:
    """The keys of both, where both were looked at and differ."""
    mine, theirs = _keys(one), _keys(other)
    if mine is None or theirs is None or mine == theirs:
        return ""
    return f"{one.name}: {mine}; {other.name}: {theirs}"


def _keys(connector: Connector) -> str | None:
    keying = connector.keying
    if isinstance(keying, tuple):
        return listed([_key(one) for one in keying])
    return "no key" if keying in ("not there", "not needed") else None


def _key(key: Key) -> str:
    return " ".join(word for word in (key.kind, f"at the {key.side}" if key.side else "", key.reads or "") if word)
