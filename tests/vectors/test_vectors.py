"""What the browser is held to holds in Python first."""

from pathlib import Path
from typing import Any

import pytest

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.pipeline import knowledge_of
from bezelbook.reasoning.answer import answer
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.words import Choice, read_words
from bezelbook.values.shown import show_length
from tests.vectors.cases import cases, plain_question, question


@pytest.fixture(scope="module")
def worked(books: Path) -> KnowledgeBase:
    return knowledge_of(books / "worked").book


@pytest.mark.parametrize(("nanometres", "mm_first", "inches_first"), cases("lengths"))
def test_a_length_is_shown(nanometres: int, mm_first: str, inches_first: str) -> None:
    assert show_length(nanometres) == mm_first
    assert show_length(nanometres, "in") == inches_first


@pytest.mark.parametrize(("words", "expected"), cases("words"))
def test_words_are_read(worked: KnowledgeBase, words: str, expected: dict[str, Any]) -> None:
    found = read_words(worked, words)
    assert list(found.took) == expected["took"]
    if isinstance(found.read, Choice):
        assert found.read.ask == expected["ask"]
        assert [list(option) for option in found.read.options] == expected["options"]
    else:
        assert isinstance(found.read, Question)
        plain = plain_question(found.read)
        sizes = plain.pop("sizes")
        assert {key: expected[key] for key in plain} == plain
        assert {need: size["typed"] for need, size in sizes.items()} == expected["sizes"]
        assert {need: [size["base"], size["give"]] for need, size in sizes.items()} == expected["nanometres"]


@pytest.mark.parametrize("case", cases("compare"), ids=lambda case: case["name"])
def test_a_typed_size_is_compared(worked: KnowledgeBase, case: dict[str, Any]) -> None:
    found = answer(worked, question(case["asks"])).plain()
    number = found["number"]
    assert found["verdict"] == case["verdict"]
    assert (number["words"] if number else None) == case["number"]
    assert number is None or number["to_spare"] == case["to_spare"]
    if "needs" in case:
        assert found["needs"][0] == case["needs"]
