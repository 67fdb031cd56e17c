from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from bezelbook.kinds import KINDS, Kind
from bezelbook.kinds.record import kind_of
from bezelbook.values.words import CIRCUITS, FUNCTIONS
from tests.kinds.agreement import (
    Content,
    content_of,
    example_files,
    examples,
    model_takes,
    read,
    records,
    schema_of,
    schema_takes,
)
from tests.kinds.variants import thinned, variants

by_kind = pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.name)


def test_a_folder_of_the_book_belongs_to_one_kind() -> None:
    assert {folder: kind.folder for folder, kind in KINDS.items()} == {folder: folder for folder in KINDS}
    assert len({kind.name for kind in KINDS.values()}) == len(KINDS)


def test_one_kind_has_a_single_file_and_one_is_filed_by_year() -> None:
    assert [kind.name for kind in KINDS.values() if kind.single] == ["shop"]
    assert [kind.name for kind in KINDS.values() if kind.by_year] == ["note"]


@by_kind
def test_a_kind_says_in_a_sentence_what_it_is(kind: Kind) -> None:
    assert kind.description.endswith(".")


@by_kind
def test_every_example_loads(kind: Kind) -> None:
    assert [read(kind, content_of(path)).id for path in example_files(kind)]


@by_kind
def test_a_record_knows_its_kind(kind: Kind) -> None:
    assert {kind_of(type(read(kind, content))) for content in examples(kind)} == {kind.name}


@by_kind
def test_the_examples_of_a_kind_show_every_field_of_it(kind: Kind) -> None:
    shown = {field for content in examples(kind) for field in _keys(content)}
    # A map over all circuits, or all functions of a car, need not speak of each of them.
    assert _properties(schema_of(kind.name)) - shown - {*CIRCUITS, *FUNCTIONS} == set()


@pytest.mark.parametrize(
    ("folder", "field", "words"), [("adapters", "circuits", CIRCUITS), ("modules", "keeps", FUNCTIONS)]
)
def test_the_first_example_of_a_map_speaks_of_everything(folder: str, field: str, words: tuple[str, ...]) -> None:
    assert set(examples(KINDS[folder])[0][field]) == set(words)


@by_kind
def test_every_field_says_what_it_is(kind: Kind) -> None:
    silent = [name for name, field in _fields(schema_of(kind.name)) if not field.get("description", "").endswith(".")]
    assert silent == []


@by_kind
def test_every_schema_is_one_of_the_published_dialect(kind: Kind) -> None:
    assert schema_of(kind.name)["$schema"] == Draft202012Validator.META_SCHEMA["$id"]
    Draft202012Validator.check_schema(schema_of(kind.name))


@by_kind
def test_a_field_that_nobody_defined_is_refused(kind: Kind) -> None:
    for content in examples(kind):
        for spoiled in _each_with_a_stray_field(content):
            assert not model_takes(kind, spoiled)
            assert not schema_takes(kind, spoiled)


@by_kind
def test_an_id_inside_the_file_is_refused(kind: Kind) -> None:
    for content in examples(kind):
        assert not schema_takes(kind, {**content, "id": "some-file"})


@by_kind
def test_model_and_schema_agree_on_every_example(kind: Kind) -> None:
    for content in examples(kind):
        assert model_takes(kind, content)
        assert schema_takes(kind, content)


def test_model_and_schema_agree_on_every_record_of_every_book() -> None:
    found = [(path, model_takes(kind, content), schema_takes(kind, content)) for kind, path, content in records()]
    assert [path for path, model, schema in found if model != schema] == []


@pytest.mark.no_cover  # thousands of records, which counting lines would slow; the examples reach every line
@by_kind
@given(data=st.data())
@settings(max_examples=400)
def test_model_and_schema_agree_on_whatever_a_file_might_hold(kind: Kind, data: st.DataObject) -> None:
    content = data.draw(variants(examples(kind)))
    assert model_takes(kind, content) == schema_takes(kind, content)


@pytest.mark.no_cover
def test_model_and_schema_agree_on_two_thousand_records_good_and_bad() -> None:
    verdicts: list[tuple[bool, bool]] = []

    @given(data=st.data())
    @settings(max_examples=150)
    def compare(kind: Kind, data: st.DataObject) -> None:
        content = data.draw(thinned(examples(kind)) | variants(examples(kind)))
        verdicts.append((model_takes(kind, content), schema_takes(kind, content)))

    for kind in KINDS.values():
        compare(kind)
    assert set(verdicts) == {(True, True), (False, False)}
    assert len(verdicts) >= 2_000
    assert min(verdicts.count((True, True)), verdicts.count((False, False))) >= 500


def _keys(value: Any) -> Iterator[str]:
    """The keys anywhere in a value."""
    if isinstance(value, dict):
        yield from value
    for inner in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
        yield from _keys(inner)


def _fields(schema: Any) -> Iterator[tuple[str, Content]]:
    """The named fields anywhere in a schema."""
    if isinstance(schema, dict):
        yield from schema.get("properties", {}).items()
    for inner in schema.values() if isinstance(schema, dict) else schema if isinstance(schema, list) else ():
        yield from _fields(inner)


def _properties(schema: Content) -> set[str]:
    return {name for name, _ in _fields(schema)}


def _each_with_a_stray_field(content: Any) -> Iterator[Content]:
    """The content with a field that nobody defined, at the top and inside each list of pieces."""
    yield {**content, "stray": "x"}
    for key, value in content.items():
        if isinstance(value, list) and value and isinstance(value[0], dict):
            yield {**content, key: [{**value[0], "stray": {"x": 1}}, *value[1:]]}
