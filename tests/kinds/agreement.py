"""What a kind's model and its schema each say of the same content of a file."""

import json
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

from jsonschema import Draft202012Validator
from pydantic import ValidationError

from bezelbook.kinds import KINDS, Kind
from bezelbook.store.schema_files import schema_texts
from bezelbook.store.yaml_text import read_yaml

ROOT = Path(__file__).resolve().parents[2]
Content = dict[str, Any]


def content_of(path: Path) -> Content:
    """What a file of the book says; a file that cannot be read at all fails the test."""
    parsed = read_yaml(path.read_bytes())
    assert parsed.faults == (), f"{path}: {parsed.faults}"
    assert isinstance(parsed.value, dict), f"{path} holds no fields"
    return parsed.value


def read(kind: Kind, content: Content) -> Any:
    """The record that the model makes of the content, under an id as a file name would give it."""
    return kind.reader.validate_python({**content, "id": "some-file"})


def model_takes(kind: Kind, content: Content) -> bool:
    """Whether the model takes the content of a file, which never holds its own id."""
    try:
        read(kind, content)
    except ValidationError:
        return False
    return "id" not in content


@cache
def schema_of(name: str) -> Content:
    """The published schema of a kind."""
    schema: Content = json.loads(schema_texts()[f"{name}.schema.json"])
    return schema


@cache
def _validator(name: str) -> Draft202012Validator:
    Draft202012Validator.check_schema(schema_of(name))
    return Draft202012Validator(schema_of(name))


def schema_takes(kind: Kind, content: Content) -> bool:
    """Whether an editor that knows the kind's schema would pass the content."""
    return _validator(kind.name).is_valid(content)


def example_files(kind: Kind) -> list[Path]:
    """The examples that stand beside a kind's model."""
    folder = ROOT / "generator" / "bezelbook" / "kinds" / kind.name
    return [folder / "example.yaml", *sorted(folder.glob("examples/*.yaml"))]


@cache
def examples(kind: Kind) -> tuple[Content, ...]:
    """What those examples say."""
    return tuple(content_of(path) for path in example_files(kind))


def records() -> Iterator[tuple[Kind, Path, Content]]:
    """Every record of the published book and of the books kept for tests; what is no YAML at all is left out."""
    for book in (ROOT / "kb", *sorted((ROOT / "tests" / "books").glob("*/"))):
        for kind in KINDS.values():
            pattern = f"{kind.folder}.yaml" if kind.single else f"{kind.folder}/**/*.yaml"
            for path in sorted(book.glob(pattern)):
                parsed = read_yaml(path.read_bytes())
                if not parsed.faults and isinstance(parsed.value, dict):
                    yield kind, path, parsed.value
