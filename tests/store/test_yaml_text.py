"""Any bytes at all are read or refused, with a place for everything that is said of them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from yaml import CSafeLoader

from bezelbook.store.place import Place
from bezelbook.store.yaml_out import to_yaml
from bezelbook.store.yaml_text import LARGEST, read_yaml, whole_text


def test_a_byte_order_mark_and_crlf_are_read() -> None:
    parsed = read_yaml(b"\xef\xbb\xbfa: 1\r\nb: |\r\n  x\r\n  y\r\n")
    assert (parsed.value, parsed.faults) == ({"a": 1, "b": "x\ny\n"}, ())
    assert parsed.places["a",] == Place(1, 4)
    assert parsed.key_places["b",] == Place(2, 1)


@pytest.mark.parametrize(
    ("data", "place", "what"),
    [
        (b"a: 1\n\nb: \xff\n", (3, 4), "this is not UTF-8 text"),
        ("a: 1\n".encode("utf-16"), (1, 1), "this is not UTF-8 text"),
        (b"a: x\x00y\n", (1, 5), "there is a character here that cannot be seen (U+0000)"),
        ("é: 1\r\nb: \u2028\n".encode(), (2, 4), "there is a character here that cannot be seen (U+2028)"),
        ("a: 1\rb: \x85".encode(), (2, 4), "there is a character here that cannot be seen (U+0085)"),
        (b"a: " + b"x" * LARGEST, (1, 1), "this file is larger than 256 kB"),
    ],
)
def test_what_is_no_text_is_refused_where_it_stops_being_one(data: bytes, place: tuple[int, int], what: str) -> None:
    parsed = read_yaml(data)
    (fault,) = parsed.faults
    assert (fault.line, fault.column, fault.what) == (*place, what)
    assert parsed.value is None
    assert not parsed.places
    assert not parsed.key_places


def test_the_largest_file_is_read() -> None:
    assert read_yaml(b"a: " + b"x" * (LARGEST - 3)).faults == ()


def test_a_text_that_stops_making_sense_keeps_the_faults_before() -> None:
    parsed = read_yaml(b"a: 1\na: 2\nb: [\n")
    assert parsed.value is None
    assert [fault.line for fault in parsed.faults] == [2, 4]
    assert not parsed.places


def test_a_text_with_a_mild_fault_keeps_its_places() -> None:
    parsed = read_yaml(b"a: 1\na: 2\nb: 3\n")
    assert parsed.value == {"a": 1, "b": 3}
    assert parsed.places["b",] == Place(3, 4)


yamlish = st.text("ab:-[]{}&*!|>'\"%@`#,?~ \n\t01.\\é\x00\u2028", max_size=40)


@given(st.binary(max_size=60) | yamlish.map(str.encode))
def test_no_bytes_at_all_are_too_much(data: bytes) -> None:
    parsed = read_yaml(data)
    lines = data.count(b"\n") + data.count(b"\r") + 2
    assert all(1 <= fault.line <= lines and fault.column >= 1 for fault in parsed.faults)
    if not parsed.faults:
        assert (() in parsed.places) == (parsed.value is not None or bool(parsed.places))


plain_text = st.text("abc xyz", min_size=1, max_size=8)
values = st.recursive(
    st.none() | st.booleans() | st.integers(-999, 999) | plain_text,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(plain_text, inner, max_size=4),
    max_leaves=12,
)


@given(st.dictionaries(plain_text, values))
def test_another_reader_of_yaml_reads_the_same(record: dict[str, object]) -> None:
    text = to_yaml(record)
    loader = CSafeLoader(text)
    try:
        assert read_yaml(text.encode()).value == loader.get_single_data() == record
    finally:
        loader.dispose()


def test_a_text_is_the_same_whatever_its_line_endings_and_its_mark() -> None:
    assert {whole_text(data) for data in (b"a\nb\n", b"a\r\nb\r\n", b"\xef\xbb\xbfa\rb\n")} == {"a\nb\n"}
    with pytest.raises(UnicodeDecodeError):
        whole_text(b"caf\xe9")
