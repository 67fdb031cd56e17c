"""A document is built as far as it makes sense, and every liberty it takes is told."""

import pytest
from yaml._yaml import CParser

from bezelbook.store.builder import DEEPEST, Builder, skip


def built(text: str) -> tuple[object, list[str]]:
    builder = Builder(CParser(text.encode()).get_event)
    value = builder.document()
    return value, [f"{fault.line}:{fault.column}: {fault.what}. {fault.mend}." for fault in builder.faults]


def test_plain_yaml_is_built_without_a_word() -> None:
    text = "a: 1\nb: [x, 'y', \"z\"]\nc:\n  d: on\n  e:\nf: |\n  two\n  lines\n"
    value = {"a": 1, "b": ["x", "y", "z"], "c": {"d": "on", "e": None}, "f": "two\nlines\n"}
    assert built(text) == (value, [])


def test_quotes_keep_text_text() -> None:
    assert built("a: '12'\nb: \"true\"\n") == ({"a": "12", "b": "true"}, [])


def test_nothing_is_nothing() -> None:
    assert built("") == (None, [])
    assert built("# only a remark\n") == (None, [])


@pytest.mark.parametrize(
    ("text", "value", "fault"),
    [
        ("a: 1\na: 2\n", {"a": 1}, '2:1: "a" is written twice. Keep one of the two; the first is on line 1.'),
        ("a: &x 1\n", {"a": 1}, "1:4: &x gives this a name. Take the name out; nothing is written by name."),
        ("a: &x [1]\n", {"a": [1]}, "1:4: &x gives this a name. Take the name out; nothing is written by name."),
        ("a: !!str 1\n", {"a": "1"}, "1:4: !!str is a tag. Take the tag out."),
        ("a: !x {b: 1}\n", {"a": {"b": 1}}, "1:4: !x is a tag. Take the tag out."),
        ("1: x\n", {}, '1:1: the key 1 is not text. Put it in quotes: "1".'),
        ("?\n: x\n", {}, "1:2: the key before the colon is not text. Write a word before the colon."),
        ("true: x\nb: 1\n", {"b": 1}, '1:1: the key true is not text. Put it in quotes: "true".'),
        (
            "? [a]\n: [1]\nb: 2\n",
            {"b": 2},
            "1:3: a key is one word or a few, and this is more. Write a plain word before the colon.",
        ),
        ("a: .inf\n", {"a": None}, "1:4: .inf is not a number to count with. Write an ordinary number."),
        ("a: 1e999\n", {"a": None}, "1:4: 1e999 is not a number to count with. Write an ordinary number."),
        (
            'a: "\\x07"\n',
            {"a": "\x07"},
            "1:4: a backslash spells a character that cannot be seen. Take it out.",
        ),
        (
            "a: 1\n---\nb: 2\n",
            {"a": 1},
            "2:1: a second document starts here. Put it in a file of its own; one file is one record.",
        ),
        ("%YAML 1.1\n---\na: 1\n", {"a": 1}, "1:1: a line starts with %. Take it out."),
        ("%TAG ! x\n---\na: 1\n", {"a": 1}, "1:1: a line starts with %. Take it out."),
    ],
)
def test_what_a_record_may_not_do_is_told_and_the_rest_is_built(text: str, value: object, fault: str) -> None:
    assert built(text) == (value, [fault])


def test_an_alias_is_told_wherever_it_stands() -> None:
    value, faults = built("a: &x 1\nb: *x\n*x : 3\n")
    assert value == {"a": 1, "b": None}
    assert [fault.partition(":")[0] for fault in faults] == ["1", "2", "3"]


def test_all_faults_are_told_in_one_run() -> None:
    _, faults = built("a: .nan\na: 2\nb: !x 1\n3: 4\n")
    assert [fault[:3] for fault in faults] == ["1:4", "2:1", "3:4", "4:1"]


def test_one_place_has_one_fault() -> None:
    _, faults = built("a: &x !y 1\n.inf: 3\n")
    assert len(faults) == 2


def test_depth_has_a_limit_and_what_follows_is_still_read() -> None:
    deep = DEEPEST + 5
    value, faults = built(f"a: {'[' * deep}{{b: [1]}}{']' * deep}\nb: 2\n")
    assert isinstance(value, dict)
    assert value["b"] == 2
    assert faults == [f"1:{DEEPEST + 3}: this is nested more than {DEEPEST} deep. Write it flatter."]


def test_a_depth_within_the_limit_is_built() -> None:
    _, faults = built("[" * DEEPEST + "]" * DEEPEST)
    assert faults == []


def test_skipping_stops_at_the_end_of_what_began() -> None:
    parser = CParser(b"[[1, {a: [2]}], 3]")
    for _ in range(4):
        parser.get_event()
    skip(parser.get_event)
    after = parser.get_event()
    assert getattr(after, "value", None) == "3"
