"""What a record says of others: read off its fields, and marked in its schema the same way."""

from collections.abc import Iterator
from typing import Any

import pytest

from bezelbook.kinds import KINDS, Kind
from bezelbook.kinds.record import IN_WORDS, NAMES
from bezelbook.kinds.references import Reference, references
from tests.kinds.agreement import Content, examples, read, schema_of

NAMES_OF_KINDS = {kind.name for kind in KINDS.values()}
by_kind = pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.name)


def said(folder: str, **content: Any) -> list[tuple[str, str, str]]:
    """Each reference as a way, the kinds it may be of, and the words; words are in brackets where ids alone count."""
    record = read(KINDS[folder], content)
    return [
        (".".join(map(str, one.path)), " ".join(one.kinds), one.words if one.in_words else f"[{one.words}]")
        for one in references(record)
    ]


def test_a_mount_names_vehicles_and_other_mounts_by_id() -> None:
    found = said(
        "mounts",
        name="Flush kit",
        mount_kind="kit",
        made_for=[{"vehicle": "compact-hatch-2", "place": "dash-centre"}],
        needs_too=["rear-strap", "filler"],
    )
    assert found == [
        ("made_for.0.vehicle", "vehicle", "[compact-hatch-2]"),
        ("needs_too.0", "mount", "[rear-strap]"),
        ("needs_too.1", "mount", "[filler]"),
    ]


def test_a_note_names_its_vehicle_by_id_and_what_was_used_in_words() -> None:
    found = said(
        "notes",
        form="seen",
        vehicle="compact-hatch-2",
        place="dash-centre",
        mounts=["the usual ring"],
        plug="square 24",
        fasteners=[{"kind": "white sail clip"}],
        replaces="older",
    )
    assert sorted(found) == [
        ("fasteners.0.kind", "supply", "white sail clip"),
        ("mounts.0", "mount", "the usual ring"),
        ("plug", "connector", "square 24"),
        ("replaces", "note", "[older]"),
        ("vehicle", "vehicle", "[compact-hatch-2]"),
    ]


@pytest.mark.parametrize("word", ["none", None])
def test_no_mount_is_no_name_of_one(word: object) -> None:
    content = {"form": "seen", "vehicle": "van", "place": "dash", "mounts": word}
    assert [words for _, _, words in said("notes", **content)] == ["[van]"]


def test_what_is_not_needed_is_no_name_either() -> None:
    plain = {"name": "The T", "adapter_kind": "T"}
    assert said("adapters", **plain, needs_module="not needed") == []
    assert said("adapters", **plain, needs_module=["bus-box"]) == [("needs_module.0", "module", "[bus-box]")]


def test_a_map_is_looked_through_as_a_list_is() -> None:
    found = said(
        "adapters",
        name="The T",
        adapter_kind="T",
        ends={"a": {"connector": "square-24"}},
        circuits={"speed": {"does": "makes", "made_by": "bus-box"}},
    )
    assert found == [
        ("ends.a.connector", "connector", "[square-24]"),
        ("circuits.speed.made_by", "module", "[bus-box]"),
    ]


def test_a_reference_says_where_of_what_and_how_loosely() -> None:
    record = read(KINDS["shelf"], {"thing": "white-sail-clip", "count": 2})
    (only,) = references(record)
    assert only.path == ("thing",)
    assert {"supply", "speaker", "adapter"} < set(only.kinds)
    assert (only.words, only.in_words) == ("white-sail-clip", False)


@by_kind
def test_every_field_that_its_schema_marks_is_followed_in_its_examples(kind: Kind) -> None:
    found = [one for content in examples(kind) for one in references(read(kind, content))]
    assert {_last_name(one) for one in found} == {name for name, _ in _marked(schema_of(kind.name))}


@by_kind
def test_a_mark_names_kinds_that_there_are(kind: Kind) -> None:
    for _, field in _marked(schema_of(kind.name)):
        assert set(field[NAMES]) <= NAMES_OF_KINDS
        assert field.get(IN_WORDS, True) is True


def _last_name(reference: Reference) -> str:
    return next(step for step in reversed(reference.path) if isinstance(step, str))


def _marked(schema: Any) -> Iterator[tuple[str, Content]]:
    """The fields anywhere in a schema that name other records."""
    if isinstance(schema, dict):
        yield from ((name, field) for name, field in schema.get("properties", {}).items() if NAMES in field)
    for inner in schema.values() if isinstance(schema, dict) else schema if isinstance(schema, list) else ():
        yield from _marked(inner)
