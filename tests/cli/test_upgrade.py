"""Bringing a book to the newest format, as a person does it."""

from pathlib import Path

import pytest

from tests.cli.conftest import BOOK, SHOP, Run, Write


def test_the_newest_book_is_left_alone(run: Run, write: Write) -> None:
    book = write()
    before = {path: path.stat().st_mtime_ns for path in book.rglob("*")}
    ran = run("upgrade")
    assert (ran.code, ran.err) == (0, "")
    assert ran.out == "The book in kb is of format 1, the newest there is. Nothing was written.\n"
    assert {path: path.stat().st_mtime_ns for path in book.rglob("*")} == before


def test_a_newer_book_is_refused_with_what_would_mend_it(run: Run, write: Write) -> None:
    book = write(**{"shop.yaml": "name: A shop\nformat: 2\n"})
    ran = run("upgrade")
    assert (ran.code, ran.out) == (2, "")
    assert ran.err.startswith("kb/shop.yaml:1:1: this book is of format 2, and bezelbook ")
    assert ran.err.endswith("Install a bezelbook that reads format 2.\nNothing was written.\n")
    assert (book / "shop.yaml").read_text("utf-8") == "name: A shop\nformat: 2\n"


def test_an_older_book_is_brought_forward_and_checks(
    run: Run, write: Write, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book = write(**{"head_units/short.yaml": BOOK["head_units/short.yaml"].replace("size_class", "size")})
    monkeypatch.setattr("bezelbook.store.format.FORMAT", 2)
    monkeypatch.setattr("bezelbook.store.format.STEPS", {1: lambda _, text: text.replace("\nsize:", "\nsize_class:")})
    ran = run("upgrade")
    assert (ran.code, ran.err) == (0, "")
    assert ran.out == (
        "The book in kb was of format 1 and is of format 2 now.\n"
        "2 files written. Look them over, then check the book.\n"
    )
    assert (book / "shop.yaml").read_text("utf-8") == SHOP.replace("format: 1", "format: 2")
    assert run("check").code == 0
