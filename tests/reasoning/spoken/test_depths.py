"""Width and height alone: what they rule out is out, else how deep a thing may be (trade.md 13's opening)."""

from pathlib import Path

import pytest

from bezelbook.pipeline import Answer, Choice, Counter, knowledge_of


@pytest.fixture(scope="module")
def counter(kb: Path) -> Counter:
    return Counter(knowledge_of(kb).book)


def test_how_deep_it_may_be_is_told_for_each_mount(books: Path) -> None:
    found, _ = Counter(knowledge_of(books / "worked").book).ask_words("hatch 2 late 177 x 99 mm")
    assert isinstance(found, Choice)
    # The duct in the lower left is 150 ± 3 mm behind the face.
    assert any("up to 147 mm" in line for line in found.known)


def test_where_nothing_was_seen_no_depth_is_certain(books: Path) -> None:
    found, _ = Counter(knowledge_of(books / "worked").book).ask_words("hatch 2 early 177 x 99 mm")
    assert isinstance(found, Choice)
    assert any(line.endswith("no depth is certain") for line in found.known)


def test_what_is_too_high_is_out_however_deep_it_is(counter: Counter) -> None:
    found, _ = counter.ask_words("hatch dash 190 x 120 mm")
    assert isinstance(found, Answer)
    assert found.verdict == "does not"
