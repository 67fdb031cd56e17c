"""A text that is no YAML gets one complaint, at the mistake, in words that mend it."""

import pytest
from yaml import MarkedYAMLError
from yaml.error import Mark

from bezelbook.store.syntax import syntax_fault
from bezelbook.store.yaml_text import read_yaml


@pytest.mark.parametrize(
    ("text", "place", "what"),
    [
        ("a: b: c\n", (1, 5), "this line has a second colon, or starts further in than the line above"),
        ("a: 1\n b: 2\n", (2, 3), "this line has a second colon, or starts further in than the line above"),
        ('b: 1\na: "x\n\n\n', (2, 4), "a quote is opened here and never closed"),
        ("b: 1\na: [1, 2\nc: 3\n", (2, 4), "a bracket is opened here and not closed after a comma-separated list"),
        ("a: {b: 1\nc: 3\n", (1, 4), "a bracket is opened here and not closed after a comma-separated list"),
        ("a: [\n", (2, 1), "something is opened before this and nothing follows"),
        ("a: - b\n", (1, 4), "a list starts on the same line as its key"),
        ("a:\n  - b\n  c: d\n", (3, 3), "a list stops here without a line that follows from it"),
        ('a: "x" y\nb: 1\n', (1, 8), "this line does not belong with the lines above"),
        ("a: 1\nb\nc: 2\n", (2, 1), "a line here has no colon"),
        ('a: "\\q"\n', (1, 5), "a backslash stands in double quotes"),
        ('a: "\\ud800"\n', (1, 7), "a backslash stands in double quotes"),
        ("a: >\n\tx\n", (2, 1), "a tab stands where spaces belong"),
        ("\ta: 1\n", (1, 1), "a tab stands where spaces belong"),
        ("a: !u!x y\n", (1, 4), "a tag starts here"),
        ("a: @x\n", (1, 4), "text may not start with @"),
        ("a: `x`\n", (1, 4), "text may not start with `"),
        ("a: %x\n", (1, 4), "text may not start with %"),
        ("[" * 2000, (1, 1001), "this is nested far too deep"),
    ],
)
def test_the_fault_stands_where_the_mistake_is(text: str, place: tuple[int, int], what: str) -> None:
    *_, fault = read_yaml(text.encode()).faults
    assert (fault.line, fault.column) == place
    assert fault.what == what
    assert fault.mend


def test_an_error_that_nobody_foresaw_still_has_a_place_and_words() -> None:
    mark = Mark("text", 0, 2, 4, "", 0)
    fault = syntax_fault(MarkedYAMLError(problem="something new", problem_mark=mark), "")
    assert (fault.line, fault.column) == (3, 5)
    assert fault.what == "this cannot be read as YAML: something new"


def test_an_error_without_a_place_is_put_at_the_start() -> None:
    fault = syntax_fault(MarkedYAMLError(), "")
    assert (fault.line, fault.column) == (1, 1)
    assert fault.what == "this cannot be read as YAML: it stops without a word"
