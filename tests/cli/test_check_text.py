"""Only gaps are cut short in the text; whatever clashes or looks mistyped is told in full."""

from dataclasses import replace
from pathlib import Path

import pytest

from bezelbook.cli.check_text import text_of
from bezelbook.finding import Sort
from bezelbook.pipeline import Book, open_book


def book_with(folder: Path, number: int) -> Book:
    book = open_book(folder)
    found = book.findings[0]
    many = tuple(replace(found, key=f"{found.key}{at:02}") for at in range(number))
    ranks = {one.key: book.checked.ranks[found.key] for one in many}
    return replace(book, checked=replace(book.checked, findings=many, ranks=ranks))


@pytest.mark.parametrize(("sort", "every", "told"), [("gap", False, 20), ("gap", True, 23), ("slip", False, 23)])
def test_gaps_beyond_twenty_are_counted(worked_book: Path, sort: Sort, *, every: bool, told: int) -> None:
    book = book_with(worked_book, 23)
    lines = text_of(book, {book.findings[0].rule: sort}, every=every)
    assert sum("; costs " in line or " it; costs" in line for line in lines) == told
    assert ("and 3 more gaps that cost less: --all" in lines) == (told == 20)
    assert lines[-1].endswith("; 23 findings.")
