"""How the events of a YAML text become plain values, and which of YAML's liberties a record may not take."""

import math
import re
from collections.abc import Callable
from typing import Any

from yaml import (
    AliasEvent,
    DocumentStartEvent,
    MappingEndEvent,
    MappingStartEvent,
    ScalarEvent,
    SequenceEndEvent,
    StreamEndEvent,
)
from yaml.events import CollectionEndEvent, CollectionStartEvent

from bezelbook.store.place import Fault
from bezelbook.store.scalars import resolve

DEEPEST = 40
HIDDEN = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u2028\u2029\ud800-\udfff\ufeff\ufffe\uffff]")


def skip(next_event: Callable[[], Any]) -> None:
    """Pass over the rest of a mapping or list that has begun, however deep it goes."""
    depth = 1
    while depth:
        event = next_event()
        depth += isinstance(event, CollectionStartEvent) - isinstance(event, CollectionEndEvent)


class Builder:
    """Builds one document, collecting faults and going on; a refused value becomes None."""

    def __init__(self, next_event: Callable[[], Any]) -> None:
        self.faults: list[Fault] = []
        self._next = next_event

    def document(self) -> object:
        """Build the whole text's one document; nothing at all gives None."""
        self._next()
        start = self._next()
        if start.__class__ is StreamEndEvent:
            return None
        if start.version or start.tags:
            self._fault(start, "a line starts with %", "Take it out")
        value = self._node(self._next(), 1)
        self._next()
        after = self._next()
        if after.__class__ is DocumentStartEvent:
            self._fault(after, "a second document starts here", "Put it in a file of its own; one file is one record")
        return value

    def _node(self, event: Any, depth: int) -> object:
        kind = event.__class__
        if kind is ScalarEvent:
            return self._scalar(event)
        if kind is AliasEvent:
            self._fault(event, f"*{event.anchor} stands for something written elsewhere", "Write it out here")
            return None
        self._refuse_extras(event)
        if depth > DEEPEST:
            self._fault(event, f"this is nested more than {DEEPEST} deep", "Write it flatter")
            skip(self._next)
            return None
        return self._mapping(depth) if kind is MappingStartEvent else self._sequence(depth)

    def _scalar(self, event: Any) -> object:
        text: str = event.value
        if event.anchor or event.tag:
            self._refuse_extras(event)
        if event.implicit[0]:
            return self._plain(event, text)
        if event.style == '"' and HIDDEN.search(text):
            self._fault(event, "a backslash spells a character that cannot be seen", "Take it out")
        return text

    def _plain(self, event: Any, text: str) -> object:
        value = resolve(text)
        if isinstance(value, float) and not math.isfinite(value):
            self._fault(event, f"{text[:20]} is not a number to count with", "Write an ordinary number")
            return None
        return value

    def _mapping(self, depth: int) -> dict[str, object]:
        found: dict[str, object] = {}
        lines: dict[str, int] = {}
        while (event := self._next()).__class__ is not MappingEndEvent:
            key = self._key(event, depth)
            value = self._node(self._next(), depth + 1)
            if key is None:
                continue
            if key in found:
                first = f"the first is on line {lines[key] + 1}"
                self._fault(event, f'"{key}" is written twice', f"Keep one of the two; {first}")
                continue
            found[key] = value
            lines[key] = event.start_mark.line
        return found

    def _key(self, event: Any, depth: int) -> str | None:
        key = self._node(event, depth + 1)
        if isinstance(key, str):
            return key
        if event.__class__ is ScalarEvent:
            mend = f'Put it in quotes: "{event.value}"' if event.value else "Write a word before the colon"
            self._fault(event, f"the key {event.value or 'before the colon'} is not text", mend)
        else:
            self._fault(event, "a key is one word or a few, and this is more", "Write a plain word before the colon")
        return None

    def _sequence(self, depth: int) -> list[object]:
        found: list[object] = []
        while (event := self._next()).__class__ is not SequenceEndEvent:
            found.append(self._node(event, depth + 1))
        return found

    def _refuse_extras(self, event: Any) -> None:
        if event.anchor:
            self._fault(event, f"&{event.anchor} gives this a name", "Take the name out; nothing is written by name")
        if event.tag:
            self._fault(event, f"{event.tag.replace('tag:yaml.org,2002:', '!!')} is a tag", "Take the tag out")

    def _fault(self, event: Any, what: str, mend: str) -> None:
        line, column = event.start_mark.line + 1, event.start_mark.column + 1
        if not any((fault.line, fault.column) == (line, column) for fault in self.faults):
            self.faults.append(Fault(line, column, what, mend))
