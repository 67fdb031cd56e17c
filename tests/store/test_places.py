"""Every key and value has its place, as an editor counts lines and columns."""

from hypothesis import given
from hypothesis import strategies as st
from yaml._yaml import CParser

from bezelbook.store.builder import DEEPEST
from bezelbook.store.place import Path, Place
from bezelbook.store.places import Places
from bezelbook.store.yaml_out import to_yaml


def places(text: str) -> Places:
    return Places(CParser(text.encode()).get_event)


def test_values_and_keys_stand_where_the_text_has_them() -> None:
    found = places("# remark\nname: x\nlist:\n  - a\n  - b: [c, d]\nlast:\n")
    assert found.values == {
        (): Place(2, 1),
        ("name",): Place(2, 7),
        ("list",): Place(4, 3),
        ("list", 0): Place(4, 5),
        ("list", 1): Place(5, 5),
        ("list", 1, "b"): Place(5, 8),
        ("list", 1, "b", 0): Place(5, 9),
        ("list", 1, "b", 1): Place(5, 12),
        ("last",): Place(6, 6),
    }
    assert found.keys == {
        ("name",): Place(2, 1),
        ("list",): Place(3, 1),
        ("list", 1, "b"): Place(5, 5),
        ("last",): Place(6, 1),
    }


def test_of_a_key_written_twice_the_first_counts() -> None:
    found = places("a: 1\na: 2\n")
    assert (found.values["a",], found.keys["a",]) == (Place(1, 4), Place(1, 1))


def test_columns_count_letters_and_not_bytes() -> None:
    assert places("né: ü\n").values["né",] == Place(1, 5)


def test_a_key_that_is_no_word_is_passed_over_with_its_value() -> None:
    found = places("? [a, b]\n: {c: 1}\n? {x: 1}\n: 2\nd: 3\n")
    assert found.values == {(): Place(1, 1), ("d",): Place(5, 4)}


def test_nothing_has_no_place() -> None:
    assert places("").values == {}


def test_what_is_too_deep_is_passed_over() -> None:
    found = places("[" * 60 + "1" + "]" * 60 + "\n")
    assert max(len(path) for path in found.values) == DEEPEST


names = st.text("abcdefgh", min_size=1, max_size=4)
records = st.dictionaries(
    names, st.recursive(st.integers(0, 99), lambda inner: st.lists(inner) | st.dictionaries(names, inner)), min_size=1
)


def ways(value: object, path: Path = ()) -> list[tuple[Path, object]]:
    below: list[tuple[str | int, object]] = []
    if isinstance(value, dict):
        below = list(value.items())
    elif isinstance(value, list):
        below = list(enumerate(value))
    return [(path, value), *(way for step, inner in below for way in ways(inner, (*path, step)))]


@given(records)
def test_every_way_through_a_record_leads_to_its_text(record: dict[str, object]) -> None:
    text = to_yaml(record)
    lines = text.split("\n")
    found = places(text)
    for path, value in ways(record):
        place = found.values[path]
        if isinstance(value, int):
            assert lines[place.line - 1][place.column - 1 :] == str(value)
        if path and isinstance(path[-1], str):
            key = found.keys[path]
            assert lines[key.line - 1][key.column - 1 :].startswith(f"{path[-1]}:")
    assert len(found.values) == len(ways(record))
