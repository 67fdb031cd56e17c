"""The schema of each kind as an editor reads it, and whether the files in the schema folder still say the same."""

import json
from collections.abc import Mapping
from difflib import unified_diff
from functools import lru_cache
from pathlib import Path
from typing import Any

from pydantic import TypeAdapter

from bezelbook.kinds import KINDS, Kind
from bezelbook.store.writing import replace

_ENDING = ".schema.json"
_DIALECT = "https://json-schema.org/draft/2020-12/schema"


@lru_cache(maxsize=64)
def file_schema(kind: Kind) -> dict[str, Any]:
    """Give the JSON Schema 2020-12 of a kind's files, which hold no id: the file's name is the id."""
    schema = kind.reader.json_schema()
    for root in _roots(schema):
        root["properties"].pop("id", None)
        root["required"] = [name for name in root.get("required", ()) if name != "id"]
    schema.pop("discriminator", None)
    return {**schema, "$schema": _DIALECT, "title": kind.name.replace("_", " "), "description": kind.description}


def _roots(schema: dict[str, Any]) -> list[dict[str, Any]]:
    """Give the schemas of whole records: one, or one for each form of a note."""
    choices = schema.get("oneOf", [schema])
    return [schema["$defs"][choice["$ref"].rpartition("/")[2]] if "$ref" in choice else choice for choice in choices]


def schema_texts(kinds: Mapping[str, Kind] = KINDS) -> dict[str, str]:
    """Give the text of every schema file by its name; the same models always give the same bytes."""
    return {f"{kind.name}{_ENDING}": _text(file_schema(kind)) for kind in kinds.values()}


def plain_schema_text(title: str, description: str, shape: Any) -> str:
    """Give the text of the schema of plain data that is no record, such as an answer."""
    schema = TypeAdapter(shape).json_schema()
    return _text({**schema, "$schema": _DIALECT, "title": title, "description": description})


def _text(schema: Mapping[str, Any]) -> str:
    return json.dumps(schema, indent=2, sort_keys=True, ensure_ascii=False) + "\n"


def write_schemas(folder: Path, texts: Mapping[str, str] | None = None) -> None:
    """Bring the folder's schema files to the given texts, by default every kind's, and remove all others."""
    texts = schema_texts() if texts is None else texts
    for name in _there(folder).keys() - texts.keys():
        (folder / name).unlink()
    for name, text in texts.items():
        replace(folder / name, text)


def stale(folder: Path, texts: Mapping[str, str] | None = None) -> tuple[tuple[str, str], ...]:
    """Give the name and a diff of each schema file that is missing, out of date, or of no kind."""
    texts = schema_texts() if texts is None else texts
    there = _there(folder)
    names = sorted({*texts, *there})
    differing = [name for name in names if texts.get(name) != there.get(name)]
    return tuple((name, _diff(name, there.get(name, ""), texts.get(name, ""))) for name in differing)


def _there(folder: Path) -> dict[str, str]:
    """Read the folder's schema files byte for byte, line endings included."""
    return {path.name: path.read_bytes().decode("utf-8", "replace") for path in sorted(folder.glob(f"*{_ENDING}"))}


def _diff(name: str, there: str, wanted: str) -> str:
    before, after = (text.splitlines(keepends=True) for text in (there, wanted))
    lines = unified_diff(before, after, f"{name} as it is", f"{name} as it should be")
    return "".join(line if line.endswith("\n") else f"{line}\n" for line in lines)
