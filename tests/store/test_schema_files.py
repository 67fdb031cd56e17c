"""The schema files say what the models say, byte for byte the same each time."""

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from bezelbook.kinds import KINDS, Kind
from bezelbook.store.record_text import read_record
from bezelbook.store.schema_files import file_schema, plain_schema_text, schema_texts, stale, write_schemas
from bezelbook.store.yaml_out import to_yaml
from bezelbook.store.yaml_text import read_yaml
from tests.store.toys import BOX, LOG, TOYS

BOTH: Mapping[str, Kind] = {**KINDS, **TOYS}


@pytest.mark.parametrize("kind", BOTH.values(), ids=BOTH.keys())
def test_every_schema_is_one_by_the_standard(kind: Kind) -> None:
    schema = file_schema(kind)
    assert schema["$schema"] == Draft202012Validator.META_SCHEMA["$id"]
    Draft202012Validator.check_schema(schema)
    assert schema["description"] == kind.description


def objects(node: object) -> list[dict[str, Any]]:
    if isinstance(node, list):
        return [found for item in node for found in objects(item)]
    if not isinstance(node, dict):
        return []
    here = [node] if node.get("type") == "object" else []
    return here + [found for item in node.values() for found in objects(item)]


@pytest.mark.parametrize("kind", BOTH.values(), ids=BOTH.keys())
def test_no_record_takes_unknown_fields_or_an_id(kind: Kind) -> None:
    closed = objects(file_schema(kind))
    assert closed
    assert all(node["additionalProperties"] is False for node in closed)
    assert not any("id" in node.get("properties", {}) or "id" in node.get("required", []) for node in closed)


def test_forms_are_one_of_several_and_speak_json_schema_alone() -> None:
    schema = file_schema(LOG)
    assert len(schema["oneOf"]) == 2
    assert "discriminator" not in schema


def test_a_text_ends_in_one_line_feed_and_keeps_its_order() -> None:
    for name, text in schema_texts(TOYS).items():
        assert name.endswith(".schema.json")
        assert text.endswith("}\n")
        assert text == json.dumps(json.loads(text), indent=2, sort_keys=True, ensure_ascii=False) + "\n"
    assert schema_texts(TOYS) == schema_texts(TOYS)


def test_every_kind_of_the_book_has_a_schema() -> None:
    assert {f"{kind.name}.schema.json" for kind in KINDS.values()} == schema_texts().keys()


def test_written_schemas_are_up_to_date(tmp_path: Path) -> None:
    write_schemas(tmp_path)
    assert stale(tmp_path) == ()
    assert {path.name: path.read_text("utf-8") for path in tmp_path.iterdir()} == schema_texts()


def test_what_is_missing_changed_or_of_no_kind_is_stale_and_is_mended(tmp_path: Path) -> None:
    texts = schema_texts(TOYS)
    write_schemas(tmp_path, texts)
    (tmp_path / "box.schema.json").write_text(texts["box.schema.json"].replace("A box.", "A bag."), "utf-8")
    (tmp_path / "log.schema.json").unlink()
    (tmp_path / "bag.schema.json").write_text("{}", "utf-8")
    found = dict(stale(tmp_path, texts))
    assert list(found) == ["bag.schema.json", "box.schema.json", "log.schema.json"]
    assert '\n-  "description": "A bag.",\n+  "description": "A box.",\n' in found["box.schema.json"]
    assert found["bag.schema.json"].endswith("\n-{}\n")
    write_schemas(tmp_path, texts)
    assert stale(tmp_path, texts) == ()
    assert sorted(path.name for path in tmp_path.iterdir()) == sorted(texts)


def test_plain_data_that_is_no_record_has_a_schema_too() -> None:
    schema = json.loads(plain_schema_text("answer", "What is answered.", dict[str, int]))
    Draft202012Validator.check_schema(schema)
    assert (schema["title"], schema["description"], schema["type"]) == ("answer", "What is answered.", "object")


def test_line_endings_count(tmp_path: Path) -> None:
    texts = schema_texts(TOYS)
    write_schemas(tmp_path, texts)
    (tmp_path / "top.schema.json").write_bytes(texts["top.schema.json"].replace("\n", "\r\n").encode())
    assert [name for name, _ in stale(tmp_path, texts)] == ["top.schema.json"]


def test_other_files_in_the_folder_are_nobody_s_business(tmp_path: Path) -> None:
    (tmp_path / "README.md").write_text("x", "utf-8")
    write_schemas(tmp_path, {})
    assert stale(tmp_path, {}) == ()
    assert (tmp_path / "README.md").exists()


words = st.sampled_from(
    [
        "goes in",
        "goes inn",
        "not looked",
        "all",
        "left",
        "seen",
        "tried",
        "165 mm",
        "6 1/2 in",
        "165 mm caliper",
        "flush",
    ]
)
odd = st.sampled_from(
    [None, True, 0, 1, 5, 5.0, 2.5, 12, "", "n" * 121, "M5", "M55", "2026-03-09", "2026-02-30", "Hand", "hand"]
)
anything = st.recursive(
    words | odd,
    lambda inner: st.lists(inner, max_size=2) | st.dictionaries(words | st.just("thread"), inner, max_size=2),
)
fields = st.sampled_from(
    [
        *(
            "name",
            "verdict",
            "height",
            "depth",
            "sides",
            "count",
            "screws",
            "splits",
            "form",
            "what",
            "tried",
            "day",
            "at",
        ),
        "hieght",
    ]
)
right: dict[str, st.SearchStrategy[Any]] = {
    "name": st.just("n"),
    "verdict": st.just("goes in"),
    "form": st.sampled_from(["seen", "tried"]),
    "what": st.just("w"),
    "sides": st.just(["left", "right"]) | st.just("all"),
    "screws": st.just([{"thread": "M5", "length": "5 mm"}]),
    "splits": st.dictionaries(st.sampled_from(["hand", "Hand"]), st.sampled_from(["left", "Left"])),
}
nearly = st.fixed_dictionaries({}, optional=right)
records = st.builds(lambda base, more: {**base, **more}, nearly, st.dictionaries(fields, anything, max_size=2))


@pytest.mark.parametrize("kind", [BOX, LOG], ids=["box", "log"])
@given(data=records)
def test_the_schema_and_the_model_agree_on_every_record(kind: Kind, data: dict[str, Any]) -> None:
    by_schema = Draft202012Validator(file_schema(kind)).is_valid(data)
    record, faults = read_record(to_yaml(data).encode(), kind, "x") if data else (None, ())
    assert by_schema == (record is not None), faults


def ways(value: object, path: tuple[str | int, ...] = ()) -> list[tuple[str | int, ...]]:
    """Every way into a record, the record's own included."""
    below: list[tuple[str | int, object]] = []
    if isinstance(value, dict):
        below = list(value.items())
    elif isinstance(value, list):
        below = list(enumerate(value))
    return [path, *(way for step, inner in below for way in ways(inner, (*path, step)))]


def changed(value: Any, path: tuple[str | int, ...], new: object) -> Any:
    """The value with something else at the end of the way."""
    if not path:
        return new
    copy: Any = dict(value) if isinstance(value, dict) else list(value)
    copy[path[0]] = changed(copy[path[0]], path[1:], new)
    return copy


@given(data=st.data())
def test_the_book_s_own_schemas_and_models_agree_on_records_gone_wrong(kb: Path, data: st.DataObject) -> None:
    folder, kind = data.draw(st.sampled_from(sorted(KINDS.items())))
    files = sorted(kb.glob(f"{folder}.yaml" if kind.single else f"{folder}/**/*.yaml"))
    if not files:
        return
    record = read_yaml(data.draw(st.sampled_from(files)).read_bytes()).value
    way = data.draw(st.sampled_from(ways(record)[1:]))
    record = changed(record, way, data.draw(anything))
    by_schema = Draft202012Validator(file_schema(kind)).is_valid(record)
    made, faults = read_record(to_yaml(record).encode(), kind, "x")
    assert by_schema == (made is not None), (way, faults)
