"""A book of a newer format is refused whole, with what would mend it."""

from pathlib import Path

import pytest

from bezelbook.store.book import load_book
from bezelbook.store.format import FORMAT, STEPS, newer, newer_format, steps_from


def book_of_format(folder: Path, number: int) -> Path:
    (folder / "mounts").mkdir(parents=True)
    (folder / "shop.yaml").write_text(f"name: a shop\nformat: {number}\n", encoding="utf-8")
    (folder / "mounts" / "ring.yaml").write_text("name: ring\nmount_kind: spacer\n", encoding="utf-8")
    return folder


def test_the_books_own_format_is_read(tmp_path: Path) -> None:
    loaded = load_book(book_of_format(tmp_path / "kb", FORMAT))
    assert [record.id for record in loaded.records] == ["ring", "shop"]
    assert newer_format(loaded.records) is None
    assert loaded.complaints == ()


def test_nothing_of_a_newer_book_is_half_read(tmp_path: Path) -> None:
    loaded = load_book(book_of_format(tmp_path / "kb", FORMAT + 1))
    assert loaded.records == ()
    (complaint,) = loaded.complaints
    assert complaint.path.endswith("kb/shop.yaml")
    assert f"format {FORMAT + 1}" in complaint.what
    assert complaint.mend == f"Install a bezelbook that reads format {FORMAT + 1}"


def test_there_is_a_step_from_every_older_format_and_no_other() -> None:
    assert sorted(STEPS) == list(range(1, FORMAT))
    assert steps_from(FORMAT) == ()
    assert newer(FORMAT) is None


def test_the_steps_come_one_after_the_other(monkeypatch: pytest.MonkeyPatch) -> None:
    steps = {number: lambda _, text, number=number: f"{text}{number}" for number in (1, 2, 3)}
    monkeypatch.setattr("bezelbook.store.format.FORMAT", 4)
    monkeypatch.setattr("bezelbook.store.format.STEPS", steps)
    assert [[step("mounts", "") for step in steps_from(number)] for number in (1, 3, 4)] == [["1", "2", "3"], ["3"], []]
