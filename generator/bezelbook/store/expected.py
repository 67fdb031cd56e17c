"""What a kind's schema has to say about one place in a record: which fields, which words, what it is for."""

import re
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from bezelbook.store.place import Path

Schema = Mapping[str, Any]


class Expected:
    """Answers from one kind's schema, for one record's data: where the schema leaves a choice, the data decides."""

    def __init__(self, schema: Schema, data: object) -> None:
        self._schema = schema
        self._data = data

    def fields(self, path: Path) -> tuple[str, ...]:
        """Name the fields that the mapping at this place may have."""
        names = (name for node in self._at(path) for name in node.get("properties", {}))
        return tuple(dict.fromkeys(names))

    def words(self, path: Path) -> tuple[str, ...]:
        """List the words that may stand at this place, when it takes only words."""
        found = [word for node in self._at(path) for word in _words(node)]
        return tuple(dict.fromkeys(found))

    def purpose(self, path: Path) -> str:
        """Say what the place is for, in the schema's words without their last dot; empty when it says nothing."""
        fields = [_field(node, path[-1]) for node in self._at(path[:-1])] if path else []
        return next((field["description"] for field in fields if "description" in field), "").rstrip(".")

    def _at(self, path: Path) -> list[Schema]:
        nodes, data = [self._schema], self._data
        for step in path:
            nodes = [below for node in self._choices(nodes, data) for below in _below(node, step)]
            data = _value(data, step)
        return self._choices(nodes, data)

    def _choices(self, nodes: Iterable[Schema], data: object) -> list[Schema]:
        found = [choice for node in nodes for choice in self._flat(node)]
        return [choice for choice in found if not _ruled_out(choice, data)] or found

    def _flat(self, node: Schema) -> Iterator[Schema]:
        """Follow references, and open choices up."""
        if "$ref" in node:
            yield from self._flat(self._schema["$defs"][node["$ref"].rpartition("/")[2]])
            return
        choices = [*node.get("oneOf", ()), *node.get("anyOf", ())]
        for choice in choices:
            yield from self._flat(choice)
        if not choices:
            yield node


def _words(node: Schema) -> list[str]:
    words = node.get("enum", [node["const"]] if "const" in node else [])
    return [word for word in words if isinstance(word, str)]


def _field(node: Schema, name: str | int) -> Schema:
    found: Schema = node.get("properties", {}).get(name, {})
    return found


def _below(node: Schema, step: str | int) -> list[Schema]:
    """Give what the schema says of the value that one step leads to, if it says anything."""
    if isinstance(step, int):
        return [node["items"]] if "items" in node else []
    if step in node.get("properties", {}):
        return [_field(node, step)]
    patterns = node.get("patternProperties", {})
    return [below for pattern, below in patterns.items() if re.search(pattern, step)]


def _value(data: object, step: str | int) -> object:
    if isinstance(data, dict):
        return data.get(step)
    if isinstance(data, list) and isinstance(step, int) and step < len(data):
        return data[step]
    return None


def _ruled_out(node: Schema, data: object) -> bool:
    """Say whether a word that this choice insists on is another word in the data."""
    if not isinstance(data, dict):
        return False
    fixed = {name: field["const"] for name, field in node.get("properties", {}).items() if "const" in field}
    return any(name in data and data[name] != word for name, word in fixed.items())
