"""The examples of a kind are the files that lie beside it."""

from pathlib import Path

import bezelbook.kinds
from bezelbook.store.kind_examples import kind_examples

KINDS = Path(bezelbook.kinds.__file__).parent


def test_the_plain_example_comes_first_and_the_others_by_name() -> None:
    names = [name for name, _ in kind_examples("note")]
    others = [path.name for path in sorted((KINDS / "note" / "examples").iterdir())]
    assert names == ["example.yaml", *others]
    assert len(others) > 5


def test_an_example_is_told_as_it_was_written() -> None:
    [(name, text)] = kind_examples("shop")
    assert (KINDS / "shop" / name).read_text(encoding="utf-8") == text
