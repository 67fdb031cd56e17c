"""What is written is read back the same, here and by a reader of YAML 1.1."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from yaml import CSafeLoader

from bezelbook.store.builder import HIDDEN
from bezelbook.store.yaml_out import to_yaml
from bezelbook.store.yaml_text import read_yaml
from bezelbook.values.complaint import Wrong


def by_1_1(text: str) -> object:
    loader = CSafeLoader(text)
    try:
        return loader.get_single_data()
    finally:
        loader.dispose()


def test_a_record_reads_like_one_that_a_person_wrote() -> None:
    record = {
        "form": "tried",
        "vehicle": "compact-hatch-2",
        "sizes": {"depth": '6 1/2"', "width": "182 ± 0.5 mm"},
        "where": ["upper-left", "centre"],
        "words": "It went in.\n\nJust about.\n",
        "more": "one\ntwo",
        "readings": [{"of": "depth", "reads": "205 mm"}, []],
        "blank": None,
        "splits": {},
    }
    assert to_yaml(record) == (
        "form: tried\n"
        "vehicle: compact-hatch-2\n"
        "sizes:\n"
        '  depth: 6 1/2"\n'
        "  width: 182 ± 0.5 mm\n"
        "where:\n"
        "  - upper-left\n"
        "  - centre\n"
        "words: |\n"
        "  It went in.\n"
        "\n"
        "  Just about.\n"
        "more: |-\n"
        "  one\n"
        "  two\n"
        "readings:\n"
        "  -\n"
        "    of: depth\n"
        "    reads: 205 mm\n"
        "  - []\n"
        "blank: null\n"
        "splits: {}\n"
    )
    assert read_yaml(to_yaml(record).encode()).value == record


@pytest.mark.parametrize(
    "text",
    [
        *("yes", "no", "on", "off", "y", "N", "true", "null", "~", "", "12", "0o14", "014", "0b1", "1_000", "12:30"),
        *(
            "1e3",
            "1.",
            ".5",
            "2026-03-09",
            ".inf",
            "=",
            "<<",
            " x",
            "x ",
            "a: b",
            "a:",
            "a #b",
            "- a",
            "? a",
            "&a",
            "*a",
        ),
        *(
            "!a",
            "|",
            ">",
            "%a",
            "@a",
            "`a",
            "'a",
            '"a',
            "[a",
            "{a}",
            "a]",
            "#a",
            "a\tb",
            "a\nb ",
            "\n",
            "\n\n",
            "a\n\n",
        ),
        *(" a\nb", "a\n b", "---", "...", "a\r\nb", "\u00a0a", "½ in", "−5 mm"),
    ],
)
def test_text_stays_text_for_readers_of_1_1_and_of_1_2(text: str) -> None:
    for written in (to_yaml({"a": text}), to_yaml([text]), to_yaml(text), to_yaml({"a": {"b": [text, text]}})):
        assert by_1_1(written) == read_yaml(written.encode()).value
    assert read_yaml(to_yaml({text: [text]}).encode()).value == {text: [text]}


@pytest.mark.parametrize(
    "text", ["165 mm", "6 1/2 in", '2-3/8"', "6' 2\"", "goes in", "20 Ω", "it is, after all", "a:b"]
)
def test_ordinary_text_needs_no_quotes(text: str) -> None:
    assert to_yaml(text) == f"{text}\n"


scalars = (
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats(allow_nan=False, allow_infinity=False)
    | st.text().filter(lambda text: not HIDDEN.search(text))
)
keys = st.text(max_size=20).filter(lambda text: not HIDDEN.search(text))
values = st.recursive(scalars, lambda inner: st.lists(inner) | st.dictionaries(keys, inner), max_leaves=20)


@given(values)
def test_whatever_is_written_is_read_back(value: object) -> None:
    parsed = read_yaml(to_yaml(value).encode())
    assert parsed.faults == ()
    assert parsed.value == value
    assert repr(parsed.value) == repr(value), "order and types are kept too"


@given(values)
def test_a_reader_of_1_1_reads_the_same(value: object) -> None:
    assert repr(by_1_1(to_yaml(value))) == repr(value)


@given(values)
def test_no_line_ends_in_a_space_and_the_text_in_one_line_feed(value: object) -> None:
    text = to_yaml(value)
    assert text.endswith("\n")
    assert not any(line.endswith(" ") for line in text.split("\n"))


def test_a_tuple_is_a_list() -> None:
    assert to_yaml({"a": ("x", ())}) == to_yaml({"a": ["x", []]})


@pytest.mark.parametrize("value", [math.inf, -math.inf, math.nan, "a\x00", "a\u2028", {"a\x07": 1}, {"a" * 501: 1}])
def test_what_no_record_may_hold_is_refused(value: object) -> None:
    with pytest.raises(Wrong):
        to_yaml(value)


@pytest.mark.parametrize("value", [{1: "a"}, {"a": {1, 2}}, b"a", object()])
def test_what_is_not_plain_data_is_a_mistake_of_the_caller(value: object) -> None:
    with pytest.raises(TypeError):
        to_yaml(value)
