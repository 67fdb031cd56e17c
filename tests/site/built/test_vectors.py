"""The browser reads words, shows lengths and compares sizes as the cases say that Python does."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page

from tests.vectors.cases import cases, plain_question, question

READ = """(texts) => texts.map((text) => {
  const { question, choice, took } = bezelbook.words.read(text);
  return choice ? { ask: choice.ask, options: choice.options, took } : { ...question, took };
})"""
SHOWN = "(lengths) => lengths.map((nm) => [bezelbook.lengths.show(nm, 'mm'), bezelbook.lengths.show(nm, 'in')])"
ASK = """async (questions) => {
  const vehicle = await bezelbook.open(questions[0].vehicle);
  return questions.map((question) => bezelbook.reply.reply(vehicle, question).answer);
}"""


@pytest.fixture
def home(at_home: Callable[[Path, str], Page], worked_site: Path) -> Page:
    return at_home(worked_site, "")


def test_lengths_are_shown_exactly(home: Page) -> None:
    expected = cases("lengths")
    assert home.evaluate(SHOWN, [nm for nm, _, _ in expected]) == [[mm, inches] for _, mm, inches in expected]


def test_words_are_read(home: Page) -> None:
    expected = cases("words")
    for (words, wanted), found in zip(expected, home.evaluate(READ, [words for words, _ in expected]), strict=True):
        if "sizes" in found:
            sizes = found["sizes"]
            found["nanometres"] = {need: [size["base"], size["give"]] for need, size in sizes.items()}
            found["sizes"] = {need: size["typed"] for need, size in sizes.items()}
        assert found == wanted, words


def test_typed_sizes_are_compared(home: Page) -> None:
    expected = cases("compare")
    asked = [plain_question(question(case["asks"])) for case in expected]
    found: list[dict[str, Any]] = home.evaluate(ASK, asked)
    for case, answer in zip(expected, found, strict=True):
        number = answer["number"]
        assert answer["verdict"] == case["verdict"], case["name"]
        assert (number["words"] if number else None) == case["number"], case["name"]
        assert number is None or number["to_spare"] == case["to_spare"], case["name"]
        assert "needs" not in case or answer["needs"][0] == case["needs"], case["name"]
