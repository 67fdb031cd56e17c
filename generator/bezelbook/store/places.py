"""Where each key and each value of a record stands in its file."""

from collections.abc import Callable
from typing import Any

from yaml import (
    DocumentStartEvent,
    MappingEndEvent,
    MappingStartEvent,
    ScalarEvent,
    SequenceEndEvent,
    SequenceStartEvent,
)

from bezelbook.store.builder import DEEPEST, skip
from bezelbook.store.place import Path, Place


class Places:
    """The places of values, and of the keys before them, by the way to the value; the record itself is at `()`.

    Made from the events of a text that the builder has been through. Of a key written twice, the first counts.
    """

    def __init__(self, next_event: Callable[[], Any]) -> None:
        self.values: dict[Path, Place] = {}
        self.keys: dict[Path, Place] = {}
        self._next = next_event
        self._next()
        if self._next().__class__ is DocumentStartEvent:
            self._node(self._next(), ())

    def _node(self, event: Any, path: Path) -> None:
        self.values.setdefault(path, _place(event))
        opens = event.__class__ in {MappingStartEvent, SequenceStartEvent}
        if opens and len(path) >= DEEPEST:
            skip(self._next)
        elif event.__class__ is MappingStartEvent:
            self._mapping(path)
        elif opens:
            self._sequence(path)

    def _mapping(self, path: Path) -> None:
        while (event := self._next()).__class__ is not MappingEndEvent:
            if event.__class__ is ScalarEvent:
                below = (*path, event.value)
                self.keys.setdefault(below, _place(event))
                self._node(self._next(), below)
            else:
                self._nameless(event)

    def _nameless(self, event: Any) -> None:
        """Pass over a key that is no word, and over its value."""
        for part in (event, None):
            if (part or self._next()).__class__ in {MappingStartEvent, SequenceStartEvent}:
                skip(self._next)

    def _sequence(self, path: Path) -> None:
        number = 0
        while (event := self._next()).__class__ is not SequenceEndEvent:
            self._node(event, (*path, number))
            number += 1


def _place(event: Any) -> Place:
    return Place(event.start_mark.line + 1, event.start_mark.column + 1)
